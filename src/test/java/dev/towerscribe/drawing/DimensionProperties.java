package dev.towerscribe.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.CrowdedPlates.Plate;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;

/**
 * Crowded plates, turned and mirrored: whatever was placed is legible. Judged from the shapes alone
 * by walking along every line in steps, with none of the placer's own geometry.
 */
class DimensionProperties {
  /** White that must be left between letters and lines, mm: half a thin line and as much again. */
  private static final double WHITE_MM = 0.25;

  /** Steps along a line, mm: a rectangle's side is never missed by a line through its middle. */
  private static final double STEP_MM = 0.2;

  /**
   * Reach of figures and signs above a base line, in heights of a capital: from the font's glyf.
   */
  private static final double ABOVE = 1.06;

  private static final double ROUNDING_MM = 1e-6;

  /** A rectangle of letters, seen from its own lower left corner. */
  private record Letters(Vec2 origin, Vec2 along, double wideMm, double lowMm, double highMm) {
    static Letters of(Item.Text text) {
      double wide = Lettering.width(text.content(), text.capHeightMm());
      Vec2 along = new Vec2(text.turn().cos(), text.turn().sin());
      double back = text.align() == Align.START ? 0 : text.align() == Align.END ? 1 : 0.5;
      boolean brackets = text.content().contains("[");
      return new Letters(
          text.at().minus(along.times(back * wide)),
          along,
          wide,
          brackets ? -0.31 * text.capHeightMm() : 0,
          ABOVE * text.capHeightMm());
    }

    boolean covers(Vec2 p, double margin) {
      Vec2 seen = p.minus(origin);
      double x = seen.x() * along.x() + seen.y() * along.y();
      double y = seen.y() * along.x() - seen.x() * along.y();
      return x > -margin && x < wideMm + margin && y > lowMm - margin && y < highMm + margin;
    }

    Vec2 at(double x, double y) {
      return new Vec2(
          origin.x() + x * along.x() - y * along.y(), origin.y() + x * along.y() + y * along.x());
    }

    /** Points all over it, edges included. */
    List<Vec2> points() {
      List<Vec2> points = new ArrayList<>();
      int across = (int) Math.ceil(wideMm / 0.4);
      int up = (int) Math.ceil((highMm - lowMm) / 0.4);
      for (int i = 0; i <= across; i++) {
        for (int k = 0; k <= up; k++) {
          points.add(at(wideMm * i / across, lowMm + (highMm - lowMm) * k / up));
        }
      }
      return points;
    }
  }

  /** Every line of a shape as points in small steps. */
  private static final class Walk implements Item.Visitor {
    private final List<Vec2> points = new ArrayList<>();

    private void straight(Vec2 from, Vec2 to) {
      int n =
          Math.max(1, (int) Math.ceil(Math.hypot(to.x() - from.x(), to.y() - from.y()) / STEP_MM));
      for (int i = 0; i <= n; i++) {
        points.add(
            new Vec2(
                from.x() + (to.x() - from.x()) * i / n, from.y() + (to.y() - from.y()) * i / n));
      }
    }

    private void curved(Arc arc) {
      int n = Math.max(8, (int) Math.ceil(arc.radius() * Math.abs(arc.sweep()) / STEP_MM));
      for (int i = 0; i <= n; i++) {
        double a = arc.startAngle() + arc.sweep() * i / n;
        points.add(
            new Vec2(
                arc.centre().x() + arc.radius() * Math.cos(a),
                arc.centre().y() + arc.radius() * Math.sin(a)));
      }
    }

    @Override
    public void circle(Item.Circle circle) {
      curved(new Arc(circle.centre(), circle.radiusMm(), 0, 2 * Math.PI));
    }

    @Override
    public void arc(Item.ArcLine line) {
      curved(line.arc());
    }

    @Override
    public void line(Item.Line line) {
      straight(line.from(), line.to());
    }

    @Override
    public void polyline(Item.Polyline polyline) {
      for (int i = 0; i < polyline.points().size(); i++) {
        straight(
            polyline.points().get(i), polyline.points().get((i + 1) % polyline.points().size()));
      }
    }

    @Override
    public void figure(Item.Figure figure) {
      for (Contour contour : figure.contours()) {
        for (Edge edge : contour.edges()) {
          if (edge instanceof Arc arc) {
            curved(arc);
          } else {
            straight(edge.start(), edge.end());
          }
        }
      }
    }

    @Override
    public void text(Item.Text text) {}

    @Override
    public void dimension(Item.Dimension dimension) {
      dimension.parts().forEach(part -> part.accept(this));
    }
  }

  private static List<Vec2> walked(Item item) {
    Walk walk = new Walk();
    item.accept(walk);
    return walk.points;
  }

