package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.SecondSkin;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Thread;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Where a flat plate comes to rest on a tower that is not flat. Figures are independent. */
class RestingPlaneTest {
  /** Rounding of heights of some mm from a radius of some hundred. */
  private static final double EXACT = 1e-9;

  /** A rim taken every half millimetre stands up to 0.5^2 / (8 * 300) mm above its places. */
  private static final double SAMPLED = 2e-4;

  private static final Crown DOME = new Crown(140, 3);

  /** How far a sphere falls away: R - sqrt(R^2 - r^2), R by the sagitta rule w^2 / 8h + h / 2. */
  private static double fall(double across, double rise, double below, double r) {
    double radius = across * across / (8 * rise) + rise / 2 - below;
    return radius - Math.sqrt(radius * radius - r * r);
  }

  private static SideJob side(Seat seat, TowerChange tower) {
    return SampleJobs.side(Side.LEFT, tower.tower(), SampleJobs.plate(true))
        .with(new Seating(Optional.of(seat), Optional.empty()));
  }

  private static TowerChange domed() {
    return TowerChange.of(SampleJobs.plainTower()).withTop(Lean.LEVEL, Optional.of(DOME));
  }

  private static SideLayout lay(SideJob side) throws JobRejected {
    return Layout.of(Layout.atRest(SampleJobs.only(side))).sides().get(side.side());
  }

  private static Finding finding(SideLayout layout, String check) {
    return layout.findings().stream()
        .filter(f -> f.id().equals("left." + check))
        .findFirst()
        .orElseThrow(() -> new AssertionError(check + " is not among the findings"));
  }

  private static boolean has(SideLayout layout, String check) {
    return layout.findings().stream().anyMatch(f -> f.id().equals("left." + check));
  }

  @Test
  void onTopOfADomeItRestsOnTheRimOfTheFinishedOpening() throws JobRejected {
    SideLayout layout = lay(side(Seat.ON_TOP, domed()));
    double rim = fall(140, 3, 0, 52 - 3);
    for (PlacedHole hole : layout.holes()) {
      assertThat(layout.rest().gapMm(hole.at()))
          .isCloseTo(fall(140, 3, 0, hole.at().norm()) - rim, within(EXACT));
    }
    assertThat(layout.job().seating().restMm()).isCloseTo(-rim, within(EXACT));
    assertThat(layout.job().bearingHeightMm()).isCloseTo(18 - rim, within(EXACT));
  }

  @Test
  void fromBelowItRestsOnItsOwnRim() throws JobRejected {
    Tower two = domed().withMetal(Optional.empty(), Optional.of(new SecondSkin(1.1, 2.5))).tower();
    SideJob side =
        side(Seat.UNDERNEATH, TowerChange.of(two)).with(new Mount(Angle.ofDegrees(55), 0, 0, 16));
    SideLayout layout = lay(side);
    // The lower face is 1.4 + 2.5 + 1.1 mm nearer to the dome's middle.
    double rim = fall(140, 3, 5.0, 93);
    for (PlacedHole hole : layout.holes()) {
      assertThat(layout.rest().gapMm(hole.at()))
          .isCloseTo(rim - fall(140, 3, 5.0, hole.at().norm()), within(EXACT));
    }
    assertThat(layout.job().seating().restMm()).isCloseTo(-rim, within(EXACT));
  }

  @Test
  void flatTopsLeaveNothing() throws JobRejected {
    for (Seat seat : Seat.values()) {
      SideLayout layout = lay(side(seat, TowerChange.of(SampleJobs.plainTower())));
      layout.holes().forEach(h -> assertThat(layout.rest().gapMm(h.at())).isZero());
      assertThat(layout.job().bearingHeightMm()).isEqualTo(18.0);
      assertThat(has(layout, "stand-off")).isFalse();
    }
  }

