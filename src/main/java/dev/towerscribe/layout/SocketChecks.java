package dev.towerscribe.layout;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Findings.Candidate;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Gap;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Tools;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

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
                  "job: tools.room")
              .at(() -> inTheWay(bracket, hole, tools, findings.lengths()));
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
                Margins.leastWidthMm(bracket),
                Margins.leastWidthMm(bracket) > bracket.leastWidthMm()
                    ? Sources.OWN_CHOICE
                    : "job: tower.bracket least_width")
            .impossibleAt(0)
            .at(() -> narrow(layout, notch, findings.lengths())),
        Severity.STOP,
        "of metal left beside the notch",
        (notch.remaining().parts().size() > 1
                ? "The notch cuts the bracket in pieces: "
                : "Too little is left: ")
            + findings.advise("move the plate, ", "")
            + "use a smaller socket, or ask for another fastener");
    for (int i = 0; i < bracket.fasteners().size(); i++) {
      Bracket.Fastener fastener = bracket.fasteners().get(i);
      findings.atLeast(
          "notch-fastener.%s.%s".formatted(slug, i + 1),
          About.mm(
                  "%s, its fastener %s".formatted(bracket.name(), i + 1),
                  Margins.notchToFastener(notch.removed(), fastener),
                  Margins.FASTENER_GAP_MM,
                  Sources.PRACTICE)
              .impossibleBelow(0)
              .at(() -> besideFastener(layout, notch, fastener, findings.lengths())),
          Severity.STOP,
          "between the notch and the bracket's own fastener",
          "The notch would run into it");
    }
  }

  private static Spot inTheWay(Bracket bracket, PlacedHole hole, Tools tools, Lengths lengths) {
    Region metal = Region.inside(bracket.outline());
    return Spots.of(
        Spots.gap(hole.at(), metal.nearest(hole.at())),
        tools.socketMm() / 2,
        Mover.PLATE,
        v -> Margins.socketToBracket(metal, hole.at().plus(v), tools),
        tools.roomMm(),
        lengths);
  }

  /** Without a narrowest section the place is that of the first bolt whose socket it is for. */
  private static Spot narrow(SideLayout layout, Notch notch, Lengths lengths) {
    Vec2 bolt =
        layout.holes().stream()
            .filter(h -> h.name().equals(notch.bolts().get(0)))
            .map(PlacedHole::at)
            .findFirst()
            .orElseThrow();
    Gap across =
        notch
            .narrowest()
            .map(n -> Spots.gap(n.start(), n.end()))
            .orElseGet(() -> Spots.gap(bolt, bolt));
    return Spots.of(
        across,
        0,
        Mover.PLATE,
        v -> left(layout, notch.bracket(), v, Notch::widthLeftMm),
        Margins.leastWidthMm(notch.bracket()),
        lengths);
  }

  private static Spot besideFastener(
      SideLayout layout, Notch notch, Bracket.Fastener fastener, Lengths lengths) {
    ToDoubleFunction<Vec2> figureMm =
        v -> left(layout, notch.bracket(), v, n -> Margins.notchToFastener(n.removed(), fastener));
    Gap nearest = Spots.gap(notch.removed().nearest(fastener.at()), fastener.at());
    Spot centre = Spots.of(nearest, 0, Mover.PLATE, figureMm, Margins.FASTENER_GAP_MM, lengths);
    Vec2 radius = Clearing.uphill(figureMm).times(fastener.diameterMm() / 2);
    return new Spot(centre.from(), centre.to().plus(radius), centre.mover(), centre.move());
  }

  /** What a bracket's notch leaves with the plate shifted; no end of it where none is needed. */
  private static double left(
      SideLayout layout, Bracket bracket, Vec2 shift, ToDoubleFunction<Notch> figureMm) {
    List<PlacedHole> there = layout.holes().stream().map(h -> h.shifted(shift)).toList();
    return Notches.of(bracket, there, layout.job().tools().reachRadiusMm())
        .map(figureMm::applyAsDouble)
        .orElse(Double.POSITIVE_INFINITY);
  }
}
