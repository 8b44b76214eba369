package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.report.Phrases;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The band at the top of every text page and the line at its foot: which page, which side, which
 * job and pack, and what the pack is not.
 *
 * @param print paper and margin
 * @param info the job
 * @param side the tower the page is about, if it is about one
 * @param title the page's title
 * @param bar whether a black bar tells of accepted stops; only a page that tells of them itself may
 *     go without
 */
public record PageHead(Print print, JobInfo info, Optional<Side> side, String title, boolean bar)
    implements PageFrame {
  private static final double GAP = 2.0;
  private static final double BODY_GAP = 4.0;
  private static final double LINE = 2.9;
  private static final double JOB = 3.6;
  private static final double BAR = 4.0;
  private static final double COLUMN_GAP = 6.0;
  private static final String FOOT =
      Phrases.LAW_FIRST
          + " A marking-out aid, not a certification. In doubt, ask a qualified body or chassis"
          + " shop.";

  @Override
  public double paperWidthMm() {
    return print.paper().widthMm();
  }

  @Override
  public double paperHeightMm() {
    return print.paper().heightMm();
  }

  @Override
  public double leftMm() {
    return print.marginMm();
  }

  /** Right edge of what may be printed. */
  double rightMm() {
    return print.paper().widthMm() - print.marginMm();
  }

  @Override
  public double widthMm() {
    return rightMm() - leftMm();
  }

  private double titleHeightMm() {
    return side.isPresent() ? TextStyle.SIDE + 6.0 : TextStyle.lineMm(TextStyle.TITLE);
  }

  private List<String> jobLines() {
    return TextStyle.wrap(info.title(), JOB, widthMm());
  }

  private String dateAndPack() {
    String date = info.date().map(Object::toString).orElse("________________");
    return "Date %s     Pack %s".formatted(date, info.packMark());
  }

  private String page(int number, int count) {
    return "Page " + number + " of " + count;
  }

  /** Date and pack on the left; left of the page's number if there is room, above it if not. */
  private List<String> factLines() {
    double room = widthMm() - COLUMN_GAP - Lettering.width(page(888, 888), LINE);
    return Lettering.width(dateAndPack(), LINE) <= room
        ? List.of(dateAndPack())
        : Stream.concat(TextStyle.wrap(dateAndPack(), LINE, widthMm()).stream(), Stream.of(""))
            .toList();
  }

  private List<String> accepted() {
    int n = info.acceptedStops().size();
    if (n == 0 || !bar) {
      return List.of();
    }
    return List.of(
        n == 1 ? "PRINTED WITH AN ACCEPTED STOP" : "PRINTED WITH " + n + " ACCEPTED STOPS");
  }

  private List<String> foot() {
    return TextStyle.wrap(FOOT, TextStyle.SMALL, widthMm());
  }

  @Override
  public double bodyTopMm() {
    return print.paper().heightMm()
        - print.marginMm()
        - titleHeightMm()
        - jobLines().size() * TextStyle.lineMm(JOB)
        - factLines().size() * TextStyle.lineMm(LINE)
        - (accepted().isEmpty() ? 0 : TextStyle.lineMm(BAR) + GAP)
        - GAP
        - BODY_GAP;
  }

  @Override
  public double bodyBottomMm() {
    return print.marginMm() + foot().size() * TextStyle.lineMm(TextStyle.SMALL) + GAP + BODY_GAP;
  }

  @Override
  public void draw(int number, int count, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double top = print.paper().heightMm() - print.marginMm();
    double y = top;
    if (side.isPresent()) {
      String word = side.get().word().toUpperCase(Locale.ROOT);
      double wide = Lettering.width(word, TextStyle.SIDE) + 8.0;
      notes.box(rightMm() - wide, y - titleHeightMm() + 2, rightMm(), y, Pen.NONE, Ink.BLACK);
      notes.text(
          rightMm() - wide / 2,
          y - 2 - TextStyle.SIDE,
          TextStyle.SIDE,
          Align.MIDDLE,
          word,
          Ink.WHITE);
      double cap = Lettering.capHeightToFit(title, widthMm() - wide - COLUMN_GAP, TextStyle.TITLE);
      notes.text(leftMm(), y - 2 - TextStyle.SIDE, cap, Align.START, title);
    } else {
      double cap = Lettering.capHeightToFit(title, widthMm(), TextStyle.TITLE);
      notes.text(leftMm(), TextStyle.baseMm(y, TextStyle.TITLE), cap, Align.START, title);
    }
    y -= titleHeightMm();
    y = TextStyle.lines(notes, leftMm(), y, JOB, jobLines());
    y = TextStyle.lines(notes, leftMm(), y, LINE, factLines());
    double last = TextStyle.baseMm(y + TextStyle.lineMm(LINE), LINE);
    notes.text(rightMm(), last, LINE, Align.END, page(number, count));
    y -= GAP;
    notes.line(leftMm(), y, rightMm(), y, Pen.FINAL_CUT);
    for (String words : accepted()) {
      y -= GAP;
      notes.box(leftMm(), y - TextStyle.lineMm(BAR), rightMm(), y, Pen.NONE, Ink.BLACK);
      double middle = (leftMm() + rightMm()) / 2;
      notes.text(middle, TextStyle.baseMm(y, BAR), BAR, Align.MIDDLE, words, Ink.WHITE);
    }
    double foot = bodyBottomMm() - BODY_GAP;
    notes.line(leftMm(), foot, rightMm(), foot, Pen.THIN);
    TextStyle.lines(notes, leftMm(), foot - GAP / 2, TextStyle.SMALL, foot());
  }
}
