package dev.towerscribe.part;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.RoundedRectangle;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.PlateShape;
import dev.towerscribe.model.Slider;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plate and its slider as parts, in the hand of the plate frame, with what there is to say. */
final class PlateParts {
  /** Metal that should stay under a recess, as a share of the thickness. */
  private static final double FLOOR_SHARE = 1.0 / 3;

  private final Plate plate;
  private final Fit fit;
  private final LengthUnit units;
  private final Lengths lengths;

  PlateParts(Plate plate, Fit fit, LengthUnit units) {
    this.plate = plate;
    this.fit = fit;
    this.units = units;
    this.lengths = Lengths.in(units);
  }

  Part plate(Hand hand, int quantity) {
    PlateShape shape = PlateShape.of(plate, fit);
    return part(
        plate.name(), PartKind.PLATE, hand, quantity, shape, Assumptions.of(plate, fit, units));
  }

  Optional<Part> slider(Hand hand, int quantity) {
    return Slider.of(plate)
        .map(
            s ->
                part(
                    "slider",
                    PartKind.SLIDER,
                    hand,
                    quantity,
                    PlateShape.of(s),
                    Assumptions.of(s, plate.make(), units)));
  }

  private Part part(
      String name, PartKind kind, Hand hand, int quantity, PlateShape shape, List<String> assumed) {
    PlateMake make = plate.make();
    List<Feature> features = new ArrayList<>();
    int cutouts = shape.solid().cutouts().size();
    for (int i = 0; i < shape.cavities().size(); i++) {
      PlateShape.Cavity cavity = shape.cavities().get(i);
      features.add(
          i < cutouts
              ? slot(shape.solid().cutouts().get(i))
              : round(kind, cavity, shape.solid().bores().get(i - cutouts)));
    }
    return new Part(
        name,
        kind,
        hand,
        quantity,
        shape.solid(),
        features,
        make.material(),
        make.finish(),
        make.edgeBreakMm(),
        make.general(),
        make.densityGPerCm3(),
        assumed);
  }

  private Feature slot(Contour edge) {
    Stated<Double> width = plate.slotWidthMm();
    return new Feature(
        FeatureKind.SLOT,
        "slot",
        edge.bounds().centre(),
        width.value(),
        Optional.empty(),
        Optional.of(edge),
        Fits.general(plate.make().general().value(), width.value()),
        Optional.empty(),
        plate.make().slotEnds().value().word() + " ends",
        width.assumed());
  }

  private Feature round(PartKind kind, PlateShape.Cavity cavity, Bore bore) {
    return switch (cavity.use()) {
      case SLOT ->
          Feature.round(FeatureKind.SLOT, "slot", bore, generalOf(bore), "", slotAssumed());
      case BEARING -> {
        Stated<HoleFit> seat = plate.make().bearingBore().orElseThrow().fit();
        SizeTolerance size = Fits.hole(seat.value(), bore.diameterMm());
        yield Feature.round(FeatureKind.BEARING_BORE, "bearing", bore, size, "", seat.assumed());
      }
      case BOLT -> bolt(plate.bolts().get(cavity.place()), bore);
      case INDEX -> {
        Stated<HoleFit> pin = plate.make().indexHoles().orElseThrow().fit();
        String which = cavity.place() % 2 == 0 ? "a" : "b";
        boolean ofPlate = kind == PartKind.PLATE;
        yield Feature.round(
            FeatureKind.INDEX_HOLE,
            ofPlate ? (cavity.place() / 2 + 1) + which : which,
            bore,
            Fits.hole(pin.value(), bore.diameterMm()),
            "setting pin",
            pin.assumed());
      }
    };
  }

  private boolean slotAssumed() {
    return plate.slotWidthMm().assumed();
  }

  private SizeTolerance generalOf(Bore bore) {
    return Fits.general(plate.make().general().value(), bore.diameterMm());
  }

  private Feature bolt(Bolt bolt, Bore bore) {
    Stated<Double> hole = bolt.plateHoleMm(fit);
    double nominal = bolt.thread().nominalMm();
    boolean fixed = plate.make().fastening().value() == Fastening.FIXED;
    SizeTolerance size = fixed ? generalOf(bore) : Fits.clearance(bolt.thread(), fit, hole.value());
    // A fixed bolt takes its room from the clearance hole of the tower.
    double leastHole = fixed ? bolt.thread().holeMm(fit) : hole.value() + size.lowerMm();
    String note =
        fixed
            ? "tapped or stud hole for " + bolt.thread().name() + ", size as given"
            : "clearance for " + bolt.thread().name();
    return new Feature(
        FeatureKind.BOLT_HOLE,
        bolt.name(),
        bore.centre(),
        bore.diameterMm(),
        bore.recess(),
        Optional.empty(),
        size,
        Optional.of(new PositionTolerance(plate.make().fastening().value(), leastHole, nominal)),
        note,
        hole.assumed());
  }

