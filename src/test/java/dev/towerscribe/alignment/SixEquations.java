package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.StrutPoints;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.SimpleVectorValueChecker;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * The strut solved another way: a rigid body with three shifts and a rotation vector, six
 * constraint equations, Hipparchus' Levenberg-Marquardt from rest. Shares nothing with the closed
 * form but the points.
 */
final class SixEquations {
  private final StrutPoints p;
  private final Vec3 top;
  private final double wheelZ;
  private final Double toe;
  private final Vec3 f;
  private final Vec3 g;

  /** With a toe the wheel's heading is held; without one the tie rod's length. */
  SixEquations(StrutPoints p, Vec3 top, double wheelZ, Double toe) {
    this.p = p;
    this.top = top;
    this.wheelZ = wheelZ;
    this.toe = toe;
    Vec3 axis = p.top().minus(p.strutLower()).unit();
    f = axis.cross(new Vec3(1, 0, 0)).unit();
    g = axis.cross(f);
  }

  /** Where a body point or direction goes. */
  static Vec3 turned(double[] x, Vec3 v) {
    Vec3 w = new Vec3(x[3], x[4], x[5]);
    double angle = w.norm();
    if (angle == 0.0) {
      return v;
    }
    Vec3 k = w.times(1 / angle);
    double c = Math.cos(angle);
    return v.times(c).plus(k.cross(v).times(Math.sin(angle))).plus(k.times(k.dot(v) * (1 - c)));
  }

  /** Rotation about the ball joint as measured, then the shift. */
  Vec3 placed(double[] x, Vec3 point) {
    return p.ballJoint()
        .plus(turned(x, point.minus(p.ballJoint())))
        .plus(new Vec3(x[0], x[1], x[2]));
  }

  private double[] residuals(double[] x) {
    Vec3 ball = placed(x, p.ballJoint());
    Vec3 lower = placed(x, p.strutLower());
    double last;
    if (toe == null) {
      last =
          placed(x, p.tieOuter()).minus(p.tieInner()).norm()
              - p.tieOuter().minus(p.tieInner()).norm();
    } else {
      Vec3 spin = turned(x, Struts.spin(p));
      // Scaled to millimetres at the tie rod's arm.
      last = 130 * (spin.x() * Math.cos(toe) - spin.y() * Math.sin(toe));
    }
    return new double[] {
      ball.minus(p.armFront()).norm() - p.ballJoint().minus(p.armFront()).norm(),
      ball.minus(p.armRear()).norm() - p.ballJoint().minus(p.armRear()).norm(),
      top.minus(lower).dot(turned(x, f)),
      top.minus(lower).dot(turned(x, g)),
      last,
      placed(x, p.wheelCentre()).z() - wheelZ
    };
  }

  double[] solve() {
    MultivariateJacobianFunction model =
        point -> {
          double[] x = point.toArray();
          return new Pair<RealVector, RealMatrix>(
              new ArrayRealVector(residuals(x), false), jacobian(x));
        };
    double[] x = new double[6];
    // From rest; taken up again where the optimiser's own criteria stop it short of rounding.
    for (int round = 0; round < 4; round++) {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(1e-15)
              .withParameterRelativeTolerance(1e-15)
              .withOrthoTolerance(1e-15)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(x)
                      .model(model)
                      .target(new double[6])
                      .maxEvaluations(400)
                      .maxIterations(400)
                      .checkerPair(new SimpleVectorValueChecker(-1, -1))
                      .build());
      x = optimum.getPoint().toArray();
      if (worst(x) < 1e-11) {
        break;
      }
    }
    return x;
  }

  double worst(double[] x) {
    double worst = 0.0;
    for (double r : residuals(x)) {
      worst = Math.max(worst, Math.abs(r));
    }
    return worst;
  }

  private RealMatrix jacobian(double[] x) {
    RealMatrix j = new Array2DRowRealMatrix(6, 6);
    for (int k = 0; k < 6; k++) {
      double h = k < 3 ? 1e-4 : 1e-6;
      double[] up = x.clone();
      double[] down = x.clone();
      up[k] += h;
      down[k] -= h;
      double[] a = residuals(up);
      double[] b = residuals(down);
      for (int i = 0; i < 6; i++) {
        j.setEntry(i, k, (a[i] - b[i]) / (2 * h));
      }
    }
    return j;
  }
}
