package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;

/**
 * The poses of one {@link Linkage} in plain numbers: ball joint B and top pivot S are set, then the
 * turn u of the upright about the line between them is found. One object serves for any number of
 * poses; one thread at a time.
 *
 * <p>With L = S - B, d = |L| and the damper's axis at the distance e from B, a vector x of the
 * upright (along the damper, square to it, across) has the share g/d along L and T/d and z square
 * to it, g = t x1 + e x2, T = t x2 - e x1, t = sqrt(d^2 - e^2). What fixes u is one known product x
 * . m = K: the tie rod's length with m = TI - B, or the heading with m straight ahead and K = 0.
 * Written in L, m and p = L x m the equation needs no unit vectors, hence one root beside t and no
 * angle; {@link #turn} and {@link #map} are its two halves.
 */
final class LinkageSolver {
  /** As close as a wheel height can be met, mm: some roundings of lengths of a metre. */
  static final double EXACT_MM = 1e-11;

  private static final int MOST_STEPS = 60;

  private final Linkage linkage;
  private final double axisDistance;
  private final Vec3 armCentre;
  private final Vec3 armOut;
  private final Vec3 armUp;
  private final Vec3 wheel;

  // What fixes the turn: which vector of the upright, and with what.
  private boolean tied;
  private Vec3 driver;
  private double driverSquared;
  private double sign;
  private double tieInnerX;
  private double tieInnerY;
  private double tieInnerZ;
  private double tieSquared;
  private double headX;
  private double headY;

  private double topX;
  private double topY;
  private double topZ;

  // Ball joint, and how it moves with the arm's turn.
  private double ballX;
  private double ballY;
  private double ballZ;
  private double moveX;
  private double moveY;
  private double moveZ;

  // The pose: L, m, p = L x m, and the figures of the equation for u.
  private double lx;
  private double ly;
  private double lz;
  private double mx;
  private double my;
  private double mz;
  private double px;
  private double py;
  private double pz;
  private double lm;
  private double squared;
  private double root;
  private double square;
  private double product;
  private double sine;
  private double scale;
  private double inverse;

  // The last vector mapped.
  private double x;
  private double y;
  private double z;

  LinkageSolver(Linkage linkage) {
    this.linkage = linkage;
    axisDistance = linkage.axisDistance();
    armCentre = linkage.armCentre();
    armOut = linkage.armOut();
    armUp = linkage.armUp();
    wheel = linkage.wheelCentre();
  }

  /** From now on the tie rod has a length. */
  LinkageSolver tied(Vec3 tieInner, double lengthMm) {
    tied = true;
    driver = linkage.tieOuter();
    driverSquared = driver.dot(driver);
    // Away from TI is where the product with TI - B falls.
    sign = -linkage.tieSign();
    tieInnerX = tieInner.x();
    tieInnerY = tieInner.y();
    tieInnerZ = tieInner.z();
    tieSquared = lengthMm * lengthMm;
    return this;
  }

  /** From now on the wheel is headed (cos toe, -sin toe). */
  LinkageSolver headed(double cosToe, double sinToe) {
    tied = false;
    driver = linkage.spin();
    // Turning to the left about an upward axis lessens toe-in on the left side: the falling root.
    sign = -1.0;
    headX = cosToe;
    headY = -sinToe;
    return this;
  }

  /** Sets the top pivot. */
  LinkageSolver top(double atX, double atY, double atZ) {
    topX = atX;
    topY = atY;
    topZ = atZ;
    return this;
  }

  /** Sets the arm's angle and finds the turn; null, or why there is none. */
  NotReached.Reason at(double armRadians) {
    return at(Math.cos(armRadians), Math.sin(armRadians));
  }

  /** Sets the ball joint on its circle and finds the turn; null, or why there is none. */
  NotReached.Reason atBall(double atX, double atY, double atZ) {
    ballX = atX;
    ballY = atY;
    ballZ = atZ;
    return turn();
  }

