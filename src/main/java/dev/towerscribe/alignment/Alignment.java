package dev.towerscribe.alignment;

import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Works out what an alignment bay will read before and after the work. */
public final class Alignment {
  private Alignment() {}

  /**
   * Every side of a job, and one against the other.
   *
   * @param job the job
   * @return its alignment; without sides if none gives strut points or a measured axis
   */
  public static JobAlignment of(Job job) {
    return of(job, Stage.PLANNED);
  }

  /**
   * Every side of a job, and one against the other.
   *
   * @param job the job
   * @param stage how far the work has come: what findings advise
   * @return its alignment; without sides if none gives strut points or a measured axis
   */
  public static JobAlignment of(Job job, Stage stage) {
    Map<Side, SideAlignment> sides = new EnumMap<>(Side.class);
    for (SideJob side : job.sides().values()) {
      of(side, stage).ifPresent(a -> sides.put(side.side(), a));
    }
    Optional<JobAlignment.Cross> before = cross(sides, SideAlignment::before);
    Optional<JobAlignment.Cross> at = cross(sides, SideAlignment::at);
    Findings findings = findings("both", stage);
    at.ifPresent(c -> AimFindings.cross(c, findings));
    return new JobAlignment(sides, before, at, findings.inOrder());
  }

  /** No sentence of an alignment holds a length, so that their unit does not matter. */
  private static Findings findings(String owner, Stage stage) {
    return new Findings(owner, Lengths.in(LengthUnit.MM), stage);
  }

  private static Optional<JobAlignment.Cross> cross(
      Map<Side, SideAlignment> sides, Function<SideAlignment, Optional<Reading>> when) {
    Optional<Reading> left = Optional.ofNullable(sides.get(Side.LEFT)).flatMap(when);
    Optional<Reading> right = Optional.ofNullable(sides.get(Side.RIGHT)).flatMap(when);
    return left.flatMap(
        l ->
            right.map(
                r ->
                    new JobAlignment.Cross(
                        minus(l.caster(), r.caster()), minus(l.camber(), r.camber()))));
  }

  private static Angle minus(Angle a, Angle b) {
    return new Angle(a.radians() - b.radians());
  }

  /**
   * One side: from its strut's points, or else an estimate from its measured axis.
   *
   * @param job the side
   * @return its alignment, or nothing if the job gives neither
   */
  public static Optional<SideAlignment> of(SideJob job) {
    return of(job, Stage.PLANNED);
  }

  private static Optional<SideAlignment> of(SideJob job, Stage stage) {
    Findings findings = findings(job.side().word(), stage);
    if (job.strut().isPresent()) {
      return Optional.of(fromPoints(job, job.strut().get(), findings));
    }
    return job.axis().map(axis -> fromAxis(job, axis, findings));
  }

  private static SideAlignment fromAxis(SideJob job, MeasuredAxis axis, Findings findings) {
    new ReachFindings(job, findings).estimate();
    List<SideAlignment.AtSetting> settings =
        settings(job, s -> Optional.of(Reading.of(AxisEstimate.at(axis, job, job.bearing(s)))));
    Reading before = Reading.of(AxisEstimate.before(axis));
    Reading at = Reading.of(AxisEstimate.at(axis, job, job.bearing(job.mount().settingMm())));
    SideAlignment bare =
        new SideAlignment(
            job, true, Optional.of(before), Optional.of(at), settings, Optional.empty(), List.of());
    ChangeFindings.caster(before, at, findings);
    AimFindings.add(bare, findings);
    return bare.with(findings.inOrder());
  }

  private static SideAlignment fromPoints(SideJob job, StrutPoints strut, Findings findings) {
    ReachFindings reach = new ReachFindings(job, findings);
    Optional<Reading> none = Optional.empty();
    if (reach.pointFaults()) {
      return new SideAlignment(
          job, false, none, none, List.of(), Optional.empty(), findings.inOrder());
    }
    Bay bay = Bay.of(job);
    Vec2 chosen = job.bearing(job.mount().settingMm());
    Optional<Pose> before = reach.atRide("before", "original top pivot", bay::before);
    Optional<Pose> at = reach.atRide("at", "chosen setting", () -> bay.at(chosen));
    List<SideAlignment.AtSetting> settings =
        settings(job, s -> reach.atSetting(s, () -> bay.at(job.bearing(s))).map(Reading::of));
    at.ifPresent(set -> reach.overLimits(bay, set));
    if (before.isPresent() && at.isPresent()) {
      ChangeFindings.caster(Reading.of(before.get()), Reading.of(at.get()), findings);
      Optional<DamperTravel> left = DamperTravel.of(bay, before.get(), at.get());
      ChangeFindings.droop(strut.limits(), left, findings);
    }
    StrutFigures figures =
        new StrutFigures(
            before.map(p -> Curves.of(bay, p)),
            at.map(p -> Curves.of(bay, p)),
            strut.knuckleBolt().flatMap(b -> reachable(b, t -> bay.withKnuckle(t).before())),
            strut.knuckleBolt().flatMap(b -> reachable(b, t -> bay.withKnuckle(t).at(chosen))),
            before.flatMap(p -> sure(() -> Sensitivity.before(job))),
            at.flatMap(p -> sure(() -> Sensitivity.at(job, job.mount().settingMm()))),
            strut.plusMinus());
    SideAlignment bare =
        new SideAlignment(
            job,
            false,
            before.map(Reading::of),
            at.map(Reading::of),
            settings,
            Optional.of(figures),
            List.of());
    AimFindings.add(bare, findings);
    return bare.with(findings.inOrder());
  }

  private static List<SideAlignment.AtSetting> settings(
      SideJob job, Function<Double, Optional<Reading>> at) {
    return SlotSettings.of(job.plate().slot()).stream()
        .map(s -> new SideAlignment.AtSetting(s, at.apply(s)))
        .toList();
  }

  /** A pose that may not be reached, for a turn of the knuckle's bolt. */
  private interface Turned {
    Pose by(Angle turn) throws NotReached;
  }

  /** Camber grows with the bolt's turn, so that the ends of the one are those of the other. */
  private static Optional<StrutFigures.Reachable> reachable(
      StrutPoints.KnuckleBolt bolt, Turned turned) {
    return NotReached.ifReached(
        () ->
            new StrutFigures.Reachable(
                new Angle(turned.by(bolt.from()).camber()),
                new Angle(turned.by(bolt.to()).camber())));
  }

  /** Absent where a derivative has no finite value: at the very end of the linkage's reach. */
  private static Optional<Sensitivity.Figures> sure(NotReached.Ask<Sensitivity.Figures> ask) {
    return NotReached.ifReached(ask).filter(Sensitivity.Figures::isFinite);
  }
}
