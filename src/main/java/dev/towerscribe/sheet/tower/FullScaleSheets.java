package dev.towerscribe.sheet.tower;

import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Face;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Phrases;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * The sheets that are cut and drilled by: each tower from below and from above, and each bracket
 * that a notch is taken from.
 */
public final class FullScaleSheets {
  /** A keep-out farther from every hole and cut than this is shown only where there is room. */
  private static final double NEAR_WORK_MM = 10.0;

  /** Points along the cuts that joins of tiles stay away from. */
  private static final double CUT_STEP_MM = 10.0;

  /** Room beside a straightedge's line for its name. */
  private static final double WORDS_BESIDE_MM = 11;

  private static final double NOTE_CAP_MM = 3.5;

  /** Two lines of the foot: landmarks with longer names are counted; each is named in its place. */
  private static final double MATCHES_MM = 125;

  private FullScaleSheets() {}

  /**
   * All full-scale pages of one tower: underside, topside, then one sheet for each notch. A sheet
   * too large for the paper comes as several tiles. On each tower's sheet a line tells what a bay
   * will read.
   *
   * @param layout the tower, laid out; the final cut and the bolting face may be empty
   * @param alignment what a bay will read, if it is known
   * @param info what every page says about the job
   * @return pages in the order of use
   * @throws NoRoomException if a name that the work depends on finds no room on the paper
   */
  public static List<Page> pages(
      SideLayout layout, Optional<SideAlignment> alignment, JobInfo info) {
    List<String> predicted =
        alignment.map(a -> PredictedLine.words(a, info.units())).orElse(List.of());
    List<Page> pages = new ArrayList<>();
    for (Face face : List.of(Face.UNDERSIDE, Face.TOPSIDE)) {
      pages.addAll(
          SheetOnPaper.pages(tower(layout, predicted, info, face), layout.job().print(), info));
    }
    for (int i = 0; i < layout.notches().size(); i++) {
      pages.addAll(SheetOnPaper.pages(notch(layout, info, i), layout.job().print(), info));
    }
    return pages;
  }

  private static FullScaleSheet tower(
      SideLayout layout, List<String> predicted, JobInfo info, Face face) {
    Side side = layout.side();
    String name = Phrases.capital(side.word()) + " tower, " + face.word();
    List<String> matches = layout.job().tower().landmarks().stream().map(Landmark::name).toList();
    String names = String.join(", ", matches);
    boolean nameAll = matches.size() <= 3 && Lettering.width(names, NOTE_CAP_MM) <= MATCHES_MM;
    String match =
        nameAll
            ? names
            : matches.size() == 1 ? "the landmark" : "all " + matches.size() + " landmarks";
    boolean below = face == Face.UNDERSIDE;
    SheetBorder.Says says =
        new SheetBorder.Says(
            side,
            face.word().toUpperCase(Locale.ROOT),
            below ? SheetBorder.Look.BLACK : SheetBorder.Look.FRAMED,
            below ? "from below: you look up at it" : "from above: you look down on it",
            name,
            -SheetFrame.inboardSign(side, face),
            List.of(
                (TowerLabels.lipInTheWay(layout.job().tower(), face)
                        ? "Cut the paper out along the lip's line. Match: %s."
                        : "Fit the opening's edge. Match: %s.")
                    .formatted(match),
                "Straightedge on the long line: parallel to the car's centre line.",
                "Does not match? Stop. Measure again."));
    return new FullScaleSheet(
        side.word() + "-" + face.word(),
        name,
        letter(side) + (below ? "-under" : "-top"),
        says,
        essentials(layout, face),
        wishes(layout, face),
        others(layout, face),
        largest(layout),
        0,
        (origin, window, joins) -> {
          SheetFrame frame = new SheetFrame(side, face, layout.job().tower().crown(), origin);
          SheetCanvas canvas = new SheetCanvas(window);
          TowerDrawing drawing = new TowerDrawing(layout, frame, canvas);
          drawing.draw();
          canvas.joins(joins, origin);
          new TowerLabels(layout, frame, canvas, Lengths.in(info.units()), predicted)
              .place(drawing);
          return canvas.painted(TowerProofs.ofTower(layout, face, origin, window));
        });
  }

