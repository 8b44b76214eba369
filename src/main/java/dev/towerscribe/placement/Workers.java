package dev.towerscribe.placement;

import dev.towerscribe.alignment.NotReached;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;

/** Threads that share a search's work, each with a score of its own. */
final class Workers {
  private final int threads;
  private final NotReached.Ask<Score> scores;
  private final DoubleConsumer progress;

  /**
   * Prepares them.
   *
   * @param threads how many
   * @param scores makes one for each
   * @param progress told by any of them how far the whole search has come, 0 to 1
   */
  Workers(int threads, NotReached.Ask<Score> scores, DoubleConsumer progress) {
    this.threads = threads;
    this.scores = scores;
    this.progress = progress;
  }

  /** A part of a work that threads share. */
  interface Part<T> {
    T of(int index, Score score) throws NotReached;
  }

  /**
   * Runs the parts of a work on all threads.
   *
   * @param parts how many there are
   * @param from progress at the start
   * @param to progress at the end
   * @param part does one of them
   * @return the results in the order of the parts, whichever thread did them
   * @throws NotReached if the linkage as measured does not get to ride height
   */
  <T> List<T> share(int parts, double from, double to, Part<T> part) throws NotReached {
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    List<T> results = new ArrayList<>(Collections.nCopies(parts, null));
    ExecutorService pool = Executors.newFixedThreadPool(threads, Workers::daemon);
    try {
      List<Future<Void>> working = new ArrayList<>();
      for (int t = 0; t < Math.min(threads, parts); t++) {
        working.add(
            pool.submit(
                () -> {
                  Score score = scores.get();
                  for (int i = next.getAndIncrement(); i < parts; i = next.getAndIncrement()) {
                    results.set(i, part.of(i, score));
                    progress.accept(from + (to - from) * done.incrementAndGet() / parts);
                  }
                  return null;
                }));
      }
      for (Future<Void> one : working) {
        one.get();
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the search was interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof NotReached n) {
        throw n;
      }
      if (e.getCause() instanceof RuntimeException r) {
        throw r;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "search");
    thread.setDaemon(true);
    return thread;
  }
}
