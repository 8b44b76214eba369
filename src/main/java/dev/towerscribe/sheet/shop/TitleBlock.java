package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Projection;
import dev.towerscribe.report.Phrases;
import java.util.List;
import java.util.stream.Stream;

/**
 * Title block: the mandatory data fields of ISO 7200:2004 (legal owner, identification number, date
 * of issue, sheet number, title, approved by, created by, document type) and the makers' ones:
 * material, finish, mass, tolerances, scale, projection. At most 180 mm wide, in the lower right
 * corner of the frame.
 *
 * @param drawing what is drawn, for whom, by whom
 * @param sheet "1 of 2"
 * @param scale "1:2"
 * @param paper size of the sheet
 */
record TitleBlock(ShopDrawing drawing, String sheet, String scale, String paper) {
  private static final double WIDEST_MM = 180.0;
  private static final double TITLE_ROW_MM = 16.0;
  private static final double TITLE_CAP_MM = 5.0;

  /** Height of the sign of the projection: the cone's larger diameter, and its length. */
  private static final double SIGN_MM = 6.0;

  private static final double SIGN_GAP_MM = 2.0;
  private static final double SIGN_OVER_MM = 1.0;

  /** Width of the sign with its centre lines. */
  private static final double SIGN_WIDE_MM = 2 * SIGN_MM + SIGN_GAP_MM + 2 * SIGN_OVER_MM;

  private FieldGrid grid() {
    DrawingInfo info = drawing.info();
    String job = drawing.job().title();
    String words = job.isEmpty() ? drawing.title() : drawing.title() + " \u2013 " + job;
    FieldGrid.Row title =
        new FieldGrid.Row(
            TITLE_ROW_MM,
            List.of(
                FieldGrid.field("Legal owner", info.owner().orElse(""), 45),
                new FieldGrid.Field("Title", words, 100, TITLE_CAP_MM),
                FieldGrid.field("Document type", drawing.kind(), 35)));
    String date = drawing.job().date().map(Object::toString).orElse("");
    FieldGrid.Row people =
        FieldGrid.row(
            FieldGrid.field("Created by", info.createdBy().orElse(""), 43),
            FieldGrid.field("Approved by", info.approvedBy().orElse(""), 43),
            FieldGrid.field("Date of issue", date, 27),
            FieldGrid.field("Projection", "", 40),
            FieldGrid.field("Paper", paper, 27));
    FieldGrid.Row number =
        FieldGrid.row(
            FieldGrid.field("Identification number", drawing.number(), 65),
            FieldGrid.field("Rev", info.revision().orElse(""), 13),
            FieldGrid.field("Sheet", sheet, 18),
            FieldGrid.field("Scale", scale, 20),
            FieldGrid.field("Lengths", drawing.lengths().words(), 64));
    return new FieldGrid(
        Stream.concat(drawing.making().stream(), Stream.of(title, people, number)).toList());
  }

  /** The room it takes in the corner of a frame. */
  Box box(Box frame) {
    double wide = Math.min(WIDEST_MM, frame.width());
    return new Box(
        frame.maxX() - wide, frame.minY(), frame.maxX(), frame.minY() + grid().heightMm());
  }

  void draw(Box frame, List<Item> out) {
    Box box = box(frame);
    List<List<Box>> cells = grid().draw(box.minX(), box.maxY(), box.width(), out);
    FieldGrid.besideLabel(cells.get(cells.size() - 3).get(1), Phrases.LAW_FIRST, out);
    Box sign = cells.get(cells.size() - 2).get(3);
    Vec2 at = new Vec2(sign.maxX() - SIGN_WIDE_MM / 2 - 0.6, sign.centre().y());
    sign(drawing.style().projection() == Projection.FIRST, at, new LayerPen(Layer.FRAME, out));
  }

  /**
   * The sign of a projection method after ISO 5456-2: a truncated cone from its side, and the two
   * circles of its end. First angle has the circles right of the cone, whose small end points away
   * from them; third angle has them left of it, at its small end. Proportions from memory.
   */
  private static void sign(boolean firstAngle, Vec2 centre, LayerPen s) {
    double y = centre.y();
    double left = centre.x() - SIGN_WIDE_MM / 2 + SIGN_OVER_MM;
    double smallX = firstAngle ? left : left + SIGN_MM + SIGN_GAP_MM;
    double bigX = smallX + SIGN_MM;
    Vec2 rings = new Vec2((firstAngle ? bigX + SIGN_GAP_MM : left) + SIGN_MM / 2, y);
    double small = SIGN_MM / 4;
    double big = SIGN_MM / 2;
    s.line(smallX, y - small, smallX, y + small, Pen.OUTLINE);
    s.line(bigX, y - big, bigX, y + big, Pen.OUTLINE);
    s.line(smallX, y + small, bigX, y + big, Pen.OUTLINE);
    s.line(smallX, y - small, bigX, y - big, Pen.OUTLINE);
    s.circle(rings, big, Pen.OUTLINE);
    s.circle(rings, small, Pen.OUTLINE);
    s.line(smallX - SIGN_OVER_MM, y, bigX + SIGN_OVER_MM, y, Pen.FINE);
    s.cross(rings, big + SIGN_OVER_MM, Pen.FINE);
  }
}
