package dev.towerscribe.placement;

import dev.towerscribe.alignment.AlignmentTargets;
import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.DamperTravel;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.QuickStrut;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Tolerances;
import java.util.Optional;

/** Caster and camber of one side for a bearing in plan, quickly. One thread at a time. */
interface SideAngles {
  /** Wheel heights over the travel at which bump steer is looked at. */
  int TRAVELS = 21;

  /** What the search's quick figures may differ from the checks' own, radians. */
  double SURELY_RAD = 1e-9;

  /** Sets the bearing; false where the linkage does not reach ride height. */
  boolean set(double fore, double in);

  /** Caster, radians. */
  double caster();

  /** Camber with the knuckle bolt as measured, radians. */
  double camber();

  /** How far an aim for camber is out of the knuckle bolt's reach, radians; 0 within. */
  double outOfReach(double camberAim);

  /** Whether there is less caster than before the work. */
  boolean losesCaster();

  /** Whether the damper is drawn out at ride height, by a droop that the job states. */
  boolean losesDroop();

  /** Peak change of toe from full droop to full bump, radians; NaN for an estimate. */
  double bumpSteer();

  /** A side's angles; empty where the job gives neither points nor an axis. */
  static Optional<SideAngles> of(SideJob job) throws NotReached {
    if (job.strut().isPresent()) {
      return Optional.of(new Linkage(job));
    }
    return job.axis().map(axis -> new Estimate(job, axis));
  }

  /** Whether two sides read alike for every bearing: one is the other's mirror image. */
  static boolean alike(SideJob a, SideJob b) {
    return a.strut().map(StrutPoints::mirrored).equals(b.strut())
        && a.axis().equals(b.axis())
        && a.tower().lean().equals(b.tower().lean())
        && a.tower().pivotHeightMm() == b.tower().pivotHeightMm()
        && a.bearingHeightMm() == b.bearingHeightMm()
        && AlignmentTargets.of(a).equals(AlignmentTargets.of(b));
  }

  /** From the strut's points. */
  final class Linkage implements SideAngles {
    /**
     * A bolt's turn changes camber by itself but for a tenth at most, since the ride height is held
     * meanwhile; this much of it is had for certain.
     */
    private static final double SURE = 0.5;

    private final QuickStrut strut;
    private final QuickStrut from;
    private final QuickStrut to;
    private final double casterBefore;
    private final double longestMm;
    private final double turnFrom;
    private final double turnTo;
    private double fore;
    private double in;

    Linkage(SideJob job) throws NotReached {
      StrutPoints points = job.strut().orElseThrow();
      strut = new QuickStrut(job, points.limits().droopMm(), points.limits().bumpMm(), TRAVELS);
      casterBefore = Bay.of(job).before().caster();
      longestMm =
          points.limits().droopStated()
              ? DamperTravel.longestMm(job).orElse(Double.POSITIVE_INFINITY)
              : Double.POSITIVE_INFINITY;
      Optional<StrutPoints.KnuckleBolt> bolt = points.knuckleBolt();
      from = bolt.isPresent() ? QuickStrut.withKnuckle(job, bolt.get().from()) : null;
      turnFrom = bolt.map(b -> b.from().radians()).orElse(0.0);
      turnTo = bolt.map(b -> b.to().radians()).orElse(0.0);
      to = bolt.isPresent() ? QuickStrut.withKnuckle(job, bolt.get().to()) : null;
    }

    @Override
    public boolean set(double foreMm, double inMm) {
      fore = foreMm;
      in = inMm;
      return strut.set(foreMm, inMm);
    }

    @Override
    public double caster() {
      return strut.caster();
    }

    @Override
    public double camber() {
      return strut.camber();
    }

    @Override
    public double outOfReach(double aim) {
      if (from == null) {
        return Math.max(0.0, Math.abs(strut.camber() - aim) - READING);
      }
      if (wellWithin(aim)) {
        return 0.0;
      }
      if (!from.set(fore, in) || !to.set(fore, in)) {
        return Math.PI;
      }
      return Math.max(0.0, Math.max(from.camber() - aim, aim - to.camber()));
    }

    /** Whether an aim is so far within the bolt's reach that its ends need not be worked out. */
    private boolean wellWithin(double aim) {
      double change = aim - strut.camber();
      return change > SURE * turnFrom && change < SURE * turnTo;
    }

    @Override
    public boolean losesCaster() {
      return strut.caster() < casterBefore + SURELY_RAD;
    }

    @Override
    public boolean losesDroop() {
      return strut.damperMm() > longestMm - Tolerances.SAME_POINT_MM;
    }

    @Override
    public double bumpSteer() {
      return strut.bumpSteer();
    }
  }

  /** From a measured axis. */
  final class Estimate implements SideAngles {
    private final SideJob job;
    private final MeasuredAxis axis;
    private AxisEstimate at;

    Estimate(SideJob job, MeasuredAxis axis) {
      this.job = job;
      this.axis = axis;
      at = AxisEstimate.before(axis);
    }

    @Override
    public boolean set(double fore, double in) {
      at = AxisEstimate.at(axis, job, new Vec2(fore, in));
      return true;
    }

    @Override
    public double caster() {
      return at.caster();
    }

    @Override
    public double camber() {
      return at.camber();
    }

    @Override
    public double outOfReach(double aim) {
      return Math.max(0.0, Math.abs(at.camber() - aim) - READING);
    }

    @Override
    public boolean losesCaster() {
      return at.caster() < AxisEstimate.before(axis).caster() + SURELY_RAD;
    }

    @Override
    public boolean losesDroop() {
      return false;
    }

    @Override
    public double bumpSteer() {
      return Double.NaN;
    }
  }

  /**
   * Without a camber bolt a camber is met within a quarter of a degree, as the findings about aims
   * have it, radians.
   */
  double READING = Math.toRadians(0.25);
}