  /**
   * Against all planes through three of the rim's places: the one that carries is above every other
   * place, and lowest where the bolts draw.
   */
  @Test
  void anIrregularRimCarriesOnThreePlacesAndNothingStandsAboveThePlate() throws JobRejected {
    SplittableRandom random = new SplittableRandom(20261201);
    for (int job = 0; job < 12; job++) {
      List<Vec2> ring = new ArrayList<>();
      for (int k = 0; k < 11; k++) {
        ring.add(
            Vec2.polar(38 + 16 * random.nextDouble(), new Angle((k + 0.5) * 2 * Math.PI / 11)));
      }
      Tower tower =
          domed().withOpening(Contour.circle(Vec2.ZERO, 20), Contour.polygon(ring)).tower();
      SideJob side =
          side(Seat.ON_TOP, TowerChange.of(tower))
              .with(new CutRules(0, 2, 0, 10))
              .with(new Mount(Angle.ofDegrees(360 * random.nextDouble()), 4, -3, 16));
      RestingPlane rest = lay(side).rest();
      List<Vec2> rim = new ArrayList<>();
      for (int k = 0; k < ring.size(); k++) {
        for (int i = 0; i < 8; i++) {
          rim.add(ring.get(k).toward(ring.get((k + 1) % ring.size()), i / 8.0));
        }
      }
      for (Vec2 p : rim) {
        assertThat(rest.gapMm(p)).isGreaterThan(-SAMPLED);
      }
      Vec2 middle =
          Layout.holes(side).stream()
              .map(PlacedHole::at)
              .reduce(Vec2.ZERO, Vec2::plus)
              .times(1 / 3.0);
      assertThat(rest.contacts()).hasSize(3);
      rest.contacts().forEach(p -> assertThat(rest.gapMm(p)).isCloseTo(0, within(EXACT)));
      assertThat(Region.inside(triangle(rest.contacts())).contains(middle)).isTrue();
      // A rim known at fewer places lets the plate lower by no more than it stands between them:
      // sides are at most 35 mm long, places 35 / 8 mm apart.
      double lowest = lowest(rim, middle);
      assertThat(rest.at(middle))
          .isBetween(lowest - EXACT, lowest + 4.4 * 4.4 / (8 * 800) + SAMPLED);
    }
  }

  private static Contour triangle(List<Vec2> three) {
    return Contour.polygon(three);
  }

  /** Height at a point of the lowest plane through three places that no other stands above. */
  private static double lowest(List<Vec2> rim, Vec2 at) {
    double best = Double.NaN;
    for (int a = 0; a < rim.size(); a++) {
      for (int b = a + 1; b < rim.size(); b++) {
        for (int c = b + 1; c < rim.size(); c++) {
          double[] plane = plane(rim.get(a), rim.get(b), rim.get(c));
          if (plane != null
              && rim.stream().allMatch(p -> value(plane, p) > height(p) - 1e-9)
              && !(value(plane, at) > best)) {
            best = value(plane, at);
          }
        }
      }
    }
    return best;
  }

  private static double height(Vec2 p) {
    return -fall(140, 3, 0, p.norm());
  }

  private static double value(double[] plane, Vec2 p) {
    return plane[0] + plane[1] * p.x() + plane[2] * p.y();
  }

  /** By Cramer's rule. */
  private static double[] plane(Vec2 a, Vec2 b, Vec2 c) {
    double det = a.x() * (b.y() - c.y()) + b.x() * (c.y() - a.y()) + c.x() * (a.y() - b.y());
    if (Math.abs(det) < 1e-6) {
      return null;
    }
    double za = height(a);
    double zb = height(b);
    double zc = height(c);
    double perX = (za * (b.y() - c.y()) + zb * (c.y() - a.y()) + zc * (a.y() - b.y())) / det;
    double perY = (za * (c.x() - b.x()) + zb * (a.x() - c.x()) + zc * (b.x() - a.x())) / det;
    return new double[] {za - perX * a.x() - perY * a.y(), perX, perY};
  }

  @Test
  void bothSidesOfATwinCarRestAlike() throws JobRejected {
    Tower tower =
        domed()
            .withOpening(
                Contour.circle(Vec2.ZERO, 20),
                Contour.sweptDisc(new Vec2(-4, -6), new Vec2(6, 10), 45))
            .tower();
    for (Seat seat : Seat.values()) {
      SideLayout left = lay(side(seat, TowerChange.of(tower)));
      SideJob other =
          SampleJobs.side(Side.RIGHT, tower, SampleJobs.plate(true))
              .with(new Seating(Optional.of(seat), Optional.empty()));
      SideLayout right = lay(other);
      assertThat(right.job().bearingHeightMm()).isEqualTo(left.job().bearingHeightMm());
      assertThat(right.grips()).isEqualTo(left.grips());
    }
  }

  @Test
  void aGapWithoutPackingStopsAndPackingFillsIt() throws JobRejected {
    SideJob bare = side(Seat.ON_TOP, domed());
    Finding stop = finding(lay(bare), "stand-off");
    assertThat(stop.severity()).isEqualTo(Severity.STOP);
    assertThat(stop.acceptable()).isTrue();
    for (Packing packing : Packing.values()) {
      SideLayout packed =
          lay(bare.with(new Seating(Optional.of(Seat.ON_TOP), Optional.of(packing))));
      assertThat(finding(packed, "stand-off").severity()).isEqualTo(Severity.NOTE);
      assertThat(packed.grips().get(0).packingMm()).isEqualTo(stop.figure(), within(EXACT));
    }
    // Just inside: a dome that leaves 1 mm at most needs nothing.
    SideLayout shallow =
        lay(
            side(
                Seat.ON_TOP,
                TowerChange.of(SampleJobs.plainTower())
                    .withTop(Lean.LEVEL, Optional.of(new Crown(140, 1)))));
    assertThat(finding(shallow, "stand-off").severity()).isEqualTo(Severity.NOTE);
    assertThat(finding(shallow, "stand-off").figure()).isLessThan(1.0);
  }

