package dev.towerscribe.sheet.shop;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.RoundedRectangle;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.SlotEnds;
import dev.towerscribe.model.Stated;
import dev.towerscribe.model.Thread;
import dev.towerscribe.part.Part;
import dev.towerscribe.part.Parts;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/** Invented plates and jobs for tests of drawings, and ways to look at the pages. */
final class DrawingFixtures {
  private static final Thread M8 = Thread.find("M8").orElseThrow();

  private DrawingFixtures() {}

  /** A template's job as it is laid out. */
  static JobLayout template(String name) throws JobRejected {
    JobReader reader = new JobReader(c -> true);
    return Layout.of(
        reader.parse(Templates.text(name + ".toml"), file -> Optional.of(Templates.text(file))));
  }

  /** The parts of a job whose both sides have one plate. */
  static List<Part> parts(Plate plate) throws JobRejected {
    Map<Side, SideJob> sides = new TreeMap<>();
    for (Side side : Side.values()) {
      sides.put(side, SampleJobs.side(side, SampleJobs.plainTower(), plate));
    }
    return Parts.of(Layout.of(new Job("Drawn", Optional.empty(), LengthUnit.MM, sides))).parts();
  }

  /** A round plate with as many holes as a drawing of one must bear. */
  static Plate crowded() {
    List<Bolt> bolts = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Vec2 at = Vec2.polar(68, Angle.ofDegrees(45.0 * i + 11));
      Optional<Recess> recess =
          switch (i % 4) {
            case 0 -> Optional.of(new Recess.Counterbore(15, 3, true));
            case 1 -> Optional.of(new Recess.Countersink(17, Angle.ofDegrees(90), false));
            default -> Optional.empty();
          };
      bolts.add(
          new Bolt(
              Character.toString('A' + i), at, M8, 13, 16, Optional.of(9.0 + 0.1 * i), recess));
    }
    return plate(
        Contour.circle(Vec2.ZERO, 93),
        true,
        new Plate.Slot(-8, 16, List.of(-8.0, 0.0, 8.0, 16.0)),
        SlotEnds.SQUARE,
        Optional.of(new PlateMake.IndexHoles(5, 22, Stated.given(HoleFit.H7))),
        bolts);
  }

  /** A plate that can be made: every hole clear of every other and of the edge. */
  static Plate random(Random random, boolean handed) {
    List<Bolt> bolts = new ArrayList<>();
    int n = 2 + random.nextInt(7);
    for (int i = 0; i < n; i++) {
      Angle at = new Angle(2 * Math.PI * (i + 0.3 * random.nextDouble()) / n);
      Vec2 p = Vec2.polar(60 + 6 * random.nextDouble(), at);
      boolean top = random.nextBoolean();
      Optional<Recess> recess =
          switch (random.nextInt(3)) {
            case 0 -> Optional.of(new Recess.Counterbore(14 + 3 * random.nextDouble(), 2, top));
            case 1 ->
                Optional.of(
                    new Recess.Countersink(13 + 2 * random.nextDouble(), Angle.ofDegrees(90), top));
            default -> Optional.empty();
          };
      Optional<Double> hole =
          random.nextBoolean() ? Optional.of(8.4 + random.nextDouble()) : Optional.empty();
      bolts.add(new Bolt(Character.toString('A' + i), p, M8, 13, 16, hole, recess));
    }
    boolean fixed = random.nextInt(6) == 0;
    double from = -8 * random.nextDouble();
    double to = fixed ? from : 8 * random.nextDouble() + 0.5;
    List<Double> index = fixed ? List.of(from) : List.of(from, from + (to - from) / 2, to);
    return plate(
        outline(random),
        handed,
        new Plate.Slot(from, to, random.nextBoolean() ? index : List.of()),
        random.nextBoolean() ? SlotEnds.ROUND : SlotEnds.SQUARE,
        random.nextBoolean()
            ? Optional.of(
                new PlateMake.IndexHoles(
                    4 + random.nextDouble(), 20 + 4 * random.nextDouble(), hole(random)))
            : Optional.empty(),
        bolts);
  }

  private static Stated<HoleFit> hole(Random random) {
    HoleFit fit = random.nextBoolean() ? HoleFit.H7 : HoleFit.H13;
    return random.nextBoolean() ? Stated.given(fit) : Stated.assumed(fit);
  }

  private static Contour outline(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> Contour.circle(Vec2.ZERO, 85 + 15 * random.nextDouble());
      case 1 -> {
        double x = 82 + 20 * random.nextDouble();
        double y = 82 + 20 * random.nextDouble();
        yield RoundedRectangle.rectangle(new Box(-x, -y, x, y), 4 + 20 * random.nextDouble());
      }
      default -> {
        List<Vec2> corners = new ArrayList<>();
        int n = 6 + random.nextInt(4);
        for (int i = 0; i < n; i++) {
          Angle at = new Angle(2 * Math.PI * (i + 0.2 * random.nextDouble()) / n);
          corners.add(Vec2.polar(96 + 14 * random.nextDouble(), at));
        }
        Contour sharp = Contour.polygon(corners);
        yield random.nextBoolean()
            ? sharp
            : Region.inside(sharp).opened(5 + 5 * random.nextDouble()).contours().get(0);
      }
    };
  }

  private static Plate plate(
      Contour outline,
      boolean handed,
      Plate.Slot slot,
      SlotEnds ends,
      Optional<PlateMake.IndexHoles> index,
      List<Bolt> bolts) {
    PlateMake a = PlateMake.ASSUMED;
    PlateMake make =
        new PlateMake(
            Stated.given("steel S355, 8 mm"),
            a.densityGPerCm3(),
            a.finish(),
            a.edgeBreakMm(),
            a.general(),
            Optional.empty(),
            Stated.given(ends),
            Stated.given(4.0),
            index,
            Optional.of(new PlateMake.BearingBore(22, Stated.given(HoleFit.H7))),
            Optional.empty(),
            a.fastening());
    return new Plate("slotted plate", 8, outline, handed, slot, 4, 18, 22, 2, 5, 2, bolts, make);
  }

  /** A part turned in its plane, as no plate is but a jig may be. */
  static Part turned(Part p, Angle by) {
    Vec2 x = Vec2.polar(1, by);
    Frame2 frame = new Frame2(new Vec2(3, -2), x, x.quarterTurn());
    return new Part(
        p.name(),
        p.kind(),
        p.hand(),
        p.quantity(),
        p.solid().mapped(frame),
        p.features().stream().map(f -> f.mapped(frame)).toList(),
        p.material(),
        p.finish(),
        p.edgeBreakMm(),
        p.general(),
        p.densityGPerCm3(),
        p.assumed());
  }

  /** Circles of one layer, in their order. */
  static List<Item.Circle> circles(Page page, Layer layer) {
    return page.items().stream()
        .filter(i -> i instanceof Item.Circle && i.layer() == layer)
        .map(Item.Circle.class::cast)
        .toList();
  }

  /** Where the long axes of the nth picture of a part on a page cross. */
  static Vec2 origin(Page page, int nth) {
    List<Item.Line> axes =
        page.items().stream()
            .filter(i -> i instanceof Item.Line l && l.pen() == Pen.CENTRE)
            .map(Item.Line.class::cast)
            .toList();
    return new Vec2(axes.get(2 * nth + 1).from().x(), axes.get(2 * nth).from().y());
  }

  /** Every text, those of dimensions too. */
  static List<Item.Text> texts(Page page) {
    List<Item.Text> all = new ArrayList<>();
    for (Item item : page.items()) {
      if (item instanceof Item.Text t) {
        all.add(t);
      } else if (item instanceof Item.Dimension d) {
        for (Item part : d.parts()) {
          if (part instanceof Item.Text t) {
            all.add(t);
          }
        }
      }
    }
    return all;
  }
}
