package dev.towerscribe.layout;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.Findings.Candidate;
import dev.towerscribe.layout.Findings.Figure;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Tools;
import dev.towerscribe.model.Tower;
import java.util.ArrayList;
import java.util.List;

/** Room for the socket on every fastener, and what is left of a bracket that had to give way. */
final class SocketChecks {
  /** Least metal between a notch and a bracket's own fastener. */
  static final double FASTENER_GAP_MM = 2.0;

  private SocketChecks() {}

  static void run(SideLayout layout, Findings findings) {
    Tools tools = layout.job().tools();
    if (tools.assumed()) {
      findings.add(
          new Figure(
              "socket-assumed",
              "socket",
              tools.socketMm(),
              tools.socketMm(),
              "typical sizes, from memory"),
          Severity.CAUTION,
          "The socket's diameter was not given; a typical "
              + findings.length(tools.socketMm())
              + " was taken. Measure yours.");
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
    List<String> slugs = Findings.brackets(layout.job().tower());
    for (int i = 0; i < slugs.size(); i++) {
      Bracket bracket = layout.job().tower().brackets().get(i);
      String name = hole.name() + "." + slugs.get(i);
      double gap = -Region.inside(bracket.outline()).depth(hole.at()) - tools.socketMm() / 2;
      Figure figure =
          new Figure(
              "socket." + name,
              "socket on bolt " + hole.name() + ", " + bracket.name(),
              gap,
              tools.roomMm(),
              "job: tools.room");
      boolean notched =
          layout.notches().stream()
              .anyMatch(n -> n.bracket().equals(bracket) && n.bolts().contains(hole.name()));
      if (notched) {
        findings.add(
            figure,
            Severity.CAUTION,
            "The socket cannot come down on bolt "
                + hole.name()
                + ": "
                + bracket.name()
                + " is in the way. Notch it as its sheet shows.");
        drive(bracket, hole, name, tools, findings);
      } else {
        findings.atLeast(
            figure, Severity.CAUTION, "between the socket and " + bracket.name(), "Notch it");
      }
    }
  }

  /** A socket shorter than the bracket is high brings the ratchet's head down into the notch. */
  private static void drive(
      Bracket bracket, PlacedHole hole, String slug, Tools tools, Findings findings) {
    findings.atLeast(
        new Figure(
            "socket-depth." + slug,
            "socket on bolt " + hole.name() + ", height of " + bracket.name(),
            tools.depthMm(),
            bracket.undersideMm(),
            "job: tools.socket depth, tower.bracket underside"),
        Severity.CAUTION,
        "of socket, under a bracket whose lower face is higher",
        "The drive end must pass the notch as well: use a longer socket");
  }

  private static void neighbours(SideLayout layout, Tools tools, Findings findings) {
    var holes = layout.holes();
    List<Candidate> candidates = new ArrayList<>();
    for (PlacedHole hole : holes) {
      for (PlacedHole other : holes) {
        if (hole == other) {
          continue;
        }
        double gap =
            hole.at().distanceTo(other.at())
                - tools.socketMm() / 2
                - other.bolt().flatsMm() / Math.sqrt(3);
        candidates.add(
            new Candidate(
                new Figure(
                    "socket-bolt." + hole.name() + "-" + other.name(),
                    "socket on bolt " + hole.name() + ", bolt " + other.name(),
                    gap,
                    0,
                    "across corners AF 2/sqrt 3"),
                "between the socket and the next nut",
                "The socket does not fit beside that nut"));
      }
    }
    findings.eachFailingOrTightest(candidates, Severity.CAUTION);
  }

  /** Metal between a notch and one of the bracket's own fasteners. */
  static double fastenerGap(Notch notch, Bracket.Fastener fastener) {
    return -notch.removed().depth(fastener.at()) - fastener.diameterMm() / 2;
  }

  /** Whether a notch gives no stop. */
  static boolean leavesEnough(Notch notch) {
    return Findings.passes(notch.widthLeftMm(), notch.bracket().leastWidthMm())
        && notch.bracket().fasteners().stream()
            .allMatch(f -> Findings.passes(fastenerGap(notch, f), FASTENER_GAP_MM));
  }

  private static void notch(SideLayout layout, Notch notch, Findings findings) {
    Bracket bracket = notch.bracket();
    Tower tower = layout.job().tower();
    String slug = Findings.brackets(tower).get(tower.brackets().indexOf(bracket));
    findings.atLeast(
        new Figure(
            "notch-width." + slug,
            bracket.name(),
            notch.widthLeftMm(),
            bracket.leastWidthMm(),
            "job: tower.bracket least_width"),
        Severity.STOP,
        "of metal left beside the notch",
        "Too little is left: move the plate, use a smaller socket, or ask for another fastener");
    for (int i = 0; i < bracket.fasteners().size(); i++) {
      Bracket.Fastener fastener = bracket.fasteners().get(i);
      double gap = fastenerGap(notch, fastener);
      findings.atLeast(
          new Figure(
              "notch-fastener." + slug + "." + (i + 1),
              bracket.name() + ", its fastener " + (i + 1),
              gap,
              FASTENER_GAP_MM,
              Findings.PRACTICE),
          Severity.STOP,
          "between the notch and the bracket's own fastener",
          "The notch would run into it");
    }
  }
}
