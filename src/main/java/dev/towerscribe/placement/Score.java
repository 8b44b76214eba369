package dev.towerscribe.placement;

import dev.towerscribe.alignment.AlignmentTargets;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.layout.quick.Answer;
import dev.towerscribe.layout.quick.Barrier;
import dev.towerscribe.layout.quick.MountCheck;
import dev.towerscribe.layout.quick.Scratch;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How good a place is, one figure for each thing that may be wanted; larger is better. One thread
 * at a time.
 *
 * <p>For the aims: the lesser caster of both sides in degrees, less {@link #CAMBER_WORTH} of each
 * degree by which the camber of the worse side is away from its aim. A place past the most caster
 * wanted, or whose camber aim is out of the knuckle bolt's reach, counts as a degree and more worse
 * than one that just is not; a place past the camber limit does not count at all.
 */
final class Score {
  /**
   * What a degree of camber is worth in degrees of caster. Our own choice, no source: camber must
   * not be bought with more than about a third of its size in caster.
   */
  static final double CAMBER_WORTH = 0.3;

  /** A limit is passed by more than rounding, degrees. */
  static final double PASS_DEG = 1e-9;

  private final Lattice lattice;
  private final MountCheck check;
  private final Scratch scratch = new Scratch();
  private final List<OneSide> sides = new ArrayList<>();
  private final double bearingX;

  /** What the linkage has against a place. */
  enum Trouble {
    /** Nothing. */
    NONE,
    /** It does not get to ride height. */
    LINKAGE,
    /** A camber past its limit. */
    CAMBER_LIMIT,
    /** Less caster than before the work. */
    CASTER_LOST,
    /** No droop left in the damper. */
    DROOP_LOST,
    /** Both sides too far apart. */
    CROSS,
    /** More caster than wanted. */
    PAST,
    /** The camber aim out of the knuckle bolt's reach. */
    CAMBER_AIM
  }

  /** A side with what it is held against, in degrees. */
  private record OneSide(Side side, SideAngles angles, AlignmentTargets targets) {
    boolean pastCamberLimit() {
      return Math.toDegrees(angles.camber()) < targets.camberLimit().degrees() - PASS_DEG;
    }

    double casterTooMuch() {
      return targets.casterTo().isPresent()
          ? Math.toDegrees(angles.caster()) - targets.casterTo().get().degrees()
          : Double.NEGATIVE_INFINITY;
    }

    double camberMissed() {
      return Math.toDegrees(angles.outOfReach(targets.camber().radians()));
    }

    double camberAway() {
      return Math.abs(Math.toDegrees(angles.camber()) - targets.camber().degrees());
    }

    boolean has(double fore, double in, Trouble asked) {
      if (!angles.set(fore, in)) {
        return asked == Trouble.LINKAGE;
      }
      return switch (asked) {
        case NONE, LINKAGE, CROSS -> false;
        case CASTER_LOST -> angles.losesCaster();
        case DROOP_LOST -> angles.losesDroop();
        case CAMBER_LIMIT -> pastCamberLimit();
        case PAST -> casterTooMuch() > PASS_DEG;
        case CAMBER_AIM -> camberMissed() > PASS_DEG;
      };
    }
  }

  // Read at the last place.
  private Trouble trouble = Trouble.NONE;
  private double caster;
  private double aims;

  Score(Job job, Lattice lattice, MountCheck check) throws NotReached {
    this.lattice = lattice;
    this.check = check;
    List<SideJob> jobs = new ArrayList<>();
    for (SideJob side : job.sides().values()) {
      if (jobs.stream().noneMatch(other -> SideAngles.alike(other, side))) {
        jobs.add(side);
      }
    }
    bearingX = jobs.get(0).plate().bearingXMm();
    for (SideJob side : jobs) {
      SideAngles angles = SideAngles.of(side).orElseThrow();
      sides.add(new OneSide(side.side(), angles, AlignmentTargets.of(side)));
    }
  }

  private Scratch at(int rotation, int rearward, int inboard) {
    return scratch.at(lattice.radians(rotation), lattice.mm(rearward), lattice.mm(inboard));
  }

  private Scratch at(Lattice.Place p) {
    return at(p.rotation(), p.rearward(), p.inboard());
  }

  /** What the metal says of a place, quickly. */
  Answer quick(int rotation, int rearward, int inboard) {
    return check.quick(at(rotation, rearward, inboard));
  }

  /** What the metal says of a place. */
  boolean allows(int rotation, int rearward, int inboard) {
    return check.allows(at(rotation, rearward, inboard));
  }

  /** Whether a stop finding is about the place, and no placement with it stands. */
  boolean judgesPlace(Finding stop) {
    return Layouts.judgesPlace(stop, check.standing());
  }

  Barrier barrier() {
    return scratch.barrier();
  }

  /**
   * Works out what the linkage makes of a place, which the metal is not asked about.
   *
   * @return false where a side does not get to ride height, passes its camber limit or meets a stop
   *     finding about alignment
   */
  boolean read(Lattice.Place p) {
    double fore = fore(p);
    double in = in(p);
    double least = Double.POSITIVE_INFINITY;
    double past = 0.0;
    double missed = 0.0;
    double away = 0.0;
    for (OneSide side : sides) {
      if (!side.angles().set(fore, in)) {
        trouble = Trouble.LINKAGE;
        return false;
      }
      if (side.pastCamberLimit()) {
        trouble = Trouble.CAMBER_LIMIT;
        return false;
      }
      if (side.angles().losesCaster() || side.angles().losesDroop()) {
        trouble = side.angles().losesCaster() ? Trouble.CASTER_LOST : Trouble.DROOP_LOST;
        return false;
      }
      least = Math.min(least, Math.toDegrees(side.angles().caster()));
      past = Math.max(past, side.casterTooMuch());
      missed = Math.max(missed, side.camberMissed());
      away = Math.max(away, side.camberAway());
    }
    if (apart()) {
      trouble = Trouble.CROSS;
      return false;
    }
    caster = least;
    double score = least - CAMBER_WORTH * away;
    if (past > PASS_DEG) {
      score -= 1 + 2 * past;
    }
    if (missed > PASS_DEG) {
      score -= 1 + 10 * missed;
    }
    aims = score;
    trouble =
        past > PASS_DEG ? Trouble.PAST : missed > PASS_DEG ? Trouble.CAMBER_AIM : Trouble.NONE;
    return true;
  }

  /** Whether the sides just set read too far apart. */
  private boolean apart() {
    if (sides.size() < 2) {
      return false;
    }
    SideAngles a = sides.get(0).angles();
    SideAngles b = sides.get(1).angles();
    double most = Math.toRadians(AlignmentTargets.CROSS_STOP_DEG) - SideAngles.SURELY_RAD;
    return Math.abs(a.caster() - b.caster()) > most || Math.abs(a.camber() - b.camber()) > most;
  }

  private double fore(Lattice.Place p) {
    double along = bearingX + lattice.settings().get(p.setting());
    return -lattice.mm(p.rearward()) - along * Math.sin(lattice.radians(p.rotation()));
  }

  private double in(Lattice.Place p) {
    double along = bearingX + lattice.settings().get(p.setting());
    return lattice.mm(p.inboard()) + along * Math.cos(lattice.radians(p.rotation()));
  }

  /**
   * The one side of two that differ which has a trouble at a place; empty where both have it, where
   * the sides are alike, or where the job has one side only.
   */
  Optional<Side> onlySide(Lattice.Place p, Trouble asked) {
    List<OneSide> having = sides.stream().filter(s -> s.has(fore(p), in(p), asked)).toList();
    return sides.size() > 1 && having.size() == 1
        ? Optional.of(having.get(0).side())
        : Optional.empty();
  }

  /** Whether the place read lies within the window and the bolt's reach. */
  boolean within() {
    return trouble == Trouble.NONE;
  }

  /** The lesser caster of both sides at the place read, degrees. */
  double caster() {
    return caster;
  }

  /** What the linkage has against the place read. */
  Trouble trouble() {
    return trouble;
  }

  /** Score for the aims of the place read. */
  double aims() {
    return aims;
  }

  /** Greatest bump steer of both sides at the place read, degrees, negative. */
  double bumpSteer() {
    double most = 0.0;
    for (OneSide side : sides) {
      most = Math.max(most, side.angles().bumpSteer());
    }
    return -Math.toDegrees(most);
  }

  /** Metal taken from brackets, mm2, negative. */
  double metal(Lattice.Place p) {
    return -check.notchesMm2(at(p));
  }

  /** Least distance of the bolts from what they must stay away from, mm. */
  double room(Lattice.Place p) {
    return check.slack(at(p));
  }
}
