package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Findings.Candidate;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Tools;
import dev.towerscribe.model.Tower;
import java.util.ArrayList;
import java.util.List;

/** Room for the socket on every fastener, and what is left of a bracket that had to give way. */
final class SocketChecks {
  private SocketChecks() {}

  static void run(SideLayout layout, Findings findings) {
    Tools tools = layout.job().tools();
    if (tools.assumed()) {
      double mm = tools.socketMm();
      findings.add(
          "socket-assumed",
          Severity.CAUTION,
          About.mm("socket", mm, mm, "typical sizes, from memory"),
          "The socket's diameter was not given; a typical %s was taken. Measure yours."
              .formatted(findings.lengths().with(mm)));
    }
    for (PlacedHole hole : layout.holes()) {
      reach(layout, hole, tools, findings);
    }
    neighbours(layout, tools, findings);
    for (Notch notch : layout.notches()) {
      notch(layout, notch, findings);
    }
  }

  private static void reach(SideLayout layout, PlacedHole hole, Tools tools, Findings findings) {
    List<String> slugs = Slugs.brackets(layout.job().tower());
    for (int i = 0; i < slugs.size(); i++) {
      Bracket bracket = layout.job().tower().brackets().get(i);
      String name = hole.name() + "." + slugs.get(i);
      About about =
          About.mm(
              "socket on bolt %s, %s".formatted(hole.name(), bracket.name()),
              Margins.socketToBracket(Region.inside(bracket.outline()), hole.at(), tools),
              tools.roomMm(),
              "job: tools.room");
      boolean notched =
          layout.notches().stream()
              .anyMatch(n -> n.bracket().equals(bracket) && n.bolts().contains(hole.name()));
      if (notched) {
        findings.add(
            "socket." + name,
            Severity.CAUTION,
            about,
            "The socket cannot come down on bolt %s: %s is in the way. Notch it as its sheet shows."
                .formatted(hole.name(), bracket.name()));
        drive(bracket, hole, name, tools, findings);
      } else {
        findings.atLeast(
            "socket." + name,
            about,
            Severity.CAUTION,
            "between the socket and " + bracket.name(),
            "Notch it");
      }
    }
  }

  /** A socket shorter than the bracket is high brings the ratchet's head down into the notch. */
  private static void drive(
      Bracket bracket, PlacedHole hole, String slug, Tools tools, Findings findings) {
    findings.atLeast(
        "socket-depth." + slug,
        About.mm(
            "socket on bolt %s, height of %s".formatted(hole.name(), bracket.name()),
            tools.depthMm(),
            bracket.undersideMm(),
            "job: tools.socket depth, tower.bracket underside"),
        Severity.CAUTION,
        "of socket, under a bracket whose lower face is higher",
        "The drive end must pass the notch as well: use a longer socket");
  }

  private static void neighbours(SideLayout layout, Tools tools, Findings findings) {
    List<Candidate> candidates = new ArrayList<>();
    for (PlacedHole hole : layout.holes()) {
      for (PlacedHole other : layout.holes()) {
        if (hole != other) {
          double gap =
              hole.at().distanceTo(other.at())
                  - tools.socketMm() / 2
                  - other.bolt().flatsMm() / Math.sqrt(3);
          candidates.add(
              new Candidate(
                  "socket-bolt." + hole.name() + "-" + other.name(),
                  About.mm(
                      "socket on bolt %s, bolt %s".formatted(hole.name(), other.name()),
                      gap,
                      0,
                      "across corners AF 2/sqrt 3"),
                  "between the socket and the next nut",
                  "The socket does not fit beside that nut"));
        }
      }
    }
    findings.eachFailingOrTightest(candidates, Severity.CAUTION);
  }

  private static void notch(SideLayout layout, Notch notch, Findings findings) {
    Bracket bracket = notch.bracket();
    Tower tower = layout.job().tower();
    String slug = Slugs.brackets(tower).get(tower.brackets().indexOf(bracket));
    findings.atLeast(
        "notch-width." + slug,
        About.mm(
            bracket.name(),
            notch.widthLeftMm(),
            bracket.leastWidthMm(),
            "job: tower.bracket least_width"),
        Severity.STOP,
        "of metal left beside the notch",
        "Too little is left: move the plate, use a smaller socket, or ask for another fastener");
    for (int i = 0; i < bracket.fasteners().size(); i++) {
      findings.atLeast(
          "notch-fastener.%s.%s".formatted(slug, i + 1),
          About.mm(
              "%s, its fastener %s".formatted(bracket.name(), i + 1),
              Margins.notchToFastener(notch.removed(), bracket.fasteners().get(i)),
              Margins.FASTENER_GAP_MM,
              Sources.PRACTICE),
          Severity.STOP,
          "between the notch and the bracket's own fastener",
          "The notch would run into it");
    }
  }
}
