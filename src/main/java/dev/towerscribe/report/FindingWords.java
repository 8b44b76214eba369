package dev.towerscribe.report;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Findings in words. */
public final class FindingWords {
  private FindingWords() {}

  /** Limits come from standards in millimetres, so an inch job sees those too. */
  private static String amounts(double value, String unit, Lengths lengths) {
    return unit.equals("mm") && !lengths.metric()
        ? lengths.both(value)
        : lengths.amount(value, unit);
  }

  /**
   * Figure and limit.
   *
   * @param finding any finding
   * @param lengths the job's unit
   * @return for instance "Found 4.03 mm, limit 1.00 mm"; empty where only the sentence counts
   */
  public static String figures(Finding finding, Lengths lengths) {
    return finding.isMeasured()
        ? "Found %s, limit %s"
            .formatted(
                amounts(finding.figure(), finding.unit(), lengths),
                amounts(finding.limit(), finding.unit(), lengths))
        : "";
  }

  /**
   * What it is about, with figure, limit and source.
   *
   * @param finding any finding
   * @param lengths the job's unit
   * @return empty where it has none of them
   */
  static String about(Finding finding, Lengths lengths) {
    String figures = figures(finding, lengths);
    String joint = finding.where().isEmpty() || figures.isEmpty() ? "" : ". ";
    String source = finding.source().isEmpty() ? "" : " (" + finding.source() + ")";
    return (finding.where() + joint + figures + source).strip();
  }

  /**
   * One finding in a line.
   *
   * @param finding any finding
   * @param accepted ids of accepted stop findings
   * @return for instance "caution left.aim-caster: Caster is ..."
   */
  public static String line(Finding finding, Collection<String> accepted) {
    boolean is = finding.isStop() && accepted.contains(finding.id());
    return "%s%s %s: %s"
        .formatted(finding.severity().word(), is ? " (accepted)" : "", finding.id(), finding.say());
  }

  /** Findings, a line each. */
  static Block.Points lines(List<Finding> findings, Collection<String> accepted) {
    return new Block.Points(findings.stream().map(f -> line(f, accepted)).toList());
  }

  /**
   * Findings in full, by severity.
   *
   * @param findings all of them
   * @param accepted ids of accepted stop findings
   * @param stop what a stop asks for, in few words
   * @param caution what a caution asks for
   * @param note what notes are
   * @return a block for each severity, also where there is none of it
   */
  static List<Block.FoundList> all(
      List<Finding> findings, Set<String> accepted, String stop, String caution, String note) {
    return Stream.of(Severity.values())
        .map(
            severity ->
                switch (severity) {
                  case STOP -> found(severity, findings, accepted, stop);
                  case CAUTION -> found(severity, findings, accepted, caution);
                  case NOTE -> found(severity, findings, accepted, note);
                })
        .toList();
  }

  private static Block.FoundList found(
      Severity severity, List<Finding> findings, Set<String> accepted, String asks) {
    List<Finding> these = findings.stream().filter(f -> f.severity() == severity).toList();
    String count = Phrases.count(these.size(), severity.word());
    return new Block.FoundList(these.isEmpty() ? count : count + ": " + asks, these, accepted);
  }

  /**
   * The answer that stop findings give.
   *
   * @param stops all stop findings
   * @param accepted ids of accepted ones
   * @param withheld what is not made while one is open
   * @param told where accepted ones show
   * @return for instance "2 stops: no sheets until cleared or accepted by id", then each open stop
   *     with its id
   */
  static List<String> result(
      List<Finding> stops, Set<String> accepted, String withheld, String told) {
    List<Finding> open = stops.stream().filter(f -> !accepted.contains(f.id())).toList();
    long fast = open.stream().filter(f -> !f.acceptable()).count();
    String lifted =
        fast == 0
            ? "put right or accepted by id"
            : fast == open.size()
                ? "put right"
                : "put right; all but %s may be accepted by id".formatted(fast);
    List<String> lines = new ArrayList<>();
    lines.add(
        !open.isEmpty()
            ? "%s: %s until %s"
                .formatted(Phrases.count(open.size(), "stop finding"), withheld, lifted)
            : accepted.isEmpty()
                ? "no stop finding"
                : "%s accepted; %s"
                    .formatted(Phrases.count(accepted.size(), "stop finding"), told));
    open.forEach(f -> lines.add(f.id() + ": " + f.say()));
    return lines;
  }
}
