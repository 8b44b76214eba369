package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.DrilledReport;
import dev.towerscribe.sheet.text.BlockSetter;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import dev.towerscribe.sheet.tower.KeyDiagram;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One tower as it was drilled, for the record: whether the plate goes on in large words, where the
 * holes are, the metal beside them, and what rotation, offset and alignment the tower now has.
 */
public final class DrilledPage {
  private static final double GAP = 3.0;
  private static final double INNER_GAP = 1.2;
  private static final double GUTTER = 6.0;
  private static final double SKETCH_WIDTH = 78.0;

  /** Heights of the sketch, the largest first: the first that leaves one page. */
  private static final List<Double> SKETCH_HEIGHTS = List.of(92.0, 86.0, 80.0, 76.0);

  private static final BlockSetter.Style STYLE =
      new BlockSetter.Style(TextStyle.BODY, 0.3, BlockSetter.Style.AIRY.findingGapMm());

  private static final BlockSetter.Style NOTES =
      new BlockSetter.Style(TextStyle.SMALL, STYLE.padMm(), STYLE.findingGapMm());

  private static final String PLACE_NOT_KNOWN =
      "The plate's place is not known from these readings.";

  private final DrilledSide side;
  private final Optional<DrilledAngles> angles;
  private final JobInfo info;
  private final Lengths lengths;
  private final DrilledReport words;
  private final double sketchMm;
  private final TextPage page;

  private DrilledPage(
      DrilledSide side,
      Optional<DrilledAngles> angles,
      Print print,
      JobInfo info,
      double sketchMm) {
    this.side = side;
    this.angles = angles;
    this.info = info;
    this.lengths = Lengths.in(info.units());
    this.words = new DrilledReport(lengths, this::key);
    this.sketchMm = sketchMm;
    this.page = TextPage.of(print, info, Optional.of(side.side()), "Drilled holes: record");
  }

  /**
   * The page of one tower.
   *
   * @param side the tower as drilled
   * @param angles what that does to its alignment; empty where its mount is not known
   * @param print paper and margin
   * @param info the job, its accepted stops those of the readings
   * @return one page, more where a plate has very many bolts or there is much to say
   */
  public static List<Page> pages(
      DrilledSide side, Optional<DrilledAngles> angles, Print print, JobInfo info) {
    return TextPage.fewest(
        SKETCH_HEIGHTS, height -> new DrilledPage(side, angles, print, info, height).pages());
  }

  private List<Page> pages() {
    blocks(words.verdict(side));
    double besideMm = page.columnMm() - SKETCH_WIDTH - GUTTER;
    List<Block> right = new ArrayList<>();
    right.add(
        words.place(side).<Block>map(t -> t).orElse(new Block.Paragraph(PLACE_NOT_KNOWN, false)));
    List<Block> alignment = words.angles(side, angles);
    alignment.stream().filter(Block.Table.class::isInstance).forEach(right::add);
    Fragment beside = BlockSetter.stack(right, lengths, besideMm, INNER_GAP);
    page.add(new Fragments.Beside(sketch(), beside, SKETCH_WIDTH + GUTTER), GAP, false);
    words.holes(side).ifPresent(this::blocks);
    page.columns(2);
    alignment.stream().filter(b -> !(b instanceof Block.Table)).forEach(this::blocks);
    blocks(words.metal(side));
    blocks(
        new Block.Paragraph(
            "%s%s %s".formatted(longNames(), words.signs(), words.explained(side)), true));
    Block.Points told = DrilledReport.toldOnPaper(side, FindingsPages.ids(info.acceptedStops()));
    if (!told.points().isEmpty()) {
      page.blocks(List.of(new Block.Section("Notes"), told), lengths, NOTES);
    }
    return page.pages(side.side(), "drilled", "tower, drilled holes", "drill");
  }

  private void blocks(Block block) {
    page.blocks(List.of(block), lengths, STYLE);
  }

  // Beside the sketch.

  private Fragment sketch() {
    boolean tied = side.network().tied();
    List<Vec2> errors =
        names().stream()
            .map(name -> side.holes().stream().filter(h -> h.found().name().equals(name)))
            .map(found -> found.findFirst().flatMap(h -> tied ? h.error() : h.left()))
            .map(error -> error.orElse(Vec2.ZERO))
            .toList();
    return new KeyDiagram(
        side.planned(),
        errors,
        tied ? "errors" : "errors within the pattern",
        SKETCH_WIDTH,
        sketchMm);
  }

  /** What stands for a hole in sketch and table. */
  private String key(String hole) {
    return KeyDiagram.keys(side.planned().holes()).get(names().indexOf(hole));
  }

  private List<String> names() {
    return side.planned().holes().stream().map(PlacedHole::name).toList();
  }

  /** Names too long for the sketch, each after its number. */
  private String longNames() {
    List<String> numbered =
        names().stream().filter(n -> !key(n).equals(n)).map(n -> key(n) + " = " + n).toList();
    return numbered.isEmpty() ? "" : "Holes: " + String.join(", ", numbered) + ". ";
  }
}
