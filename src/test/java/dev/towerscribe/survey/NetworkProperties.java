package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.DataSnooping;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What must hold of any network. */
class NetworkProperties {
  /** Solutions are good to 1e-9 of a standard deviation; some networks magnify that. */
  private static final double SAME_MM = 1e-4;

  /** Points by tapes alone, some errors in them, and no guess. */
  private static final class Cloud {
    final Vector3D[] known = new Vector3D[5];
    final Vector3D[] points = new Vector3D[3];
    final double[] noise = new double[40];

    Cloud(long seed) {
      Random random = new Random(seed);
      for (int i = 0; i < known.length; i++) {
        known[i] = at(random);
      }
      for (int i = 0; i < points.length; i++) {
        points[i] = at(random);
      }
      for (int i = 0; i < noise.length; i++) {
        noise[i] = random.nextGaussian();
      }
    }

    private static Vector3D at(Random random) {
      return new Vector3D(
          1500 * random.nextDouble() - 700,
          1500 * random.nextDouble() - 700,
          1500 * random.nextDouble() - 700);
    }

    Nets net(Rotation turn, Vector3D shift, boolean mirrored) {
      Nets n = new Nets();
      int[] k = new int[known.length];
      for (int i = 0; i < known.length; i++) {
        Vector3D p = moved(known[i], turn, shift, mirrored);
        k[i] = n.known(p.getX(), p.getY(), p.getZ());
      }
      int e = 0;
      int before = -1;
      for (Vector3D p : points) {
        int node = n.free(0, 0, 0);
        for (int i = 0; i < known.length; i++) {
          n.tape(k[i], node, 1, p.distance(known[i]) + noise[e++]);
        }
        if (before >= 0) {
          n.tape(before, node, 2, p.distance(points[node - known.length - 1]) + noise[e++]);
        }
        before = node;
      }
      return n;
    }

    static Vector3D moved(Vector3D p, Rotation turn, Vector3D shift, boolean mirrored) {
      Vector3D q = mirrored ? new Vector3D(p.getX(), -p.getY(), p.getZ()) : p;
      return turn.applyTo(q).add(shift);
    }
  }

  @Property(seed = "20261120", tries = 120)
  void turnedShiftedAndMirroredNetworksHaveTurnedResults(
      @ForAll long seed, @ForAll boolean mirrored) {
    Cloud cloud = new Cloud(seed);
    Random random = new Random(~seed);
    Rotation turn =
        new Rotation(
            random.nextGaussian(),
            random.nextGaussian(),
            random.nextGaussian(),
            random.nextGaussian(),
            true);
    Vector3D shift = new Vector3D(random.nextInt(500), random.nextInt(500), random.nextInt(500));
    Nets plain = cloud.net(Rotation.IDENTITY, Vector3D.ZERO, false);
    Nets other = cloud.net(turn, shift, mirrored);
    Adjustment a = plain.solve();
    Adjustment b = other.solve();
    assertThat(b.consistency().squares()).isCloseTo(a.consistency().squares(), within(1e-6));
    for (int i = 0; i < cloud.points.length; i++) {
      double[] p = plain.net().place(a.x(), cloud.known.length + i);
      double[] q = other.net().place(b.x(), cloud.known.length + i);
      Vector3D there = Cloud.moved(new Vector3D(p[0], p[1], p[2]), turn, shift, mirrored);
      assertThat(there.distance(new Vector3D(q[0], q[1], q[2]))).isLessThan(SAME_MM);
      // Turning changes single variances, but not their sum.
      assertThat(trace(b, 3 * i)).isCloseTo(trace(a, 3 * i), within(1e-4 * trace(a, 3 * i)));
    }
  }

  private static double trace(Adjustment a, int first) {
    double[][] c = a.covariance().of(first, first + 1, first + 2);
    return c[0][0] + c[1][1] + c[2][2];
  }

  /** Independent: nothing fits better than what is found, from the truth's own start either. */
  @Property(seed = "20261121", tries = 120)
  void theBestFitIsFoundWithoutAGuess(@ForAll long seed) {
    Cloud cloud = new Cloud(seed);
    Nets n = cloud.net(Rotation.IDENTITY, Vector3D.ZERO, false);
    double[] truth = new double[n.net().unknowns()];
    for (int i = 0; i < cloud.points.length; i++) {
      n.net().put(truth, cloud.known.length + i, cloud.points[i].toArray());
    }
    double fromTruth = Adjustment.search(n.net(), n.named.observations(), truth).squares();
    double found = n.solve().consistency().squares();
    assertThat(found).isLessThanOrEqualTo(fromTruth + 1e-6);
  }

  /** Redundancy numbers add up to the degrees of freedom (Baarda). */
  @Property(seed = "20261122", tries = 60)
  void sharesThatOthersCheckAddUpToTheFreedom(@ForAll long seed) {
    Nets n = new Cloud(seed).net(Rotation.IDENTITY, Vector3D.ZERO, false);
    Adjustment a = n.solve();
    double sum = 0;
    for (ReadingResult r : new NetworkReview(n.named, a, DataSnooping.LEAST_LIMIT).readings()) {
      sum += r.redundancy();
    }
    assertThat(sum).isCloseTo(a.freedom(), within(1e-6));
  }
}
