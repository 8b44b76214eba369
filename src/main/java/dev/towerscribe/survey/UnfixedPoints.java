package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.OpenDirections;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.survey.NamedNetwork.Label;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Names the points that the readings do not fix, with the directions that stay open. */
final class UnfixedPoints {
  /** Past this a point is of no use to a job, mm; a job file takes no more. */
  static final double USELESS_MM = 50;

  /** Past this a point deserves another reading, mm. Common practice, no source. */
  private static final double POOR_MM = 5;

  /** So many names are said; more are counted. */
  private static final int MOST_NAMES = 8;

  private final NamedNetwork net;
  private final Adjustment adjustment;
  private final double widened;
  private final Findings findings;

  UnfixedPoints(NamedNetwork net, Adjustment adjustment, double widened, Findings findings) {
    this.net = net;
    this.adjustment = adjustment;
    this.widened = widened;
    this.findings = findings;
  }

  /** Whether the readings fix a point well enough to be used. */
  static boolean isFound(Adjustment a, int node, double widened) {
    return OpenDirections.of(a, node).isEmpty()
        && Arrays.stream(sd(a, node, widened)).allMatch(sd -> sd <= USELESS_MM);
  }

  private static double[] sd(Adjustment a, int node, double widened) {
    return Arrays.stream(a.net().unknownsOf(node))
        .mapToDouble(u -> widened * a.covariance().sd(u))
        .toArray();
  }

  /** What points lack that are reported together. */
  private record Lack(String side, boolean needed, String words) {}

  void report() {
    Map<Lack, List<String>> lacking = new LinkedHashMap<>();
    for (int node = 0; node < net.labels().size(); node++) {
      Label label = net.labels().get(node);
      OpenDirections open = OpenDirections.of(adjustment, node);
      if (open.isEmpty()) {
        poor(node, label);
      } else {
        String words = open.words(net.axes(), net.isMirrored(label));
        lacking
            .computeIfAbsent(new Lack(label.side(), label.needed(), words), k -> new ArrayList<>())
            .add(label.name());
      }
    }
    lacking.forEach(this::tell);
  }

  private void tell(Lack lack, List<String> names) {
    List<String> said = new ArrayList<>(names.subList(0, Math.min(MOST_NAMES, names.size())));
    if (names.size() > said.size()) {
      said.add(names.size() - said.size() + " more");
    }
    boolean one = names.size() == 1;
    String more = one ? "" : "-and-%s-more".formatted(names.size() - 1);
    findings.add(
        lack.side(),
        "unfixed." + Findings.slug(names.get(0)) + more,
        lack.needed() ? Severity.STOP : Severity.CAUTION,
        About.words(Listed.and(said), ""),
        "%s: nothing fixes %s %s. Take a reading that does%s"
            .formatted(
                Listed.and(said),
                one ? "its" : "their",
                lack.words(),
                lack.needed()
                    ? "; accepted, %s left out.".formatted(one ? "it is" : "they are")
                    : "."));
  }

  private void poor(int node, Label label) {
    double[] sd = sd(adjustment, node, widened);
    int worst = IntStream.range(0, sd.length).reduce(0, (a, b) -> sd[b] > sd[a] ? b : a);
    if (sd[worst] <= POOR_MM) {
      return;
    }
    boolean useless = sd[worst] > USELESS_MM;
    boolean stop = useless && label.needed();
    findings.add(
        label.side(),
        "poor." + Findings.slug(label.name()),
        stop ? Severity.STOP : Severity.CAUTION,
        About.mm(label.name(), sd[worst], useless ? USELESS_MM : POOR_MM, Sources.PRACTICE),
        "%s: its %s is known poorly%s. Take a reading along that direction%s"
            .formatted(
                label.name(),
                net.axes().places().get(worst),
                Lengths.likelyWithin(findings.lengths().with(sd[worst], Fineness.TAPE)),
                stop ? "; accepted, it is left out." : "."));
  }
}