  private static FullScaleSheet notch(SideLayout layout, JobInfo info, int index) {
    Notch notch = layout.notches().get(index);
    Side side = layout.side();
    int number = index + 1;
    String name = Phrases.capital(side.word()) + " tower, notch " + number;
    SheetBorder.Says says =
        new SheetBorder.Says(
            side,
            "BRACKET",
            SheetBorder.Look.HATCHED,
            "notch " + number + ", from above: " + notch.bracket().name(),
            name,
            -SheetFrame.inboardSign(side, Face.TOPSIDE),
            List.of(
                "Lay it on the bracket. Match its edges"
                    + (notch.bracket().fasteners().isEmpty() ? "." : " and bolts."),
                "Sockets come straight down on: " + String.join(", ", notch.bolts()) + ".",
                "Does not match? Stop. Measure again."));
    return new FullScaleSheet(
        side.word() + "-notch-" + number,
        name + ", " + notch.bracket().name(),
        letter(side) + "-notch" + number,
        says,
        NotchDrawing.essentials(layout, notch),
        List.of(),
        others(layout, Face.TOPSIDE),
        2 * layout.job().tools().reachRadiusMm(),
        NotchDrawing.lineX(layout, notch),
        (origin, window, joins) ->
            new NotchDrawing(layout, notch, origin, window, info.units()).painted(joins));
  }

  private static String letter(Side side) {
    return side.name().substring(0, 1);
  }

  /** What must show on an underside or topside sheet, with the origin at (0, 0). */
  static Box essentials(SideLayout layout, Face face) {
    Tower tower = layout.job().tower();
    SheetFrame frame = frame(layout, face);
    Box box = frame.region(layout.opening()).bounds();
    for (Region region : List.of(layout.mark(), layout.finalCut(), layout.roughCut())) {
      if (!region.isEmpty()) {
        box = box.union(frame.region(region).bounds());
      }
    }
    for (PlacedHole hole : layout.holes()) {
      double cross = hole.diameterMm() / 2 + TowerDrawing.CROSS_PAST_MM;
      double reach =
          face == Face.TOPSIDE ? Math.max(cross, layout.job().tools().reachRadiusMm()) : cross;
      box = box.union(Box.around(frame.point(hole.at()), reach));
    }
    // A long seam need not show where nothing comes near it.
    Box near = box.grown(NEAR_WORK_MM);
    for (KeepOut keepOut : tower.keepOuts()) {
      Box whole = frame.region(TowerDrawing.barred(keepOut)).bounds();
      if (whole.meets(near)) {
        box = box.union(whole.within(near));
      }
    }
    for (Landmark landmark : tower.landmarks()) {
      box = box.union(Box.around(frame.point(landmark.at()), landmark.diameterMm() / 2 + 3));
    }
    if (tower.landmarks().size() < 2) {
      // One landmark does not fix a sheet: the straightedges must show.
      for (Straightedge edge : tower.straightedges()) {
        box = box.union(bounds(frame, edge));
      }
    }
    return box;
  }

  /** A frame whose origin lies at (0, 0). */
  private static SheetFrame frame(SideLayout layout, Face face) {
    return new SheetFrame(layout.side(), face, layout.job().tower().crown(), Vec2.ZERO);
  }

  private static Box bounds(SheetFrame frame, Straightedge edge) {
    return Box.around(frame.point(edge.from()), 1).union(Box.around(frame.point(edge.to()), 1));
  }

  private static List<Box> wishes(SideLayout layout, Face face) {
    Tower tower = layout.job().tower();
    SheetFrame frame = frame(layout, face);
    List<Box> wishes = new ArrayList<>();
    tower.keepOuts().forEach(k -> wishes.add(frame.region(TowerDrawing.barred(k)).bounds()));
    for (Straightedge edge : tower.straightedges()) {
      wishes.add(bounds(frame, edge).grown(WORDS_BESIDE_MM));
      wishes.add(bounds(frame, edge));
    }
    if (face == Face.TOPSIDE) {
      tower.brackets().forEach(b -> wishes.add(frame.contour(b.outline()).bounds()));
    }
    return wishes;
  }

  private static List<Vec2> others(SideLayout layout, Face face) {
    SheetFrame frame = frame(layout, face);
    List<Vec2> places = new ArrayList<>();
    layout.holes().forEach(h -> places.add(frame.point(h.at())));
    layout.starters().forEach(s -> places.add(frame.point(s.at())));
    layout.job().tower().landmarks().forEach(l -> places.add(frame.point(l.at())));
    places.add(Vec2.ZERO);
    places.addAll(SheetCanvas.along(frame.region(layout.finalCut()), CUT_STEP_MM));
    places.addAll(SheetCanvas.along(frame.region(layout.roughCut()), CUT_STEP_MM));
    return places;
  }

  private static double largest(SideLayout layout) {
    return DoubleStream.concat(
            layout.holes().stream()
                .mapToDouble(h -> h.diameterMm() + 2 * TowerDrawing.CROSS_PAST_MM),
            layout.job().tower().landmarks().stream().mapToDouble(Landmark::diameterMm))
        .max()
        .orElse(0);
  }
}