  /** Everything to say about making the plate and its slider. */
  void judge(Findings findings) {
    PlateShape shape = PlateShape.of(plate, fit);
    WebCheck.passes(findings, "part", shape.solid(), names(shape), plate.thicknessMm());
    for (Feature f : plate(Hand.BOTH, 1).features()) {
      f.position().filter(p -> p.diameterMm() <= 0).ifPresent(p -> noRoom(f, p, findings));
    }
    plate.bolts().forEach(b -> recess(b, findings));
    Slider.of(plate).ifPresent(s -> slider(s, findings));
  }

  private static List<String> names(PlateShape shape) {
    return shape.cavities().stream().map(PlateShape.Cavity::name).toList();
  }

  private static void noRoom(Feature hole, PositionTolerance position, Findings findings) {
    findings.add(
        "part-position." + hole.name(),
        Severity.STOP,
        About.mm("bolt " + hole.name(), position.diameterMm(), 0, PositionTolerance.SOURCE),
        ("The bolt has no room in its hole (%s): no hole is placed that truly. Make the clearance"
                + " hole larger.")
            .formatted(position.formula()));
  }

  private void recess(Bolt bolt, Findings findings) {
    if (bolt.recess().isEmpty()) {
      return;
    }
    Recess recess = bolt.recess().get();
    double floor = plate.thicknessMm() - recess.depthMm(bolt.plateHoleMm(fit).value());
    double least = plate.thicknessMm() * FLOOR_SHARE;
    if (floor < least) {
      findings.add(
          "part-floor." + bolt.name(),
          Severity.CAUTION,
          About.mm("bolt " + bolt.name(), floor, least, Sources.PRACTICE),
          ("%s of metal under the head; a third of the thickness, %s, is the least that is usual."
                  + " Make the recess less deep or the plate thicker.")
              .formatted(lengths.with(floor), lengths.with(least)));
    }
    if (recess instanceof Recess.Counterbore && recess.diameterMm() <= bolt.flatsMm()) {
      findings.add(
          "part-recess." + bolt.name(),
          Severity.CAUTION,
          About.mm("bolt " + bolt.name(), recess.diameterMm(), bolt.flatsMm(), Sources.GEOMETRY),
          "The counterbore is %s wide and the head %s: the head does not go in. Make it wider."
              .formatted(lengths.with(recess.diameterMm()), lengths.with(bolt.flatsMm())));
    }
  }

  private void slider(Slider slider, Findings findings) {
    PlateShape shape = PlateShape.of(slider);
    WebCheck.passes(findings, "slider", shape.solid(), names(shape), slider.thicknessMm().value());
    double half = slider.lengthMm().value() / 2;
    double y = slider.widthMm().value() / 2;
    Contour reach =
        RoundedRectangle.rectangle(
            new Box(
                plate.bearingXMm() + plate.slot().fromMm() - half,
                -y,
                plate.bearingXMm() + plate.slot().toMm() + half,
                y),
            slider.cornerMm().value());
    Region swept = Region.inside(reach);
    double inside = Region.inside(plate.outline()).marginAround(swept);
    if (inside < 0) {
      findings.add(
          "slider-edge",
          Severity.CAUTION,
          About.mm("slider, plate's edge", inside, 0, Sources.PRACTICE),
          ("At the slot's ends the slider stands %s over the plate's edge. Check that it has room"
                  + " there, or make it smaller.")
              .formatted(lengths.with(-inside)));
    }
    for (Bolt bolt : plate.bolts()) {
      double gap = -swept.depth(bolt.at()) - bolt.seatRadiusMm();
      if (gap < 0) {
        findings.add(
            "slider-bolt." + bolt.name(),
            Severity.CAUTION,
            About.mm("slider, bolt " + bolt.name(), gap, 0, Sources.GEOMETRY),
            ("The slider reaches %s into the seat of bolt %s: it cannot pass a head or nut on that"
                    + " face. Sink it, or make the slider smaller.")
                .formatted(lengths.with(-gap), bolt.name()));
      }
    }
  }
}
