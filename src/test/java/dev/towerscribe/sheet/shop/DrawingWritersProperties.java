package dev.towerscribe.sheet.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Projection;
import dev.towerscribe.part.Hand;
import dev.towerscribe.part.Part;
import dev.towerscribe.part.PartKind;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Tolerances;
import dev.towerscribe.sheet.SheetFixtures;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.writer.dxf.DxfProof;
import dev.towerscribe.writer.dxf.DxfVersion;
import dev.towerscribe.writer.dxf.DxfWriter;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import dev.towerscribe.writer.step.PartName;
import dev.towerscribe.writer.step.StepProof;
import dev.towerscribe.writer.step.StepWriter;
import dev.towerscribe.writer.svg.SvgProof;
import dev.towerscribe.writer.svg.SvgWriter;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;

/** Random parts, drawn and written by every writer that drawings of parts go through. */
class DrawingWritersProperties {
  private static final double MM = Tolerances.COMPUTED_MM;

  private static DrawingStyle style(Random random) {
    return new DrawingStyle(
        Paper.values()[random.nextInt(Paper.values().length)],
        random.nextBoolean() ? Projection.FIRST : Projection.THIRD,
        random.nextBoolean() ? LengthUnit.MM : LengthUnit.INCH,
        random.nextBoolean());
  }

  private static Page fullSize(PartSheets.Subject subject, DrawingStyle style) {
    return machine(subject, style).page();
  }

  private static MachineSheet machine(PartSheets.Subject subject, DrawingStyle style) {
    return PartSheets.fullSize(subject, SheetFixtures.info(), DrawingInfo.BLANK, style);
  }

  /** A crowd of holes may be refused on small paper, in words; larger paper then has to do. */
  private static List<Page> onSomePaper(
      PartSheets.Subject subject, JobInfo job, DrawingStyle style) {
    try {
      return PartSheets.onPaper(subject, job, DrawingInfo.BLANK, style);
    } catch (NoRoomException e) {
      DrawingStyle larger = new DrawingStyle(Paper.A3, style.projection(), style.unit(), false);
      return PartSheets.onPaper(subject, job, DrawingInfo.BLANK, larger);
    }
  }

  private static void provedByAll(PartSheets.Subject subject, DrawingStyle style) {
    JobInfo job = SheetFixtures.info();
    List<Page> paper = onSomePaper(subject, job, style);
    assertThat(PdfProof.check(PdfWriter.write("parts", paper), paper)).isEmpty();
    Part part = subject.part();
    // One proof for each hole and each recess that is round, and the bar of 100 mm.
    long rounds = part.features().stream().filter(f -> f.edge().isEmpty()).count();
    long recesses = part.features().stream().filter(f -> f.recess().isPresent()).count();
    assertThat(paper.get(0).proofs()).hasSize((int) (rounds + recesses + 1));
    Page page = fullSize(subject, style);
    assertThat(page.proofs()).hasSize((int) (rounds + recesses + 1));
    assertThat(SvgProof.check(SvgWriter.write(page), page)).isEmpty();
    for (DxfVersion version : DxfVersion.values()) {
      Vec2 datum = machine(subject, style).datum();
      byte[] dxf = DxfWriter.write(page, version, datum);
      assertThat(DxfProof.check(dxf, page, version, datum)).isEmpty();
    }
    PartName name = new PartName(subject.stem(), part.name(), "", Optional.empty());
    byte[] step = StepWriter.write(part.solid(), name);
    assertThat(StepProof.check(step, part.solid(), name)).isEmpty();
  }

  @Property(seed = "20261201", tries = 4, shrinking = ShrinkingMode.OFF)
  void bothHandsAreProvedByEveryWriter(@ForAll long seed) throws JobRejected {
    proveBothHands(seed);
  }

  @Tag("simulation")
  @Property(seed = "20261201", tries = 20, shrinking = ShrinkingMode.OFF)
  void manyPairsOfHandsAreProvedByEveryWriter(@ForAll long seed) throws JobRejected {
    proveBothHands(seed);
  }

  private static void proveBothHands(long seed) throws JobRejected {
    Random random = new Random(seed);
    DrawingStyle style = style(random);
    List<Part> pair =
        DrawingFixtures.parts(DrawingFixtures.random(random, true)).stream()
            .filter(p -> p.kind() == PartKind.PLATE)
            .toList();
    Part left = pair.get(0);
    Part right = pair.get(1);
    provedByAll(new PartSheets.Subject("plate", left, Optional.of(right)), style);
    provedByAll(new PartSheets.Subject("plate-right", right, Optional.of(left)), style);
  }

  @Property(seed = "20261202", tries = 3, shrinking = ShrinkingMode.OFF)
  void turnedPartsAndSlidersAreProvedByEveryWriter(@ForAll long seed) throws JobRejected {
    proveTurnedParts(seed);
  }

