package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.WayOut;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A picture of each tower with every stop where it is, and the stops in words below: for whoever
 * has to change the job, not to work from. It is no sheet: not to scale, and says so across.
 */
public final class OverviewPage {
  /** How much of the page's body the picture takes, the largest first. */
  private static final List<Double> SHARES = List.of(0.64, 0.56, 0.48);

  private static final double INDENT = 9.0;
  private static final double GAP = 3.5;

  private OverviewPage() {}

  /** The first line of a stop, its number in a black box before it. */
  private record Numbered(int number, Fragment first) implements Fragment {
    private static final double CAP = 2.8;

    @Override
    public double heightMm() {
      return first.heightMm();
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double bottom = topMm - heightMm() + 0.3;
      notes.box(leftMm, bottom, leftMm + INDENT - 2, topMm, Pen.NONE, Ink.BLACK);
      double base = TextStyle.baseMm(topMm, TextStyle.BODY);
      String words = Integer.toString(number);
      notes.text(leftMm + INDENT / 2 - 1, base, CAP, Align.MIDDLE, words, Ink.WHITE);
      first.draw(leftMm, topMm, out);
    }
  }

  /**
   * The overview of a whole job.
   *
   * @param layout the job, laid out
   * @param info the job; its accepted stops are marked so
   * @return for each side a page, and more where its stops need them
   */
  public static List<Page> pages(JobLayout layout, JobInfo info) {
    return layout.sides().values().stream().flatMap(s -> pages(s, info).stream()).toList();
  }

  /**
   * The overview of one tower.
   *
   * @param layout the tower
   * @param info the job; its accepted stops are marked so
   * @return at least one page
   */
  public static List<Page> pages(SideLayout layout, JobInfo info) {
    return TextPage.fewest(SHARES, share -> pages(layout, info, share));
  }

  private static List<Page> pages(SideLayout layout, JobInfo info, double share) {
    TextPage page = TextPage.of(layout.job().print(), info, Optional.of(layout.side()), "Overview");
    Lengths lengths = Lengths.in(info.units());
    List<Finding> stops = layout.findings().stream().filter(Finding::isStop).toList();
    double height = share * page.bodyMm();
    page.add(new OverviewPicture(layout, stops, lengths, page.columnMm(), height), 0, false);
    page.paragraph(advice(stops), TextStyle.BODY);
    Set<String> accepted = FindingsPages.ids(info.acceptedStops());
    for (int i = 0; i < stops.size(); i++) {
      Finding stop = stops.get(i);
      List<Fragment> lines = new ArrayList<>();
      lines.addAll(line(stop.where() + ": " + sentence(stop), TextStyle.BODY, page));
      lines.set(0, new Numbered(i + 1, lines.get(0)));
      WayOut.sentence(stop, layout.job().mount(), lengths)
          .ifPresent(words -> lines.addAll(line(words, TextStyle.BODY, page)));
      lines.addAll(line(standing(stop, accepted), TextStyle.SMALL, page));
      page.chain(lines, GAP, false);
    }
    return page.pages(layout.side(), "overview", "tower, overview", "view");
  }

  private static List<Fragment> line(String words, double cap, TextPage page) {
    return Fragments.lines(words, cap, page.columnMm(), INDENT);
  }

  private static String advice(List<Finding> stops) {
    return stops.isEmpty()
        ? "No stop finding. The sheets of a pack are what to work by, not this page."
        : "Each way out clears its own stop and says nothing of the others: change the job, then"
            + " check again. Turning the plate may do as well; \"towerscribe place\" looks for"
            + " places where every check passes.";
  }

  private static String sentence(Finding stop) {
    return stop.say().endsWith(".") ? stop.say() : stop.say() + ".";
  }

  /** A stop that cannot be accepted says so itself. */
  private static String standing(Finding stop, Set<String> accepted) {
    String answer =
        accepted.contains(stop.id())
            ? " ACCEPTED."
            : stop.acceptable() ? " May be accepted by its id, if you can answer for it." : "";
    return "Id: %s.%s".formatted(stop.id(), answer);
  }
}