  private static TowerChange lipped(Lip.Turned turned, double flatRadius) {
    return TowerChange.of(SampleJobs.plainTower())
        .withMetal(
            Optional.of(new Lip(turned, 3, 2, Contour.circle(Vec2.ZERO, flatRadius))),
            Optional.empty());
  }

  @Test
  void aLipThatStaysHoldsThePlateOffAndOneThatIsCutAwayDoesNot() throws JobRejected {
    // The final cut has a radius of 49.
    SideLayout held = lay(side(Seat.ON_TOP, lipped(Lip.Turned.UP, 53)));
    held.holes().forEach(h -> assertThat(held.rest().gapMm(h.at())).isCloseTo(3.0, within(EXACT)));
    assertThat(held.job().bearingHeightMm()).isCloseTo(21, within(EXACT));
    assertThat(finding(held, "stand-off").severity()).isEqualTo(Severity.STOP);
    assertThat(finding(held, "cut-lip").figure()).isCloseTo(-4, within(EXACT));
    assertThat(finding(held, "cut-lip").severity()).isEqualTo(Severity.CAUTION);

    SideLayout gone = lay(side(Seat.ON_TOP, lipped(Lip.Turned.UP, 48)));
    gone.holes().forEach(h -> assertThat(gone.rest().gapMm(h.at())).isZero());
    assertThat(finding(gone, "cut-lip").severity()).isEqualTo(Severity.NOTE);
    assertThat(finding(gone, "cut-lip").figure()).isCloseTo(1, within(EXACT));

    SideLayout away = lay(side(Seat.UNDERNEATH, lipped(Lip.Turned.UP, 53)));
    away.holes().forEach(h -> assertThat(away.rest().gapMm(h.at())).isZero());
    SideLayout below = lay(side(Seat.UNDERNEATH, lipped(Lip.Turned.DOWN, 53)));
    below
        .holes()
        .forEach(h -> assertThat(below.rest().gapMm(h.at())).isCloseTo(3.0, within(EXACT)));
    assertThat(below.job().bearingHeightMm()).isCloseTo(15, within(EXACT));
  }

  @Test
  void noWasherStandsOnTheBendOfALip() throws JobRejected {
    Mount straight = new Mount(Angle.ZERO, 0, 0, 4);
    // Bolt A lies at (3, 76), its washer reaches 8 mm.
    double out = Math.hypot(3, 76);
    for (double over : new double[] {-0.01, 0.01}) {
      SideLayout layout =
          lay(side(Seat.ON_TOP, lipped(Lip.Turned.UP, out - 8 - over)).with(straight));
      Finding seat = finding(layout, "seat-lip.A");
      assertThat(seat.figure()).isCloseTo(8 + over, within(EXACT));
      assertThat(seat.severity()).isEqualTo(over < 0 ? Severity.STOP : Severity.NOTE);
    }
  }

  /** Independent: 6 + 1.4, two washers 1.6, nut 6.8, two pitches 1.25 make 19.9 for M8. */
  @Test
  void boltsGoThroughAllThereIs() throws JobRejected {
    SideLayout plain = lay(side(Seat.ON_TOP, TowerChange.of(SampleJobs.plainTower())));
    for (Grip grip : plain.grips()) {
      assertThat(grip.packingMm()).isZero();
      assertThat(grip.gripMm()).isCloseTo(7.4, within(EXACT));
      assertThat(grip.leastLengthMm()).isCloseTo(19.9, within(EXACT));
    }
    Tower two = domed().withMetal(Optional.empty(), Optional.of(new SecondSkin(1.1, 2.5))).tower();
    SideLayout thick = lay(side(Seat.ON_TOP, TowerChange.of(two)));
    for (int i = 0; i < 3; i++) {
      Grip grip = thick.grips().get(i);
      double shim = fall(140, 3, 0, thick.holes().get(i).at().norm()) - fall(140, 3, 0, 49);
      assertThat(grip.packingMm()).isCloseTo(shim, within(EXACT));
      assertThat(grip.leastLengthMm()).isCloseTo(19.9 + 3.6 + shim, within(EXACT));
    }
    assertThat(finding(thick, "skins-apart").severity()).isEqualTo(Severity.CAUTION);
    assertThat(has(plain, "skins-apart")).isFalse();
  }