  private NotReached.Reason at(double c, double s) {
    moveX = armUp.x() * c - armOut.x() * s;
    moveY = armUp.y() * c - armOut.y() * s;
    moveZ = armUp.z() * c - armOut.z() * s;
    ballX = armCentre.x() + armOut.x() * c + armUp.x() * s;
    ballY = armCentre.y() + armOut.y() * c + armUp.y() * s;
    ballZ = armCentre.z() + armOut.z() * c + armUp.z() * s;
    return turn();
  }

  private NotReached.Reason turn() {
    lx = topX - ballX;
    ly = topY - ballY;
    lz = topZ - ballZ;
    squared = lx * lx + ly * ly + lz * lz;
    double along = squared - axisDistance * axisDistance;
    if (!(along > 0)) {
      return NotReached.Reason.TOP_TOO_CLOSE;
    }
    root = Math.sqrt(along);
    double k = 0.0;
    if (tied) {
      mx = tieInnerX - ballX;
      my = tieInnerY - ballY;
      mz = tieInnerZ - ballZ;
      k = (driverSquared + (mx * mx + my * my + mz * mz) - tieSquared) / 2;
    } else {
      mx = headX;
      my = headY;
      mz = 0.0;
    }
    lm = lx * mx + ly * my + lz * mz;
    px = ly * mz - lz * my;
    py = lz * mx - lx * mz;
    pz = lx * my - ly * mx;
    double area = px * px + py * py + pz * pz;
    double d1 = driver.x();
    double d2 = driver.y();
    double d3 = driver.z();
    square = root * d2 - axisDistance * d1;
    double offLine = square * square + d3 * d3 * squared;
    product = k * squared - (root * d1 + axisDistance * d2) * lm;
    double left = offLine * area - product * product;
    double whole = offLine * area * squared;
    if (!(left >= 0) || !(whole > 0)) {
      return tied ? NotReached.Reason.TIE_ROD : NotReached.Reason.TOE;
    }
    sine = sign * Math.sqrt(left * squared);
    scale = 1 / whole;
    inverse = scale * (offLine * area);
    return null;
  }

  /** Turns a vector of the upright into vehicle axes; the answer is in x, y and z. */
  private void map(double v1, double v2, double v3) {
    double t = root * v2 - axisDistance * v1;
    double a = t * square + v3 * driver.z() * squared;
    double b = v3 * square - t * driver.z();
    double km = (product * a + sine * b) * scale;
    double kp = (squared * product * b - sine * a) * scale;
    double kl = (root * v1 + axisDistance * v2) * inverse - km * lm;
    km *= squared;
    x = kl * lx + km * mx + kp * px;
    y = kl * ly + km * my + kp * py;
    z = kl * lz + km * mz + kp * pz;
  }

  /** Height of the wheel centre, mm. */
  double wheelZ() {
    map(wheel.x(), wheel.y(), wheel.z());
    return ballZ + z;
  }

  /**
   * How fast the arm turns with the wheel centre's height, radians to the mm, right after {@link
   * #wheelZ}. The upright's rate of turn w keeps the damper's axis through S, so w = (r L - a x b)
   * / t with a the axis, b the ball joint's rate and r its turn about the axis; the tie rod's
   * length, or the heading, gives r as a fraction, which is multiplied out.
   */
  private double turnPerMm() {
    double wx = x;
    double wy = y;
    map(1.0, 0.0, 0.0);
    double ux = y * moveZ - z * moveY;
    double uy = z * moveX - x * moveZ;
    double uz = x * moveY - y * moveX;
    map(driver.x(), driver.y(), driver.z());
    double nx = y * mz - z * my;
    double ny = z * mx - x * mz;
    double nz = x * my - y * mx;
    double rate = ux * nx + uy * ny + uz * nz;
    if (tied) {
      rate += root * (moveX * (x - mx) + moveY * (y - my) + moveZ * (z - mz));
    }
    double part = lx * nx + ly * ny + lz * nz;
    double whole = root * part;
    return whole / (whole * moveZ + (rate * lx - part * ux) * wy - (rate * ly - part * uy) * wx);
  }

