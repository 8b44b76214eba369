package dev.towerscribe.alignment;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * The linkage of {@link Mechanism} with its wheel headed, in numbers that carry their gradient.
 * Only the way an alignment bay takes is here, and it starts from an arm angle already found.
 */
final class GradientLinkage {
  private final FieldVector3D<Gradient> ball;
  private final FieldVector3D<Gradient> axisUp;
  private final FieldVector3D<Gradient> toAxis;
  private final FieldVector3D<Gradient> across;
  private final Gradient axisDistance;
  private final FieldVector3D<Gradient> wheelBody;
  private final FieldVector3D<Gradient> lowerBody;
  private final FieldVector3D<Gradient> spinBody;
  private final FieldVector3D<Gradient> armCentre;
  private final FieldVector3D<Gradient> armOut;
  private final FieldVector3D<Gradient> armUp;

  GradientLinkage(
      FieldVector3D<Gradient> top,
      FieldVector3D<Gradient> ball,
      FieldVector3D<Gradient> armFront,
      FieldVector3D<Gradient> armRear,
      FieldVector3D<Gradient> strutLower,
      FieldVector3D<Gradient> wheel,
      FieldVector3D<Gradient> spin) {
    this.ball = ball;
    axisUp = top.subtract(strutLower).normalize();
    FieldVector3D<Gradient> toLower = strutLower.subtract(ball);
    FieldVector3D<Gradient> square =
        toLower.subtract(axisUp.scalarMultiply(toLower.dotProduct(axisUp)));
    axisDistance = square.getNorm();
    toAxis = square.scalarMultiply(axisDistance.reciprocal());
    across = axisUp.crossProduct(toAxis);
    wheelBody = inBody(wheel.subtract(ball));
    lowerBody = inBody(toLower);
    spinBody = inBody(spin);
    FieldVector3D<Gradient> axis = armFront.subtract(armRear).normalize();
    armCentre = armRear.add(axis.scalarMultiply(ball.subtract(armRear).dotProduct(axis)));
    armOut = ball.subtract(armCentre);
    FieldVector3D<Gradient> up = axis.crossProduct(armOut);
    armUp = up.getZ().getValue() >= 0 ? up : up.negate();
  }

  private FieldVector3D<Gradient> inBody(FieldVector3D<Gradient> v) {
    return new FieldVector3D<>(v.dotProduct(axisUp), v.dotProduct(toAxis), v.dotProduct(across));
  }

  /** The pose at a wheel height, from the arm angle that gives it to rounding. */
  GradientPose headedAtHeight(
      Gradient wheelZ, FieldVector3D<Gradient> top, double toe, double armRadians) {
    Gradient zero = wheelZ.getField().getZero();
    Gradient angle = zero.add(armRadians);
    double step = 1e-6;
    double slope =
        (headed(zero.add(armRadians + step), top, toe).wheel().getZ().getValue()
                - headed(zero.add(armRadians - step), top, toe).wheel().getZ().getValue())
            / (2 * step);
    // Newton twice: the first step brings the gradient, the second clears what the finite slope
    // left of it.
    for (int i = 0; i < 3; i++) {
      Gradient error = headed(angle, top, toe).wheel().getZ().subtract(wheelZ);
      angle = angle.subtract(error.divide(slope));
    }
    return headed(angle, top, toe);
  }

  private GradientPose headed(Gradient angle, FieldVector3D<Gradient> top, double toe) {
    FieldVector3D<Gradient> joint =
        armCentre.add(armOut.scalarMultiply(angle.cos())).add(armUp.scalarMultiply(angle.sin()));
    FieldVector3D<Gradient> line = top.subtract(joint);
    Gradient distance = line.getNorm();
    Gradient along =
        line.getNormSq().subtract(axisDistance.multiply(axisDistance)).sqrt().divide(distance);
    Gradient aside = axisDistance.divide(distance);
    FieldVector3D<Gradient> c1 = line.scalarMultiply(distance.reciprocal());
    FieldVector3D<Gradient> near =
        toAxis.scalarMultiply(along).subtract(axisUp.scalarMultiply(aside));
    FieldVector3D<Gradient> c2 = near.subtract(c1.scalarMultiply(near.dotProduct(c1))).normalize();
    FieldVector3D<Gradient> c3 = c1.crossProduct(c2);
    // Heading: the wheel's axis square to (cos toe, -sin toe, 0).
    double mx = Math.cos(toe);
    double my = -Math.sin(toe);
    Gradient m1 = c1.getX().multiply(mx).add(c1.getY().multiply(my));
    Gradient m2 = c2.getX().multiply(mx).add(c2.getY().multiply(my));
    Gradient m3 = c3.getX().multiply(mx).add(c3.getY().multiply(my));
    Gradient s1 = first(spinBody, along, aside);
    Gradient s2 = second(spinBody, along, aside);
    Gradient s3 = spinBody.getZ();
    Gradient a = s2.multiply(m2).add(s3.multiply(m3));
    Gradient b = s2.multiply(m3).subtract(s3.multiply(m2));
    Gradient c = s1.multiply(m1).negate();
    Gradient squared = a.multiply(a).add(b.multiply(b));
    Gradient root = squared.subtract(c.multiply(c)).sqrt().negate();
    Gradient cos = a.multiply(c).add(b.multiply(root)).divide(squared);
    Gradient sin = b.multiply(c).subtract(a.multiply(root)).divide(squared);
    Turn turn = new Turn(c1, c2, c3, along, aside, cos, sin);
    return new GradientPose(
        top,
        joint,
        joint.add(turn.map(lowerBody)),
        joint.add(turn.map(wheelBody)),
        turn.map(spinBody));
  }

  private static Gradient first(FieldVector3D<Gradient> v, Gradient along, Gradient aside) {
    return along.multiply(v.getX()).add(aside.multiply(v.getY()));
  }

  private static Gradient second(FieldVector3D<Gradient> v, Gradient along, Gradient aside) {
    return along.multiply(v.getY()).subtract(aside.multiply(v.getX()));
  }

  private record Turn(
      FieldVector3D<Gradient> c1,
      FieldVector3D<Gradient> c2,
      FieldVector3D<Gradient> c3,
      Gradient along,
      Gradient aside,
      Gradient cos,
      Gradient sin) {
    FieldVector3D<Gradient> map(FieldVector3D<Gradient> v) {
      Gradient x2 = second(v, along, aside);
      Gradient x3 = v.getZ();
      return c1.scalarMultiply(first(v, along, aside))
          .add(c2.scalarMultiply(x2.multiply(cos).subtract(x3.multiply(sin))))
          .add(c3.scalarMultiply(x2.multiply(sin).add(x3.multiply(cos))));
    }
  }
}
