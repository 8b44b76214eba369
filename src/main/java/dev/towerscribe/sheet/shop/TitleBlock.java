package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Projection;
import java.util.ArrayList;
import java.util.List;

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

  private FieldGrid grid() {
    DrawingInfo info = drawing.info();
    String job = drawing.job().title();
    String words = job.isEmpty() ? drawing.title() : drawing.title() + " \u2013 " + job;
    List<FieldGrid.Row> rows = new ArrayList<>(drawing.making());
    rows.add(
        new FieldGrid.Row(
            TITLE_ROW_MM,
            List.of(
                FieldGrid.field("Legal owner", info.owner().orElse(""), 45),
                new FieldGrid.Field("Title", words, 100, TITLE_CAP_MM),
                FieldGrid.field("Document type", drawing.kind(), 35))));
    rows.add(
        FieldGrid.row(
            FieldGrid.field("Created by", info.createdBy().orElse(""), 43),
            FieldGrid.field("Approved by", info.approvedBy().orElse(""), 43),
            FieldGrid.field(
                "Date of issue", drawing.job().date().map(Object::toString).orElse(""), 27),
            FieldGrid.field("Projection", "", 40),
            FieldGrid.field("Paper", paper, 27)));
    rows.add(
        FieldGrid.row(
            FieldGrid.field("Identification number", drawing.number(), 65),
            FieldGrid.field("Rev", info.revision().orElse(""), 13),
            FieldGrid.field("Sheet", sheet, 18),
            FieldGrid.field("Scale", scale, 20),
            FieldGrid.field("Lengths", drawing.lengths().words(), 64)));
    return new FieldGrid(rows);
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
    Box sign = cells.get(cells.size() - 2).get(3);
    Vec2 at = new Vec2(sign.maxX() - ProjectionSign.WIDTH_MM / 2 - 0.6, sign.centre().y());
    ProjectionSign.draw(drawing.style().projection() == Projection.FIRST, at, out);
  }
}
