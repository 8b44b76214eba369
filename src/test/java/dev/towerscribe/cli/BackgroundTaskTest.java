package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BackgroundTaskTest {
  @Test
  void givesItsResultAsOftenAsAsked() throws IOException {
    BackgroundTask<String> aside = BackgroundTask.begin("test", () -> "done");
    assertThat(aside.result()).isEqualTo("done");
    assertThat(aside.result()).isEqualTo("done");
  }

  @Test
  void worksBesideItsCaller() throws IOException {
    Thread caller = Thread.currentThread();
    BackgroundTask<Boolean> aside =
        BackgroundTask.begin("test", () -> Thread.currentThread() != caller);
    assertThat(aside.result()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      classes = {IOException.class, IllegalArgumentException.class, StackOverflowError.class})
  void whatItThrowsReachesWhoeverAsks(Class<? extends Throwable> kind) throws Exception {
    Throwable thrown = kind.getConstructor(String.class).newInstance("broken");
    BackgroundTask<String> aside = BackgroundTask.begin("test", failing(thrown));
    assertThatThrownBy(aside::result).isSameAs(thrown);
  }

  private static Callable<String> failing(Throwable thrown) {
    return () -> {
      if (thrown instanceof Error error) {
        throw error;
      }
      throw (Exception) thrown;
    };
  }
}
