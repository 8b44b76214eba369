package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.Phrases;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands round the drawing of every full-scale page. The side's word stands on its own side of
 * the page; the face's word stands in a black band, a heavy frame or a hatched frame, so that no
 * two kinds of sheet look alike from afar.
 *
 * @param zones how the page is shared out
 * @param info what every page says about the job
 * @param scale what of a printer the page undoes
 * @param says words of head and foot
 * @param lineX where the fore-aft line runs, which head, arrows and foot leave free
 * @param tiled whether a key of tiles is to stand beside the arrows
 * @param items where shapes go
 */
record SheetBorder(
    SheetZones zones,
    JobInfo info,
    PrintScale scale,
    Says says,
    Optional<Double> lineX,
    boolean tiled,
    List<Item> items) {
  /** How the words at the head are set off. */
  enum Look {
    /** White words on black. */
    BLACK,
    /** Black words in a heavy frame. */
    FRAMED,
    /** Black words in a hatched frame. */
    HATCHED
  }

  /**
   * What the head and foot say.
   *
   * @param side which tower
   * @param word the face or the kind of sheet, in capitals
   * @param look how it is set off
   * @param underWord a few words beneath it
   * @param pageName "Left tower, underside"
   * @param outboardSign +1 when outboard is to the page's right
   * @param todo how to lay the sheet, a paragraph each
   */
  record Says(
      Side side,
      String word,
      Look look,
      String underWord,
      String pageName,
      int outboardSign,
      List<String> todo) {
    /** The same for one of several tiles, which must be joined first. */
    Says ofTile(String tile) {
      List<String> first = new ArrayList<>(List.of("Tape the tiles cross on cross, J1 on J1."));
      first.addAll(todo);
      return new Says(side, word, look, underWord, pageName + tile, outboardSign, first);
    }
  }

  /** Nothing on a sheet is smaller. */
  private static final double LEAST_CAP_MM = 2.5;

  private static final double MOST_UNDER_CAP_MM = 3.5;

  /** Far less than a letter: a width that was fitted exactly still fits. */
  private static final double ROUNDING_MM = 1e-6;

  private static final double PAD_MM = 2.5;
  static final double LINE_GAP_MM = 1.5;
  private static final double HATCH_MM = 9;
  private static final double LEAST_WORD_MM = 80;
  private static final double LEAST_FACE_CAP_MM = 10;

  /** Room for the side's word, for the outboard arrow and for the forward arrow with theirs. */
  private static final double SIDE_MM = 60;

  private static final double OUTBOARD_MM = 72;
  private static final double FORWARD_MM = 62;

  /** Room for the key of tiles beside the forward arrow. */
  private static final double KEY_MM = 32;

  /** What the foot's two columns need on either side of the fore-aft line. */
  static final double FOOT_LEFT_MM = 74;

  private static final double FOOT_RIGHT_MM = 72;

  private LayerPen notes() {
    return LayerPen.notes(items);
  }

  /**
   * Where the fore-aft line may run so that the words beside it keep their size.
   *
   * @param tiled whether a key of tiles stands beside the forward arrow
   * @return least and most page x
   */
  static double[] lineRoom(SheetZones zones, Says says, boolean tiled) {
    Box head = zones.head();
    double hatching = says.look() == Look.HATCHED ? HATCH_MM * 2 : 0;
    double word = Math.max(LEAST_WORD_MM, Lettering.width(says.word(), LEAST_FACE_CAP_MM));
    double face = word + 2 * PAD_MM + LINE_GAP_MM + hatching + 0.1;
    boolean sideAtLeft = says.side() == Side.LEFT;
    double forward = FORWARD_MM + (tiled ? KEY_MM : 0);
    boolean outboardAtLeft = says.outboardSign() < 0;
    double left = Math.max(sideAtLeft ? SIDE_MM : face, outboardAtLeft ? OUTBOARD_MM : forward);
    double right = Math.max(sideAtLeft ? face : SIDE_MM, outboardAtLeft ? forward : OUTBOARD_MM);
    return new double[] {head.minX() + left, head.maxX() - right};
  }

  /** Whether head and arrows leave room for the fore-aft line. */
  private boolean inHead(double x) {
    double[] room = lineRoom(zones, says, tiled);
    return x >= room[0] - 1e-6 && x <= room[1] + 1e-6;
  }

  private static boolean inFoot(Box foot, double x) {
    return x > foot.minX() + FOOT_LEFT_MM && x < foot.maxX() - FOOT_RIGHT_MM;
  }

  /** Draws everything. */
  void draw(CheckBars bars) {
    head();
    arrows();
    zones.stops().ifPresent(band -> StopBand.of(info, band.width()).draw(band, notes()));
    strip(bars);
    foot(bars);
    lineX.ifPresent(this::foreAftEnds);
  }

  private void head() {
    Box h = zones.head();
    boolean leftTower = says.side() == Side.LEFT;
    double usual = leftTower ? h.minX() + h.width() * 0.45 : h.maxX() - h.width() * 0.45;
    double split = lineX.filter(this::inHead).orElse(usual);
    Box left = new Box(h.minX(), h.minY() + 1, split - LINE_GAP_MM, h.maxY());
    Box right = new Box(split + LINE_GAP_MM, h.minY() + 1, h.maxX(), h.maxY());
    Look sideLook = says.look() == Look.BLACK ? Look.BLACK : Look.FRAMED;
    big(leftTower ? left : right, says.side().name(), "", sideLook);
    big(leftTower ? right : left, says.word(), says.underWord(), says.look());
  }

  private void big(Box box, String word, String under, Look look) {
    Ink ink = look == Look.BLACK ? Ink.WHITE : Ink.BLACK;
    if (look == Look.BLACK) {
      notes().area(box, Ink.BLACK);
    } else {
      notes().frame(box.grown(-Pen.HEAVY.widthMm() / 2), Pen.HEAVY);
    }
    double room = box.width() - 2 * PAD_MM - (look == Look.HATCHED ? 2 * HATCH_MM : 0);
    double tall = box.height() - 2 * PAD_MM - (under.isEmpty() ? 0 : 7);
    double cap = Lettering.capHeightToFit(word, room, tall);
    double underCap =
        under.isEmpty()
            ? 0
            : Math.max(LEAST_CAP_MM, Lettering.capHeightToFit(under, room, MOST_UNDER_CAP_MM));
    String beneath = Lettering.shortened(under, underCap, room + ROUNDING_MM);
    double used = cap + (under.isEmpty() ? 0 : 2.5 + underCap);
    double base = box.centre().y() + used / 2 - cap;
    double middle = box.centre().x();
    if (look == Look.HATCHED) {
      Box inner = box.grown(-2 * Pen.HEAVY.widthMm());
      StopBand.hatch(inner, 2.0, Pen.OUTLINE, notes());
      double half =
          Math.max(Lettering.width(word, cap), Lettering.width(beneath, underCap)) / 2 + 2;
      double from = Math.max(inner.minX(), middle - half);
      double to = Math.min(inner.maxX(), middle + half);
      notes().area(new Box(from, inner.minY() - 0.5, to, inner.maxY() + 0.5), Ink.WHITE);
    }
    notes().text(middle, base, cap, Align.MIDDLE, word, ink);
    if (!under.isEmpty()) {
      notes().text(middle, base - 2.5 - underCap, underCap, Align.MIDDLE, beneath, ink);
    }
  }

  /** The two arrows; the one that points outboard stands on the outboard half of the page. */
  private void arrows() {
    Box row = zones.arrows();
    double y = row.centre().y();
    double cap = 6;
    double split = lineX.filter(this::inHead).orElse(row.centre().x());
    int out = says.outboardSign();
    double edge = out > 0 ? row.maxX() : row.minX();
    double word = Lettering.width("OUTBOARD", cap);
    double room = Math.abs(edge - split) - 3;
    double length = Math.min(30, room - word - 3);
    arrow(new Vec2(edge - out * length, y), new Vec2(edge, y));
    double far = edge - out * (length + 2 + word / 2);
    notes().text(far, y - cap / 2, cap, Align.MIDDLE, "OUTBOARD");
    double x = split - out * 7;
    arrow(new Vec2(x, row.minY() + 1), new Vec2(x, row.maxY() - 0.5));
    double forward = Lettering.width("FORWARD", cap);
    notes().text(x - out * (5 + forward / 2), y - cap / 2, cap, Align.MIDDLE, "FORWARD");
  }

  /** Where a key of tiles may stand: the inboard end of the arrows' row. */
  Box keyRoom() {
    Box row = zones.arrows();
    return says.outboardSign() > 0
        ? new Box(row.minX(), row.minY(), row.minX() + KEY_MM, row.maxY())
        : new Box(row.maxX() - KEY_MM, row.minY(), row.maxX(), row.maxY());
  }

  private void arrow(Vec2 from, Vec2 to) {
    Vec2 u = to.minus(from).unit();
    Vec2 n = u.quarterTurn();
    Vec2 neck = to.minus(u.times(6));
    notes()
        .polygon(
            List.of(
                from.plus(n.times(0.9)),
                neck.plus(n.times(0.9)),
                neck.plus(n.times(3.2)),
                to,
                neck.minus(n.times(3.2)),
                neck.minus(n.times(0.9)),
                from.minus(n.times(0.9))),
            Pen.NONE,
            Ink.BLACK);
  }

  /** Above the upright bar: what must be done first. */
  private void strip(CheckBars bars) {
    bars.draw(items);
    items.addAll(bars.labelAlong());
    Box s = zones.strip();
    double from = bars.farAlong().y() + CheckBars.TICK_MM + 1;
    double room = s.maxY() - from - 1;
    for (List<String> lines :
        List.of(
            List.of("MEASURE THE BARS", "BEFORE YOU TAPE THIS"),
            List.of("MEASURE THE BARS BEFORE YOU TAPE THIS"))) {
      double cap =
          lines.stream()
              .mapToDouble(line -> Lettering.capHeightToFit(line, room, 3.5))
              .min()
              .orElseThrow();
      if (cap >= 2.5) {
        TextBlock block = TextBlock.of(cap, lines.toArray(String[]::new));
        Vec2 at = new Vec2(s.minX() + block.heightMm() / 2 + 0.5, from + room / 2);
        items.addAll(block.drawn(at, Angle.ofDegrees(90), false, Ink.BLACK));
        return;
      }
    }
  }

  private void foot(CheckBars bars) {
    Box f = zones.foot();
    double end = bars.farAcross().x();
    double infoRight = lineX.filter(x -> inFoot(f, x) && x < end).orElse(end) - LINE_GAP_MM;
    items.addAll(bars.labelAcross());
    double top = bars.corner().y() - 7.5;
    List<String> about = new ArrayList<>();
    about.add(Lettering.shortened(info.title(), 3.2, 1.2 * (infoRight - f.minX())));
    String date = info.date().map(Object::toString).orElse("________");
    about.add("Date %s   Pack %s".formatted(date, info.packMark()));
    about.add(says.pageName() + ". Scale 1:1");
    if (!scale.isTrue()) {
      String skew = ", skew %s\u00b0".formatted(Numbers.plain(scale.skew().degrees(), 2));
      about.add(
          "Printer: %s across, %s along%s"
              .formatted(
                  Numbers.plain(scale.across(), 4),
                  Numbers.plain(scale.along(), 4),
                  scale.isSquare() ? "" : skew));
    }
    about.add("Cutting is final. Read the caution page first.");
    column(about, new Box(f.minX(), f.minY(), infoRight, top), 3.2, 2.5);
    double workLeft = Math.max(end + 4, lineX.filter(x -> inFoot(f, x)).orElse(0.0) + 3);
    List<String> todo = new ArrayList<>();
    todo.add(Phrases.LAW_FIRST);
    todo.add("Cross to cross: " + bars.diagonal() + ".");
    todo.addAll(says.todo());
    column(todo, new Box(workLeft, f.minY(), f.maxX(), f.maxY() - 2), 3.5, 2.5);
  }

  /** Paragraphs from the top of a column, as large as fits. */
  private void column(List<String> paragraphs, Box box, double mostMm, double leastMm) {
    String[] words = paragraphs.toArray(String[]::new);
    double cap = mostMm;
    TextBlock block = TextBlock.wrapped(cap, box.width(), words);
    while (block.heightMm() > box.height() && cap > leastMm) {
      cap = Math.max(leastMm, cap - 0.1);
      block = TextBlock.wrapped(cap, box.width(), words);
    }
    double y = box.maxY();
    for (int i = 0; i < block.lines().size(); i++) {
      String line = block.lines().get(i).words();
      y -= cap * (i == 0 ? 1 : TextBlock.PITCH);
      if (y - TextBlock.TAIL * cap < box.minY() - 1e-6) {
        throw new NoRoomException(
            "no room at the foot of \"%s\" for: %s".formatted(says.pageName(), line));
      }
      notes().text(box.minX(), y, cap, Align.START, line);
    }
  }

  /** The fore-aft line beyond the drawing, to both ends of the printable paper. */
  private void foreAftEnds(double x) {
    LayerPen pen = new LayerPen(Layer.CENTRE_LINES, items);
    Box p = zones.printable();
    if (inFoot(zones.foot(), x)) {
      pen.line(x, p.minY(), x, zones.drawing().minY(), Pen.OUTLINE);
    }
    if (inHead(x)) {
      double from = zones.stops().map(Box::maxY).orElse(zones.drawing().maxY());
      pen.line(x, from, x, p.maxY(), Pen.OUTLINE);
    }
  }
}
