package dev.towerscribe.placement;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.StrutRodPoses;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.quick.Answer;
import dev.towerscribe.layout.quick.MountCheck;
import dev.towerscribe.layout.quick.Scratch;
import dev.towerscribe.model.Job;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A search of 200 000 placements with 21 wheel heights each, on all cores: for every placement the
 * checks' quick answer on both towers, caster and camber at ride height, and bump steer, whether
 * the metal allows the placement or not. A search proper leaves most of that out.
 *
 * <p>The linkage of a placement does not wait for its metal: while one thread prepares the checks
 * the others solve poses, in rows that are handed out one by one.
 */
public final class ManyPlacements {
  private static final int ROTATIONS = 51;
  private static final int OFFSETS = 63;
  private static final int ROW = OFFSETS * OFFSETS;

  private final Job job;
  private final Lattice lattice;
  private final AtomicInteger nextSolved = new AtomicInteger();
  private final AtomicInteger nextChecked = new AtomicInteger();
  private final double[][] aims = new double[ROTATIONS][ROW];
  private final double[][] calm = new double[ROTATIONS][ROW];
  private final boolean[][] allowed = new boolean[ROTATIONS][ROW];
  private final CountDownLatch prepared = new CountDownLatch(1);
  private volatile MountCheck check;
  private volatile Throwable failure;

  private ManyPlacements(Job job) {
    this.job = job;
    lattice = Lattice.of(job);
  }

  /**
   * Runs it and prints how many were looked at and the best allowed one's figures.
   *
   * @param args the job file; a job made in code without one
   * @throws Exception if it cannot be read
   */
  public static void main(String[] args) throws Exception {
    Job job =
        args.length > 0
            ? new JobReader(c -> true).read(Path.of(args[0]))
            : SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), s -> s);
    new ManyPlacements(job).run();
  }

  private void run() throws Exception {
    int threads = Math.max(2, Runtime.getRuntime().availableProcessors());
    Thread[] workers = new Thread[threads - 1];
    for (int t = 0; t < workers.length; t++) {
      workers[t] = new Thread(new Worker());
      workers[t].setDaemon(true);
      workers[t].start();
    }
    check = MountCheck.of(job, StrutRodPoses::of);
    prepared.countDown();
    new Worker().run();
    for (Thread worker : workers) {
      worker.join();
    }
    if (failure != null) {
      throw new IllegalStateException(failure);
    }
    double best = Double.NEGATIVE_INFINITY;
    double calmest = Double.NEGATIVE_INFINITY;
    for (int r = 0; r < ROTATIONS; r++) {
      for (int i = 0; i < ROW; i++) {
        if (allowed[r][i]) {
          best = Math.max(best, aims[r][i]);
          calmest = Math.max(calmest, calm[r][i]);
        }
      }
    }
    System.out.println(ROTATIONS * ROW + " placements, best " + best + ", calmest " + calmest);
  }

  /** One thread's share. */
  private final class Worker implements Runnable {
    @Override
    public void run() {
      try {
        Score score = new Score(job, lattice, null);
        for (int r = nextSolved.getAndIncrement();
            r < ROTATIONS;
            r = nextSolved.getAndIncrement()) {
          for (int i = 0; i < ROW; i++) {
            solve(score, r, i);
          }
        }
        prepared.await();
        Scratch scratch = new Scratch();
        for (int r = nextChecked.getAndIncrement();
            r < ROTATIONS;
            r = nextChecked.getAndIncrement()) {
          for (int i = 0; i < ROW; i++) {
            ask(scratch, r, i);
          }
        }
      } catch (Throwable e) {
        failure = e;
      }
    }
  }

  private void solve(Score score, int r, int i) {
    boolean reached = score.read(new Lattice.Place(rotation(r), rearward(i), inboard(i), 0));
    calm[r][i] = score.bumpSteer();
    aims[r][i] = reached ? score.aims() : Double.NEGATIVE_INFINITY;
  }

  private void ask(Scratch scratch, int r, int i) {
    allowed[r][i] =
        check.quick(
                scratch.at(
                    lattice.radians(rotation(r)), lattice.mm(rearward(i)), lattice.mm(inboard(i))))
            == Answer.YES;
  }

  private static int rotation(int r) {
    return r * 900 / (ROTATIONS - 1);
  }

  private static int rearward(int i) {
    return -300 + i / OFFSETS * 600 / (OFFSETS - 1);
  }

  private static int inboard(int i) {
    return -300 + i % OFFSETS * 600 / (OFFSETS - 1);
  }
}
