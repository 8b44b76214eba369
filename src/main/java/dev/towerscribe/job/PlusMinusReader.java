package dev.towerscribe.job;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * strut.plus_minus: one figure for every coordinate of every point, or a table of points with a
 * figure for each axis, as a survey gives them.
 */
final class PlusMinusReader {
  /** A careful tape and plumb bob. Common practice, no source. */
  static final double DEFAULT_MM = 2.0;

  private static final String KEY = "plus_minus";

  private PlusMinusReader() {}

  static Optional<PlusMinus> read(TableReader strut) {
    if (!(strut.has(KEY) && strut.node(KEY) instanceof TomlNode.Table)) {
      return strut.length(KEY, Limits.PLUS_MINUS, DEFAULT_MM).map(PlusMinus::all);
    }
    return strut.optionalTable(KEY).flatMap(PlusMinusReader::table);
  }

  private static Optional<PlusMinus> table(TableReader t) {
    var other = t.length("other", Limits.PLUS_MINUS, DEFAULT_MM);
    double mm = other.orElse(DEFAULT_MM);
    Vec3 rest = new Vec3(mm, mm, mm);
    var points =
        Stream.of(StrutPoint.values())
            .filter(StrutPoint::isNeeded)
            .flatMap(p -> point(t, p.word(), rest).stream())
            .toList();
    var camber = t.angle("camber", Limits.PLUS_MINUS_ANGLE, Angle.ZERO);
    return t.closed(() -> new PlusMinus(points, camber.get()));
  }

  private static Optional<Vec3> point(TableReader t, String key, Vec3 otherwise) {
    return t.has(key) ? t.point3(key, Limits.PLUS_MINUS) : Optional.of(otherwise);
  }
}
