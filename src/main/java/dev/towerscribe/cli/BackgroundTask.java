package dev.towerscribe.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Work that goes on beside the rest. What comes of it depends on what it was given and on nothing
 * else, so results do not vary with which of the two is done first.
 *
 * @param <T> what comes of it
 */
final class BackgroundTask<T> {
  private final FutureTask<T> task;

  private BackgroundTask(FutureTask<T> task) {
    this.task = task;
  }

  /**
   * Begins.
   *
   * @param name what a dump of threads calls it
   * @param work touches nothing that others change
   * @param <T> what comes of it
   * @return where its result will be
   */
  static <T> BackgroundTask<T> begin(String name, Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(task, name);
    // A result that nobody asks for must not hold the process up.
    thread.setDaemon(true);
    thread.start();
    return new BackgroundTask<>(task);
  }

  /**
   * Waits for the result.
   *
   * @return what the work came to
   * @throws IOException as thrown by the work, like any unchecked exception or error
   */
  T result() throws IOException {
    try {
      return task.get();
    } catch (ExecutionException e) {
      Throwable cause = e.getCause();
      if (cause instanceof IOException fault) {
        throw fault;
      }
      if (cause instanceof RuntimeException fault) {
        throw fault;
      }
      if (cause instanceof Error fault) {
        throw fault;
      }
      throw new IllegalStateException(cause);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }
}
