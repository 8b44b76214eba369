package dev.towerscribe.alignment;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.Random;

/** Struts for tests: the invented demo car's, and others like it. */
final class Struts {
  private Struts() {}

  static StrutPoints demo() {
    return SampleJobs.strut();
  }

  /** The wheel's axis as measured. */
  static Vec3 spin(StrutPoints p) {
    return Linkage.spinAxis(p.camber(), p.toe());
  }

  /** Every coordinate of the demo strut moved by up to 15 mm, another camber and toe. */
  static StrutPoints random(Random random) {
    StrutPoints s = SampleJobs.strut();
    return s.withPoints(s.points().stream().map(p -> moved(p, random)).toList())
        .withCamber(Angle.ofDegrees(-3 + 4 * random.nextDouble()))
        .withToe(Angle.ofDegrees(-0.3 + 0.6 * random.nextDouble()));
  }

  static Vec3 moved(Vec3 p, Random random) {
    return p.plus(
        new Vec3(
            -15 + 30 * random.nextDouble(),
            -15 + 30 * random.nextDouble(),
            -15 + 30 * random.nextDouble()));
  }

  /** A top pivot somewhere on the tower. */
  static Vec3 movedTop(StrutPoints p, Random random) {
    return p.top()
        .plus(
            new Vec3(
                -40 + 60 * random.nextDouble(),
                -30 + 45 * random.nextDouble(),
                -5 + 15 * random.nextDouble()));
  }
}