  @Tag("simulation")
  @Property(seed = "20261202", tries = 12, shrinking = ShrinkingMode.OFF)
  void manyTurnedPartsAreProvedByEveryWriter(@ForAll long seed) throws JobRejected {
    proveTurnedParts(seed);
  }

  private static void proveTurnedParts(long seed) throws JobRejected {
    Random random = new Random(seed);
    DrawingStyle style = style(random);
    for (Part part : DrawingFixtures.parts(DrawingFixtures.random(random, false))) {
      Angle by = Angle.ofDegrees(360 * random.nextDouble());
      provedByAll(
          new PartSheets.Subject(
              part.kind().word(), DrawingFixtures.turned(part, by), Optional.empty()),
          style);
      if (part.kind() == PartKind.SLIDER) {
        provedByAll(new PartSheets.Subject("slider", part, Optional.empty()), style);
      }
    }
  }

  private static void assertMirrored(
      List<Item.Circle> one, Vec2 origin, List<Item.Circle> other, Vec2 theirs, double factor) {
    assertThat(other).hasSameSizeAs(one);
    for (int i = 0; i < one.size(); i++) {
      Vec2 a = one.get(i).centre().minus(origin);
      Vec2 b = other.get(i).centre().minus(theirs);
      assertThat(b.x()).isCloseTo(factor * a.x(), within(MM));
      assertThat(b.y()).isCloseTo(-factor * a.y(), within(MM));
      assertThat(other.get(i).radiusMm()).isCloseTo(factor * one.get(i).radiusMm(), within(MM));
      // Upper and under face stay: an under-face recess is dashed in both.
      assertThat(other.get(i).pen()).isEqualTo(one.get(i).pen());
    }
  }

  @Property(seed = "20261203", tries = 8, shrinking = ShrinkingMode.OFF)
  void circlesOfTheOtherHandAreMirrorImages(@ForAll long seed) throws JobRejected {
    Random random = new Random(seed);
    DrawingStyle style = style(random);
    Plate plate = DrawingFixtures.random(random, true);
    List<Part> pair = DrawingFixtures.parts(plate);
    Page left =
        fullSize(new PartSheets.Subject("plate", pair.get(0), Optional.of(pair.get(1))), style);
    Page right =
        fullSize(new PartSheets.Subject("plate", pair.get(1), Optional.of(pair.get(0))), style);
    Vec2 origin = DrawingFixtures.origin(left, 0);
    List<Item.Circle> holes = DrawingFixtures.circles(left, Layer.HOLES);
    // Independent: the bolts as the job gives them, at 1:1 from the axes, found by their centres.
    for (Bolt bolt : plate.bolts()) {
      assertThat(holes).anyMatch(c -> c.centre().minus(origin).minus(bolt.at()).norm() < MM);
      assertThat(DrawingFixtures.circles(right, Layer.HOLES))
          .anyMatch(
              c ->
                  c.centre()
                          .minus(DrawingFixtures.origin(right, 0))
                          .minus(new Vec2(bolt.at().x(), -bolt.at().y()))
                          .norm()
                      < MM);
    }
    for (Layer layer : List.of(Layer.HOLES, Layer.RECESSES)) {
      assertMirrored(
          DrawingFixtures.circles(left, layer),
          origin,
          DrawingFixtures.circles(right, layer),
          DrawingFixtures.origin(right, 0),
          1);
    }
    // Files for machines have no small picture of the other hand, which would be cut as well.
    double beside = DrawingFixtures.origin(left, 0).x() + 100;
    assertThat(DrawingFixtures.circles(left, Layer.OTHER_VIEWS))
        .noneMatch(c -> c.centre().x() > beside);
  }

  @Property(seed = "20261204", tries = 8, shrinking = ShrinkingMode.OFF)
  void aPlateForBothSidesIsNotMirrored(@ForAll long seed) throws JobRejected {
    Random random = new Random(seed);
    DrawingStyle style = style(random);
    Plate plate = DrawingFixtures.random(random, false);
    Part part = DrawingFixtures.parts(plate).get(0);
    assertThat(part.hand()).isEqualTo(Hand.BOTH);
    Page page = fullSize(new PartSheets.Subject("plate", part, Optional.empty()), style);
    Vec2 origin = DrawingFixtures.origin(page, 0);
    List<Item.Circle> holes = DrawingFixtures.circles(page, Layer.HOLES);
    for (Bolt bolt : plate.bolts()) {
      assertThat(holes).anyMatch(c -> c.centre().minus(origin).minus(bolt.at()).norm() < MM);
    }
    assertThat(DrawingFixtures.circles(page, Layer.OTHER_VIEWS)).isEmpty();
    assertThat(DrawingFixtures.texts(page))
        .anyMatch(t -> t.content().contains("not mirrored"))
        .noneMatch(t -> t.content().contains("Mirror image"));
  }
}
