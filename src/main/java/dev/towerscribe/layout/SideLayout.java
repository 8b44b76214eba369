package dev.towerscribe.layout;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One tower, laid out.
 *
 * @param job what it was laid out from
 * @param plateFrame plate frame to plan; reflects on the other side of an unhanded plate
 * @param plateOutline edge of the plate, plan
 * @param holes bolt holes in the plate's order
 * @param bearing bearing centre at the chosen setting, plan
 * @param slotFrom bearing centre at the slot's least setting, plan
 * @param slotTo bearing centre at its greatest setting, plan
 * @param opening the opening as found, plan
 * @param mark the ring the old mount left, plan
 * @param finalCut what the opening becomes; empty if nothing is left to cut
 * @param roughCut the first, smaller cut; empty if nothing is left to cut
 * @param starters saw starter holes in the waste, perhaps none
 * @param sweep what moves through the opening
 * @param notches what is taken from brackets, perhaps nothing
 * @param spans every pair of holes
 * @param findings every check's result, most serious first
 */
public record SideLayout(
    SideJob job,
    Frame2 plateFrame,
    Region plateOutline,
    List<PlacedHole> holes,
    Vec2 bearing,
    Vec2 slotFrom,
    Vec2 slotTo,
    Region opening,
    Region mark,
    Region finalCut,
    Region roughCut,
    List<StarterHole> starters,
    Sweep sweep,
    List<Notch> notches,
    List<Span> spans,
    List<Finding> findings) {
  /** Copies the lists. */
  public SideLayout {
    holes = List.copyOf(holes);
    starters = List.copyOf(starters);
    notches = List.copyOf(notches);
    spans = List.copyOf(spans);
    findings = List.copyOf(findings);
  }

  /**
   * The same layout with findings of another calculation among its own.
   *
   * @param more that calculation's findings
   * @return the layout, all findings most serious first
   */
  public SideLayout withMore(List<Finding> more) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    all.sort(Comparator.comparing(Finding::severity));
    return with(all);
  }

  /** The same layout with its findings, most serious first. */
  SideLayout with(List<Finding> found) {
    return new SideLayout(
        job,
        plateFrame,
        plateOutline,
        holes,
        bearing,
        slotFrom,
        slotTo,
        opening,
        mark,
        finalCut,
        roughCut,
        starters,
        sweep,
        notches,
        spans,
        found);
  }

  /** The same tower with its plate and its holes elsewhere, not checked; the rest as planned. */
  SideLayout with(SideJob placed, List<PlacedHole> drilled) {
    Frame2 frame = PlateFrames.toPlan(placed);
    Region outline = Region.inside(placed.plate().outline()).mapped(frame);
    return new SideLayout(
        placed,
        frame,
        outline,
        drilled,
        bearing,
        slotFrom,
        slotTo,
        opening,
        mark,
        finalCut,
        roughCut,
        starters,
        sweep,
        notches,
        Span.between(drilled),
        List.of());
  }

  /**
   * Which tower.
   *
   * @return side
   */
  public Side side() {
    return job.side();
  }

  /**
   * Where a plan point lies on paper that follows the tower's skin: unchanged on a flat top.
   *
   * @param plan plan point
   * @return paper point, (fore, in)
   */
  public Vec2 onPaper(Vec2 plan) {
    return job.tower().crown().map(c -> c.onPaper(plan)).orElse(plan);
  }
}
