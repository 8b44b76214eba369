package dev.towerscribe.part;

import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import java.util.Optional;

/** Job texts for tests of parts. */
final class PartJobs {
  /** A round plate of which nothing is said that a machinist would ask. */
  static final String PLAIN =
      """
      format = 1
      title = "Parts"
      [tower]
      sheet = 1.4
      opening = { diameter = 62.0 }
      mark = { diameter = 104.0 }
      landmark = [
        { name = "drain hole", at = [38.0, -82.0], diameter = 9.0 },
        { name = "clip hole", at = [-70.0, -60.0], diameter = 7.0 },
      ]
      [plate]
      name = "plate"
      thickness = 6.0
      outline = { diameter = 186.0 }
      handed = true
      slot = { from = -8.0, to = 16.0, index = [-8.0, 16.0] }
      bearing = { x = 8.0, height = 18.0 }
      moving = { diameter = 22.0, clearance = 2.0 }
      bolts = [
        { name = "A", at = [76.0, 0.0], thread = "M8", flats = 13.0 },
        { name = "B", at = [-38.0, 65.8], thread = "M8", flats = 13.0 },
        { name = "C", at = [-38.0, -60.0], thread = "M8", flats = 13.0 },
      ]
      [mount]
      rotation = 55.0
      rearward = 8.0
      inboard = -3.0
      setting = 16.0
      """;

  private PartJobs() {}

  static JobLayout layout(String text) throws JobRejected {
    return Layout.of(new JobReader(c -> true).parse(text, name -> Optional.empty()));
  }

  static JobParts parts(String text) throws JobRejected {
    return Parts.of(layout(text));
  }

  /** The part of a kind that serves a tower, if the job has one. */
  static Optional<Part> find(JobParts parts, PartKind kind, Hand hand) {
    return parts.parts().stream()
        .filter(p -> p.kind() == kind && (p.hand() == hand || p.hand() == Hand.BOTH))
        .findFirst();
  }

  /** The plain job with lines under plate.make. */
  static String made(String lines) {
    return PLAIN.replace("[mount]", "[plate.make]\n" + lines + "\n[mount]");
  }
}