  /**
   * Turns the arm until the wheel centre is at a height: Newton's steps with the exact slope, from
   * the second on through the two last heights and slopes together.
   *
   * @param wheelZMm height
   * @param start where to begin: tangent of half the arm's angle
   * @param withinMm how near is near enough
   * @return null, or why it does not get there
   */
  NotReached.Reason toHeight(double wheelZMm, double start, double withinMm) {
    // In the tangent of half the angle no step needs a sine.
    double h = start;
    double hBefore = 0.0;
    double errorBefore = Double.POSITIVE_INFINITY;
    double rateBefore = 0.0;
    for (int step = 0; step <= MOST_STEPS; step++) {
      if (!(Math.abs(h) < 1)) {
        return NotReached.Reason.ARM;
      }
      double k = 1 / (1 + h * h);
      NotReached.Reason reason = at((1 - h * h) * k, 2 * h * k);
      if (reason != null) {
        return reason;
      }
      double error = wheelZ() - wheelZMm;
      double size = Math.abs(error);
      // So near, a step that gains nothing has met rounding.
      if (size <= withinMm || size >= Math.abs(errorBefore) && size < 1e-9) {
        return null;
      }
      // Rate of h with height, the inverse function's slope.
      double rate = turnPerMm() * (1 + h * h) / 2;
      double next = h - error * rate;
      if (step > 0 && size < Math.abs(errorBefore)) {
        next = inverseCubic(hBefore, errorBefore, rateBefore, h, error, rate);
      }
      hBefore = h;
      errorBefore = error;
      rateBefore = rate;
      h = next;
    }
    return NotReached.Reason.ARM;
  }

  /** At error 0 the cubic through two values of h, with their slopes, over the error. */
  private static double inverseCubic(
      double h0, double e0, double r0, double h1, double e1, double r1) {
    double k = 1 / (e0 - e1);
    double chord = (h0 - h1) * k;
    double first = (chord - r1) * k;
    double second = (r0 - chord) * k;
    return h1 - e1 * (r1 - e1 * (first - e0 * (second - first) * k));
  }

  /** Tangent of half the arm's angle. */
  double halfTangent() {
    double c = (ballX - armCentre.x()) * armOut.x() + (ballY - armCentre.y()) * armOut.y();
    double s = (ballX - armCentre.x()) * armUp.x() + (ballY - armCentre.y()) * armUp.y();
    c += (ballZ - armCentre.z()) * armOut.z();
    s += (ballZ - armCentre.z()) * armUp.z();
    return s / (Math.sqrt(c * c + s * s) + c);
  }

  /** Caster, radians. */
  double caster() {
    return Math.atan2(-lx, lz);
  }

  /** Camber, radians. */
  double camber() {
    Vec3 spin = linkage.spin();
    map(spin.x(), spin.y(), spin.z());
    return -Math.asin(Math.max(-1.0, Math.min(1.0, z)));
  }

  /** Length of the damper, which lies along the upright's first axis. */
  double damperMm() {
    return root - linkage.strutLower().x();
  }

  /** Tangent of the wheel's toe, positive for toe-in. */
  double toeSlope() {
    Vec3 spin = linkage.spin();
    map(spin.x(), spin.y(), spin.z());
    return x / y;
  }

  /** Distance of the tie rod's ends, squared. */
  double tieSquared(Vec3 tieInner) {
    Vec3 outer = linkage.tieOuter();
    map(outer.x(), outer.y(), outer.z());
    double dx = ballX + x - tieInner.x();
    double dy = ballY + y - tieInner.y();
    double dz = ballZ + z - tieInner.z();
    return dx * dx + dy * dy + dz * dz;
  }

  /** The pose found. */
  Pose pose(Vec3 top, Vec3 tieInner, double tyreRadiusMm) {
    Vec3 ball = new Vec3(ballX, ballY, ballZ);
    Vec3 outer = fromBall(linkage.tieOuter());
    Vec3 centre = fromBall(wheel);
    Vec3 lower = fromBall(linkage.strutLower());
    Vec3 spin = linkage.spin();
    map(spin.x(), spin.y(), spin.z());
    return new Pose(top, ball, lower, tieInner, outer, centre, new Vec3(x, y, z), tyreRadiusMm);
  }

  private Vec3 fromBall(Vec3 v) {
    map(v.x(), v.y(), v.z());
    return new Vec3(ballX + x, ballY + y, ballZ + z);
  }
}
