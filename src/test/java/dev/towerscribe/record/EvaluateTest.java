package dev.towerscribe.record;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EvaluateTest {
  @Test
  void probe() {
    for (Job job : java.util.List.of(Visits.job(), Visits.sureJob())) {
      for (Cause cause : Cause.values()) {
        double by =
            switch (cause.kind()) {
              case LENGTH -> 8;
              case ANGLE -> Math.toRadians(3);
              case RATIO -> 0.2;
            };
        if (cause == Cause.SETTING) by = -16;
        if (cause == Cause.CAMBER_FOUND) by = Math.toRadians(0.6);
        Evaluation e =
            Evaluate.of(
                job,
                Visits.visit(
                    Map.of(
                        Side.LEFT, Visits.wheel(job, Side.LEFT, cause, by, Visits.ALL),
                        Side.RIGHT, Visits.wheel(job, Side.RIGHT, cause, by, Visits.ALL))));
        System.out.println("=== " + cause + " " + by);
        e.explanations()
            .forEach(
                x -> {
                  System.out.println(x.answer() + " chi " + x.chiSquare());
                  x.fits()
                      .forEach(
                          f ->
                              System.out.println(
                                  "   "
                                      + f.cause()
                                      + " "
                                      + f.value()
                                      + " +/- "
                                      + f.plusMinus()
                                      + " chi "
                                      + f.chiSquare()
                                      + " ok "
                                      + f.explains()
                                      + " leaves "
                                      + f.leaves().size()));
                  x.say().forEach(System.out::println);
                });
      }
    }
  }
}
