package dev.towerscribe.placement;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.ShaftPoses;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.MountCheck;
import dev.towerscribe.model.Job;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * A search of 200 000 placements with 21 wheel heights each, on all cores: for every placement the
 * checks' quick answer on both towers, caster and camber at ride height, and bump steer, whether the
 * metal allows the placement or not. A search proper leaves most of that out.
 */
public final class ManyPlacements {
  private static final int ROTATIONS = 51;
  private static final int OFFSETS = 63;

  private ManyPlacements() {}

  /**
   * Runs it and prints how many were looked at and the best allowed one's caster.
   *
   * @param args the job file; a job made in code without one
   * @throws Exception if it cannot be read
   */
  public static void main(String[] args) throws Exception {
    Job job =
        args.length > 0
            ? new JobReader(c -> true).read(Path.of(args[0]))
            : SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), s -> s);
    Lattice lattice = Lattice.of(job);
    MountCheck check = MountCheck.of(job, ShaftPoses::of);
    int threads = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    List<Future<double[]>> parts = new ArrayList<>();
    for (int t = 0; t < threads; t++) {
      int first = t;
      parts.add(pool.submit(() -> part(first, threads, new Worth(job, lattice, check))));
    }
    double count = 0;
    double best = Double.NEGATIVE_INFINITY;
    double calmest = Double.NEGATIVE_INFINITY;
    for (Future<double[]> part : parts) {
      count += part.get()[0];
      best = Math.max(best, part.get()[1]);
      calmest = Math.max(calmest, part.get()[2]);
    }
    pool.shutdown();
    System.out.println(count + " placements, best " + best + ", calmest " + calmest);
  }

  private static double[] part(int first, int step, Worth worth) {
    double count = 0;
    double best = Double.NEGATIVE_INFINITY;
    double calmest = Double.NEGATIVE_INFINITY;
    for (int r = first; r < ROTATIONS; r += step) {
      for (int a = 0; a < OFFSETS; a++) {
        for (int b = 0; b < OFFSETS; b++) {
          int rotation = r * 900 / (ROTATIONS - 1);
          int rearward = -300 + a * 600 / (OFFSETS - 1);
          int inboard = -300 + b * 600 / (OFFSETS - 1);
          MountCheck.Answer answer = worth.quick(rotation, rearward, inboard);
          boolean reached = worth.read(new Lattice.Place(rotation, rearward, inboard, 0));
          double calm = worth.calm();
          count++;
          if (reached && answer == MountCheck.Answer.YES) {
            best = Math.max(best, worth.aims());
            calmest = Math.max(calmest, calm);
          }
        }
      }
    }
    return new double[] {count, best, calmest};
  }
}
