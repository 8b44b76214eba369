package dev.towerscribe.layout;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * One tower, laid out.
 *
 * @param job what it was laid out from
 * @param holes bolt holes in the plate's order
 * @param finalCut what the opening becomes; empty if nothing is left to cut
 * @param roughCut the first, smaller cut; empty if nothing is left to cut
 * @param starters saw starter holes in the waste, perhaps none
 * @param sweep what moves through the opening
 * @param notches what is taken from brackets, perhaps nothing
 * @param spans every pair of holes
 * @param rest where the plate's face lies
 * @param findings every check's result, most serious first
 */
public record SideLayout(
    SideJob job,
    List<PlacedHole> holes,
    Region finalCut,
    Region roughCut,
    List<StarterHole> starters,
    Sweep sweep,
    List<Notch> notches,
    List<Span> spans,
    RestingPlane rest,
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
    return with(
        Stream.concat(findings.stream(), more.stream())
            .sorted(Comparator.comparing(Finding::severity))
            .toList());
  }

  /** The same layout with its findings, most serious first. */
  SideLayout with(List<Finding> found) {
    return new SideLayout(
        job, holes, finalCut, roughCut, starters, sweep, notches, spans, rest, found);
  }

  /** The same tower with its plate and its holes elsewhere, not checked; the rest as planned. */
  SideLayout with(SideJob placed, List<PlacedHole> drilled) {
    List<Span> between = Span.between(drilled);
    return new SideLayout(
        placed, drilled, finalCut, roughCut, starters, sweep, notches, between, rest, List.of());
  }

  /**
   * Where the plate goes.
   *
   * @return plate frame to plan; reflects on the other side of an unhanded plate
   */
  public Frame2 plateFrame() {
    return PlateFrames.toPlan(job);
  }

  /**
   * Edge of the plate.
   *
   * @return plan region
   */
  public Region plateOutline() {
    return Region.inside(job.plate().outline()).mapped(plateFrame());
  }

  /**
   * Bearing centre at the chosen setting.
   *
   * @return plan point
   */
  public Vec2 bearing() {
    return job.bearing(job.mount().settingMm());
  }

  /**
   * The opening as found.
   *
   * @return plan region
   */
  public Region opening() {
    return Region.inside(job.tower().opening());
  }

  /**
   * The ring the old mount left.
   *
   * @return plan region
   */
  public Region mark() {
    return Region.inside(job.tower().mark());
  }

  /**
   * Whether the plate rests on a round rim, which touches it all round.
   *
   * @return false where it rests on places of its own
   */
  public boolean restsAllRound() {
    return job.seating().seat() == Seat.ON_TOP
        && !rest.onLip()
        && finalCut.contours().stream().allMatch(c -> c.asCircle().isPresent());
  }

  /**
   * What the plate rests on, where the tower is not flat.
   *
   * @return words that follow "the plate rests on"
   */
  public String restsOn() {
    if (rest.onLip()) {
      return "what is left of the lip";
    }
    if (rest.contacts().isEmpty()) {
      return "the highest place of the tower's face";
    }
    if (job.seating().seat() == Seat.UNDERNEATH) {
      return "its own rim";
    }
    return restsAllRound()
        ? "the rim of the finished opening"
        : "three places of the finished opening's rim";
  }

  /**
   * What a bolt goes through.
   *
   * @param hole one of the holes
   * @return its grip
   */
  public Grip grip(PlacedHole hole) {
    return Grip.of(job, rest, hole);
  }

  /**
   * What each bolt goes through.
   *
   * @return in the order of the holes
   */
  public List<Grip> grips() {
    return holes.stream().map(this::grip).toList();
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