  static Plate plate(long seed, int holes) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] turns = {0, 0, 90, 180, 30, 360 * random.nextDouble()};
    return CrowdedPlates.random(
        seed,
        holes,
        CrowdedPlates.frame(turns[random.nextInt(turns.length)], random.nextBoolean()));
  }

  @Tag("more-tries")
  @Property(seed = "20260701")
  void nothingLiesOnWords(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 30) int holes) {
    Plate plate = plate(seed, holes);
    List<Item> all = new ArrayList<>(plate.drawn());
    all.addAll(plate.placed().placed());
    assertThat(faults(plate.area(), all)).isEmpty();
  }

  static List<String> faults(Box area, List<Item> all) {
    List<String> faults = new ArrayList<>();
    List<Item.Text> texts = new ArrayList<>();
    List<Vec2> lines = new ArrayList<>();
    for (Item item : all) {
      List<Vec2> walked = walked(item);
      lines.addAll(walked);
      if (item instanceof Item.Dimension dimension) {
        for (Item part : dimension.parts()) {
          if (part instanceof Item.Text text) {
            texts.add(text);
          }
        }
        if (!walked.stream().allMatch(area.grown(ROUNDING_MM)::contains)) {
          faults.add("off the page: " + dimension);
        }
      }
    }
    List<Letters> letters = texts.stream().map(Letters::of).toList();
    for (int i = 0; i < letters.size(); i++) {
      Letters one = letters.get(i);
      String name = texts.get(i).content() + " at " + texts.get(i).at();
      for (Vec2 p : lines) {
        if (one.covers(p, WHITE_MM)) {
          faults.add("a line through " + name + " at " + p);
          break;
        }
      }
      List<Vec2> points = one.points();
      if (!points.stream().allMatch(area.grown(ROUNDING_MM)::contains)) {
        faults.add("off the page: " + name);
      }
      for (int k = 0; k < letters.size(); k++) {
        // Lines of one dimension stand closer than words of two, but still apart.
        Letters other = letters.get(k);
        if (k != i && points.stream().anyMatch(p -> other.covers(p, 0))) {
          faults.add(name + " on " + texts.get(k).content());
        }
      }
    }
    return faults;
  }

  @Tag("more-tries")
  @Property(seed = "20260702")
  void everyRequestIsPlacedOrGivenBackAndSaysWhatItMeasures(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 30) int holes) {
    Plate plate = plate(seed, holes);
    DimensionPlacer.Placement placement = plate.placed();
    int missing = 0;
    for (DimensionRequest request : plate.requests()) {
      boolean placed = placement.placed().stream().anyMatch(d -> answers(d, request));
      boolean givenBack = placement.unplaced().contains(request);
      assertThat(placed ^ givenBack).as(request.toString()).isTrue();
      missing += givenBack ? 1 : 0;
    }
    Statistics.label("unplaced").collect(missing > 5 ? "more than 5" : String.valueOf(missing));
    assertThat(plate.placed()).isEqualTo(placement);
  }

  private static boolean answers(Item.Dimension d, DimensionRequest request) {
    if (!d.words().equals(request.words())) {
      return false;
    }
    if (request instanceof DimensionRequest.Ordinate o) {
      return d.kind() == DimensionKind.ORDINATE
          && d.measured().contains(o.point())
          && d.parts().stream()
              .anyMatch(part -> part instanceof Item.Text text && Math.abs(along(text, o)) > 0.999);
    }
    if (request instanceof DimensionRequest.Linear l) {
      return d.kind() == DimensionKind.LINEAR && d.measured().equals(List.of(l.from(), l.to()));
    }
    if (request instanceof DimensionRequest.Diameter c) {
      return d.kind() == DimensionKind.DIAMETER && d.measured().get(0).equals(c.centre());
    }
    return d.kind() == DimensionKind.RADIUS;
  }

  /** Cosine between reading and leader: 1 or -1 where they lie along each other. */
  private static double along(Item.Text text, DimensionRequest.Ordinate request) {
    return text.turn().cos() * request.side().x() + text.turn().sin() * request.side().y();
  }

  @Tag("more-tries")
  @Property(seed = "20260703")
  void leadersAndDimensionLinesDoNotCross(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 30) int holes) {
    List<Item.Dimension> placed = plate(seed, holes).placed().placed();
    for (int i = 0; i < placed.size(); i++) {
      for (int k = i + 1; k < placed.size(); k++) {
        Item.Dimension a = placed.get(i);
        Item.Dimension b = placed.get(k);
        for (Item.Line p : leaders(a)) {
          for (Item.Line q : leaders(b)) {
            assertThat(cross(p, q)).as(a.words() + " and " + b.words()).isFalse();
          }
        }
      }
    }
  }

  /** All but extension lines: of ordinates everything from the jog on. */
  private static List<Item.Line> leaders(Item.Dimension d) {
    List<Item.Line> lines =
        d.parts().stream().filter(Item.Line.class::isInstance).map(Item.Line.class::cast).toList();
    return switch (d.kind()) {
      case LINEAR -> lines.subList(lines.size() - 1, lines.size());
      case ORDINATE -> lines.subList(1, lines.size());
      default -> lines;
    };
  }

  /** Whether two lines cross in a point inside both, by solving for it. */
  private static boolean cross(Item.Line p, Item.Line q) {
    double ax = p.to().x() - p.from().x();
    double ay = p.to().y() - p.from().y();
    double bx = q.to().x() - q.from().x();
    double by = q.to().y() - q.from().y();
    double det = ax * by - ay * bx;
    if (Math.abs(det) < 1e-9) {
      return false;
    }
    double cx = q.from().x() - p.from().x();
    double cy = q.from().y() - p.from().y();
    double s = (cx * by - cy * bx) / det;
    double t = (cx * ay - cy * ax) / det;
    double end = 1e-6;
    return s > end && s < 1 - end && t > end && t < 1 - end;
  }

  @Tag("more-tries")
  @Property(seed = "20260704")
  void whereThereIsNoRoomNothingIsDrawnOver(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 3, max = 30) int holes) {
    Plate plate = plate(seed, holes);
    Box part = plate.part().get(0).bounds();
    Box area = part.grown(2 + seed % 24).within(CrowdedPlates.AREA);
    Plate tight = new Plate(area, plate.part(), plate.drawn(), plate.requests());
    DimensionPlacer.Placement placement = tight.placed();
    Statistics.label("all placed").collect(placement.unplaced().isEmpty());
    List<Item> all = new ArrayList<>(plate.drawn());
    all.addAll(placement.placed());
    assertThat(faults(area, all)).isEmpty();
  }
}
