package dev.towerscribe.placement;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What stands in the way of more caster at a place: found by going on, step by step, in words. */
final class LimitingFactor {
  /** How far to go on before giving up, mm and degrees. */
  private static final double FAR = 5.0;

  private final Job job;
  private final Lattice lattice;
  private final PlacementSearch search;
  private final Score score;

  LimitingFactor(Job job, Lattice lattice, PlacementSearch search, Score score) {
    this.job = job;
    this.lattice = lattice;
    this.search = search;
    this.score = score;
  }

  /** The words for a place. */
  String words(Lattice.Place place) {
    List<String> all = new ArrayList<>();
    int far = lattice.places(FAR);
    walk(place, 0, 1, far, "further rearward", all);
    int turns = (int) Math.round(FAR * lattice.anglesPerDegree());
    if (caster(moved(place, 1, 0)) > caster(moved(place, -1, 0))) {
      walk(place, 1, 0, turns, "turned further rearward", all);
    } else {
      walk(place, -1, 0, turns, "turned back toward straight across", all);
    }
    return all.isEmpty()
        ? "nothing within %s or %s deg: it gives up caster for what it is best at"
            .formatted(length(lattice.mm(far)), Numbers.plain(FAR, 1))
        : String.join("; ", all);
  }

  private static Lattice.Place moved(Lattice.Place p, int turn, int back) {
    return new Lattice.Place(p.rotation() + turn, p.rearward() + back, p.inboard(), p.setting());
  }

  private double caster(Lattice.Place p) {
    return score.read(p) ? score.caster() : Double.NEGATIVE_INFINITY;
  }

  private void walk(
      Lattice.Place from, int turn, int back, int most, String way, List<String> all) {
    for (int n = 1; n <= most; n++) {
      Lattice.Place there = moved(from, n * turn, n * back);
      String reason = reason(there);
      if (!reason.isEmpty()) {
        String by =
            turn == 0 ? length(lattice.mm(n)) : Numbers.plain(lattice.degrees(n), 1) + " deg";
        all.add("%s by %s, %s".formatted(way, by, reason));
        return;
      }
    }
  }

  private String length(double mm) {
    return Lengths.in(lattice.unit()).plain(mm, Fineness.PLACE) + " " + lattice.unit().symbol();
  }

  /** What is against a place; empty if nothing is. */
  private String reason(Lattice.Place p) {
    if (!search.holds(p)) {
      return "the range searched ends";
    }
    score.read(p);
    Score.Trouble trouble = score.trouble();
    if (trouble == Score.Trouble.LINKAGE) {
      return "the linkage does not reach ride height" + side(p, trouble);
    }
    if (!score.allows(p.rotation(), p.rearward(), p.inboard())) {
      return stops(p);
    }
    return switch (trouble) {
      case CAMBER_LIMIT -> "camber passes its limit" + side(p, trouble);
      case PAST -> "caster passes the most that is wanted" + side(p, trouble);
      case CAMBER_AIM -> "the camber aim is out of reach" + side(p, trouble);
      case CASTER_LOST -> "caster falls below that before the work" + side(p, trouble);
      case DROOP_LOST -> "the damper is drawn out at ride height" + side(p, trouble);
      case CROSS -> "the two sides read too far apart";
      default -> "";
    };
  }

  /** Which side it is, where the sides differ and only one has the trouble. */
  private String side(Lattice.Place p, Score.Trouble trouble) {
    return score.onlySide(p, trouble).map(s -> " on the " + s.word()).orElse("");
  }

  private String stops(Lattice.Place p) {
    try {
      List<Finding> stops =
          Layouts.of(job.with(lattice.mount(p))).layout().stops().stream()
              .filter(score::judgesPlace)
              .toList();
      List<String> sides =
          stops.stream().map(f -> f.id().substring(0, f.id().indexOf('.'))).distinct().toList();
      boolean oneOfTwo = job.sides().size() > 1 && sides.size() == 1;
      return stops.stream()
          .map(LimitingFactor::words)
          .distinct()
          .sorted()
          .limit(2)
          .collect(Collectors.joining(" and ", "", oneOfTwo ? " on the " + sides.get(0) : ""));
    } catch (JobRejected e) {
      return "the plate reaches past the dome of the tower top";
    }
  }

  /** A stop in few words, to be read after "further rearward by 0.1 mm,". */
  static String words(Finding stop) {
    String check = stop.id().substring(stop.id().indexOf('.') + 1);
    String kind = check.contains(".") ? check.substring(0, check.indexOf('.')) : check;
    // Places read "bolt B, final cut": what, and what it comes near.
    String[] where = stop.where().split(", ", 2);
    String what = where[0];
    String other = where.length < 2 ? "" : where[1];
    return switch (kind) {
      case "edge-cut" -> what + " comes too near the final cut";
      case "edge-land" -> what + " comes too near the edge of the bolting face";
      case "edge-landmark", "keep-out" -> what + " comes too near the " + other;
      case "seat-land" -> "the washer of " + what + " hangs over the edge of the bolting face";
      case "seat-cut" -> "the washer of " + what + " hangs over the opening";
      case "plate-cover" -> "the plate no longer covers the opening";
      case "plate-wall" -> "the plate meets the tower's wall";
      case "sweep" -> "the strut rod touches the opening";
      case "notch-width" -> "too little is left of the " + what;
      case "notch-fastener" -> "the notch runs into a fastener of the " + what;
      default -> stop.where() + " gives a stop";
    };
  }
}
