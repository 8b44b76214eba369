package dev.towerscribe.writer.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;

/** Random drawings: arcs of either sense, contours in turned and mirrored frames. */
class DxfWriterProperties {
  /** What ends of neighbouring edges and points of arcs must agree to, mm. */
  private static final double MEET_MM = Tolerances.COMPUTED_MM;

  private record Found(Vec2 start, Vec2 middle, Vec2 end) {
    double off(Edge edge) {
      double ends =
          Math.min(
              Math.max(start.distanceTo(edge.start()), end.distanceTo(edge.end())),
              Math.max(start.distanceTo(edge.end()), end.distanceTo(edge.start())));
      return Math.max(ends, middle.distanceTo(edge.at(0.5)));
    }
  }

  /** Independent: an arc runs counter-clockwise from group 50 to group 51, as the format has it. */
  private static Found found(Pairs entity) {
    if (entity.text(0).equals("LINE")) {
      Vec2 from = new Vec2(entity.real(10), entity.real(20));
      Vec2 to = new Vec2(entity.real(11), entity.real(21));
      return new Found(from, from.plus(to).times(0.5), to);
    }
    double from = entity.real(50);
    double to = entity.real(51) > from ? entity.real(51) : entity.real(51) + 360;
    return new Found(onArc(entity, from), onArc(entity, (from + to) / 2), onArc(entity, to));
  }

  private static Vec2 onArc(Pairs arc, double degrees) {
    double radians = Math.toRadians(degrees);
    return new Vec2(
        arc.real(10) + arc.real(40) * Math.cos(radians),
        arc.real(20) + arc.real(40) * Math.sin(radians));
  }

  @Tag("more-tries")
  @Property(seed = "5501")
  void provesEveryDrawingAndCatchesEveryMovedProof(
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    Page page = DxfPages.random(seed);
    List<Proof> moved = new ArrayList<>();
    for (Proof proof : page.proofs()) {
      Vec2 by = new Vec2(0, seed % 2 == 0 ? 1.1e-6 : -1.1e-6);
      if (proof instanceof Proof.RoundHole hole) {
        moved.add(new Proof.RoundHole(hole.name(), hole.centre().plus(by), hole.radiusMm()));
      } else if (proof instanceof Proof.Bar bar) {
        moved.add(new Proof.Bar(bar.name(), bar.from(), bar.to().plus(by)));
      }
    }
    for (DxfVersion version : DxfVersion.values()) {
      byte[] dxf = DxfPages.write(page, version);
      assertThat(DxfPages.check(dxf, page, version)).isEmpty();
      assertThat(DxfPages.check(dxf, DxfPages.withProofs(page, moved), version))
          .hasSameSizeAs(moved);
      assertThat(DxfPages.write(page, version)).isEqualTo(dxf);
    }
  }

  @Property(seed = "5502", tries = 500)
  void edgesLieWhereTheyWereAndMeet(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    for (Item item : DxfPages.random(seed).items()) {
      List<Edge> edges = new ArrayList<>();
      if (item instanceof Item.ArcLine line) {
        edges.add(line.arc());
      } else if (item instanceof Item.Figure figure) {
        figure.contours().stream().map(Contour::edges).forEach(edges::addAll);
      }
      if (edges.isEmpty() || isOneCircle(edges)) {
        continue;
      }
      List<Found> found =
          Pairs.of(DxfPages.write(DxfPages.of(item), DxfVersion.R12)).entities().stream()
              .map(DxfWriterProperties::found)
              .toList();
      assertThat(found).hasSameSizeAs(edges);
      for (int i = 0; i < edges.size(); i++) {
        assertThat(found.get(i).off(edges.get(i))).isLessThan(MEET_MM);
      }
      if (item instanceof Item.Figure) {
        for (int i = 0; i < found.size(); i++) {
          assertThat(gap(found.get(i), found.get((i + 1) % found.size()))).isLessThan(MEET_MM);
        }
      }
    }
  }

  private static boolean isOneCircle(List<Edge> edges) {
    return edges.stream().allMatch(e -> e instanceof Arc)
        && Math.abs(
                edges.stream().mapToDouble(e -> Math.abs(((Arc) e).sweep())).sum() - 2 * Math.PI)
            < 1e-9;
  }

  private static double gap(Found a, Found b) {
    return Math.min(
        Math.min(a.end.distanceTo(b.start), a.end.distanceTo(b.end)),
        Math.min(a.start.distanceTo(b.start), a.start.distanceTo(b.end)));
  }

  /** Any digit of consequence changed in a proved circle. */
  @Tag("more-tries")
  @Property(seed = "5503")
  void catchesAChangedDigit(
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
      @ForAll @IntRange(min = 0, max = 1_000_000) int place,
      @ForAll @IntRange(min = 1, max = 9) int by) {
    Vec2 at = new Vec2(seed / 3000.0, 200 - seed / 7000.0);
    double radius = 0.5 + seed / 11000.0;
    Page page =
        DxfPages.page(
            List.of(new Item.Circle(Layer.HOLES, at, radius, Pen.OUTLINE, Ink.NONE)),
            List.of(new Proof.RoundHole("hole", at, radius)));
    for (DxfVersion version : DxfVersion.values()) {
      String dxf = new String(DxfPages.write(page, version), StandardCharsets.US_ASCII);
      List<Integer> digits = digits(dxf);
      int i = digits.get(place % digits.size());
      char other = (char) ('0' + (dxf.charAt(i) - '0' + by) % 10);
      String changed = dxf.substring(0, i) + other + dxf.substring(i + 1);
      assertThat(DxfPages.check(changed.getBytes(StandardCharsets.US_ASCII), page, version))
          .as("%s for %s at %s", other, dxf.charAt(i), i)
          .isNotEmpty();
    }
  }

  /** Places of the digits of centre and radius, down to the fifth decimal. */
  private static List<Integer> digits(String dxf) {
    List<Integer> digits = new ArrayList<>();
    int entity = dxf.indexOf("\r\nCIRCLE\r\n");
    for (String code : List.of("\r\n 10\r\n", "\r\n 20\r\n", "\r\n 40\r\n")) {
      int from = dxf.indexOf(code, entity) + code.length();
      int point = dxf.indexOf('.', from);
      int end = Math.min(point + 6, dxf.indexOf('\r', point));
      for (int i = from; i < end; i++) {
        if (Character.isDigit(dxf.charAt(i))) {
          digits.add(i);
        }
      }
    }
    return digits;
  }
}