  @Test
  void everyKnownThreadHasItsNutAndWasher() throws JobRejected {
    for (Thread thread : Thread.KNOWN) {
      List<Bolt> bolts =
          SampleJobs.plate(true).bolts().stream()
              .map(b -> new Bolt(b.name(), b.at(), thread, 13, 16))
              .toList();
      SideLayout layout =
          lay(
              SampleJobs.side(
                  Side.LEFT,
                  SampleJobs.plainTower(),
                  PlateChange.of(SampleJobs.plate(true))
                      .withShape(SampleJobs.plate(true).outline(), bolts)
                      .plate()));
      double d = thread.nominalMm();
      // Two washers, a nut of 0.8 to 0.95 D and two pitches take between 1.3 and 2.2 D.
      assertThat(layout.grips().get(0).leastLengthMm() - 7.4).isBetween(1.3 * d, 2.2 * d);
    }
  }

  /** The shaft goes through both skins, so a leaning one needs more room. */
  @Test
  void theSweepMeetsBothSkins() throws JobRejected {
    Tower two =
        TowerChange.of(SampleJobs.plainTower())
            .withMetal(Optional.empty(), Optional.of(new SecondSkin(1.1, 2.5)))
            .tower();
    Sweep one = lay(side(Seat.ON_TOP, TowerChange.of(SampleJobs.plainTower()))).sweep();
    Sweep both = lay(side(Seat.ON_TOP, TowerChange.of(two))).sweep();
    double tangent = Math.tan(Math.toRadians(one.slantDegrees()));
    assertThat(both.radiusMm() - one.radiusMm()).isCloseTo(3.6 * tangent, within(EXACT));
  }

  /**
   * Which face, packing, lip and skins move no hole: places by the formula offset + x (-sin, cos) +
   * y (cos, sin), spans between them, and the notch, on both sides alike.
   */
  @Test
  void holesSpansAndNotchesStayWhereTheyAre() throws JobRejected {
    Tower full = SampleJobs.fullTower();
    Tower odd =
        TowerChange.of(full)
            .withMetal(
                Optional.of(new Lip(Lip.Turned.DOWN, 3, 2, Contour.circle(Vec2.ZERO, 54))),
                Optional.of(new SecondSkin(1.1, 2.5)))
            .tower();
    double sin = Math.sin(Math.toRadians(55));
    double cos = Math.cos(Math.toRadians(55));
    for (Side side : Side.values()) {
      SideJob plain = SampleJobs.side(side, full, SampleJobs.plate(true));
      SideLayout was = lay(plain);
      for (Seat seat : Seat.values()) {
        for (Packing packing : Packing.values()) {
          SideLayout is =
              lay(plain.with(odd).with(new Seating(Optional.of(seat), Optional.of(packing))));
          for (PlacedHole hole : is.holes()) {
            Vec2 at = hole.bolt().at();
            assertThat(hole.at().x()).isCloseTo(-8 - at.x() * sin + at.y() * cos, within(EXACT));
            assertThat(hole.at().y()).isCloseTo(-3 + at.x() * cos + at.y() * sin, within(EXACT));
          }
          assertThat(is.spans()).isEqualTo(was.spans());
          assertThat(is.notches()).hasSameSizeAs(was.notches());
          for (int i = 0; i < was.notches().size(); i++) {
            assertThat(is.notches().get(i).widthLeftMm())
                .isEqualTo(was.notches().get(i).widthLeftMm());
          }
        }
      }
    }
  }

  /**
   * The strut rod runs from the bearing to the strut's lower point and passes the metal at the rim
   * of the opening, 1.47 mm below a flat top; the bearing lies lower by as much as its plate.
   */
  @Test
  void theSweepPassesTheMetalAtTheRim() throws JobRejected {
    double rim = fall(140, 3, 0, 49);
    for (Seat seat : Seat.values()) {
      SideJob side = side(seat, domed());
      Sweep sweep = lay(side).sweep();
      double rest = seat == Seat.ON_TOP ? rim : fall(140, 3, 1.4, 93);
      // Level tower, left side: fore is X, in is -Y. The lower point from the top pivot, 12 up.
      double lowerFore = -4 - -20;
      double lowerIn = 545 - 590;
      double lowerUp = 420 - 790 + 12;
      Vec2 bearing = side.bearing(-8);
      double height = 18 - rest;
      double part = (height + rim) / (height - lowerUp);
      assertThat(sweep.from().x())
          .isCloseTo(bearing.x() + part * (lowerFore - bearing.x()), within(EXACT));
      assertThat(sweep.from().y())
          .isCloseTo(bearing.y() + part * (lowerIn - bearing.y()), within(EXACT));
    }
  }
}
