package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.Network;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Moves of a whole pattern of holes, which the readings between its holes do not resist. */
final class Pattern {
  /** A motion of less is none: one hole alone has no turn. */
  private static final double NO_MOTION_MM = 1e-9;

  private Pattern() {}

  /**
   * What is open beside moves of the whole pattern: the covariance with those held that the
   * readings do not resist.
   *
   * @param net points of a plane, the pattern's holes first
   * @param holes how many are the pattern
   * @param normal the readings' normal matrix
   * @param x the unknowns
   */
  static Covariance held(Network net, int holes, double[][] normal, double[] x) {
    RealMatrix n = new Array2DRowRealMatrix(normal);
    RealMatrix held = n;
    for (RealVector motion : free(n, rigid(net, holes, x))) {
      double hold = n.getTrace() / n.getColumnDimension();
      held = held.add(motion.outerProduct(motion).scalarMultiply(hold));
    }
    return Covariance.inverse(held.getData());
  }

  /** Combinations of the rigid motions that the readings do not resist. */
  private static List<RealVector> free(RealMatrix n, List<RealVector> rigid) {
    RealMatrix small = new Array2DRowRealMatrix(rigid.size(), rigid.size());
    for (int a = 0; a < rigid.size(); a++) {
      RealVector resisted = n.operate(rigid.get(a));
      for (int b = 0; b <= a; b++) {
        small.setEntry(a, b, resisted.dotProduct(rigid.get(b)));
        small.setEntry(b, a, small.getEntry(a, b));
      }
    }
    List<RealVector> free = new ArrayList<>();
    for (double[] way : Covariance.inverse(small.getData()).open()) {
      RealVector motion = new ArrayRealVector(n.getColumnDimension());
      for (int a = 0; a < way.length; a++) {
        motion = motion.add(rigid.get(a).mapMultiply(way[a]));
      }
      free.add(motion);
    }
    return free;
  }

  /** Forward, inboard, and a turn about their middle of the holes alone; orthonormal. */
  private static List<RealVector> rigid(Network net, int holes, double[] x) {
    double middleX = 0;
    double middleY = 0;
    for (int h = 0; h < holes; h++) {
      middleX += net.place(x, h)[0] / holes;
      middleY += net.place(x, h)[1] / holes;
    }
    RealVector fore = new ArrayRealVector(x.length);
    RealVector in = new ArrayRealVector(x.length);
    RealVector turn = new ArrayRealVector(x.length);
    for (int h = 0; h < holes; h++) {
      int[] u = net.unknownsOf(h);
      fore.setEntry(u[0], 1);
      in.setEntry(u[1], 1);
      turn.setEntry(u[0], middleY - net.place(x, h)[1]);
      turn.setEntry(u[1], net.place(x, h)[0] - middleX);
    }
    return Stream.of(fore, in, turn)
        .filter(motion -> motion.getNorm() > NO_MOTION_MM)
        .map(motion -> motion.mapDivide(motion.getNorm()))
        .toList();
  }
}
