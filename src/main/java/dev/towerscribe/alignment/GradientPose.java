package dev.towerscribe.alignment;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/** A pose in numbers that carry their gradient; the formulas of {@link Pose}. */
record GradientPose(
    FieldVector3D<Gradient> top,
    FieldVector3D<Gradient> ball,
    FieldVector3D<Gradient> strutLower,
    FieldVector3D<Gradient> wheel,
    FieldVector3D<Gradient> spin) {
  Gradient caster() {
    return ball.getX().subtract(top.getX()).atan2(top.getZ().subtract(ball.getZ()));
  }

  Gradient inclination() {
    return ball.getY().subtract(top.getY()).atan2(top.getZ().subtract(ball.getZ()));
  }

  Gradient camber() {
    return spin.getZ().asin().negate();
  }

  Gradient damper() {
    return top.subtract(strutLower).getNorm();
  }

  private FieldVector3D<Gradient> contact(double radius) {
    Gradient z = spin.getZ();
    FieldVector3D<Gradient> down =
        new FieldVector3D<>(
            spin.getX().multiply(z), spin.getY().multiply(z), z.multiply(z).subtract(1.0));
    return wheel.add(down.normalize().scalarMultiply(radius));
  }

  /** From the contact point to where the steering axis meets its level. */
  private FieldVector3D<Gradient> toAxis(double radius) {
    FieldVector3D<Gradient> contact = contact(radius);
    FieldVector3D<Gradient> axis = top.subtract(ball);
    Gradient k = contact.getZ().subtract(ball.getZ()).divide(axis.getZ());
    return ball.add(axis.scalarMultiply(k)).subtract(contact);
  }

  private Gradient level() {
    return spin.getX().multiply(spin.getX()).add(spin.getY().multiply(spin.getY())).sqrt();
  }

  Gradient scrub(double radius) {
    FieldVector3D<Gradient> d = toAxis(radius);
    return d.getX()
        .multiply(spin.getX())
        .add(d.getY().multiply(spin.getY()))
        .negate()
        .divide(level());
  }

  Gradient trail(double radius) {
    FieldVector3D<Gradient> d = toAxis(radius);
    return d.getX().multiply(spin.getY()).subtract(d.getY().multiply(spin.getX())).divide(level());
  }
}
