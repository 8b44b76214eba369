package dev.towerscribe.record;

import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.model.Side;
import java.util.Optional;

/**
 * One figure that was both predicted and measured, with all that makes either uncertain.
 *
 * @param side which wheel
 * @param stage before or after
 * @param figure which figure
 * @param predicted radians
 * @param measured radians
 * @param uncertainty standard deviation of the reading, radians
 * @param byRide what the uncertainty of the ride height does to the prediction, radians
 * @param sure derivatives by the points and choices; absent for an estimate, and for toe, which is
 *     set
 */
record FigureRow(
    Side side,
    ReadingStage stage,
    BayFigure figure,
    double predicted,
    double measured,
    double uncertainty,
    double byRide,
    Optional<Sensitivity.Figure> sure) {
  boolean is(Side aSide, ReadingStage aStage, BayFigure aFigure) {
    return side == aSide && stage == aStage && figure == aFigure;
  }

  double difference() {
    return measured - predicted;
  }
}
