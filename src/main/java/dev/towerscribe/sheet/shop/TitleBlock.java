package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * Title block: the mandatory data fields of ISO 7200:2004 (legal owner, identification number, date
 * of issue, sheet number, title, approved by, created by, document type) and the makers' ones:
 * material, finish, mass, tolerances, scale, projection. At most 180 mm wide, in the lower right
 * corner of the frame.
 *
 * @param owner who owns the drawing; empty to fill in by hand
 * @param title what is drawn
 * @param supplement second line of the title, perhaps empty
 * @param kind document type: "Part drawing"
 * @param number identification number
 * @param revision revision, perhaps empty
 * @param date date of issue, perhaps empty
 * @param sheet "1 of 2"
 * @param createdBy creator, perhaps empty
 * @param approvedBy approval person, perhaps empty
 * @param scale "1:2"
 * @param units what lengths are in
 * @param paper size of the sheet
 * @param firstAngle projection method
 * @param making fields of the maker: material, finish, mass and so on; perhaps none
 */
record TitleBlock(
    String owner,
    String title,
    String supplement,
    String kind,
    String number,
    String revision,
    String date,
    String sheet,
    String createdBy,
    String approvedBy,
    String scale,
    String units,
    String paper,
    boolean firstAngle,
    List<FieldGrid.Row> making) {
  private static final double WIDEST_MM = 180.0;
  private static final double ROW_MM = 10.0;
  private static final double TITLE_ROW_MM = 16.0;
  private static final double CAP_MM = 3.0;
  private static final double TITLE_CAP_MM = 5.0;

  TitleBlock {
    making = List.copyOf(making);
  }

  private FieldGrid grid() {
    List<FieldGrid.Row> rows = new ArrayList<>(making);
    String words = supplement.isEmpty() ? title : title + " \u2013 " + supplement;
    rows.add(
        new FieldGrid.Row(
            TITLE_ROW_MM,
            List.of(
                new FieldGrid.Field("Legal owner", owner, 45, CAP_MM),
                new FieldGrid.Field("Title", words, 100, TITLE_CAP_MM),
                new FieldGrid.Field("Document type", kind, 35, CAP_MM))));
    rows.add(
        new FieldGrid.Row(
            ROW_MM,
            List.of(
                new FieldGrid.Field("Created by", createdBy, 43, CAP_MM),
                new FieldGrid.Field("Approved by", approvedBy, 43, CAP_MM),
                new FieldGrid.Field("Date of issue", date, 27, CAP_MM),
                new FieldGrid.Field("Projection", "", 40, CAP_MM),
                new FieldGrid.Field("Paper", paper, 27, CAP_MM))));
    rows.add(
        new FieldGrid.Row(
            ROW_MM,
            List.of(
                new FieldGrid.Field("Identification number", number, 65, CAP_MM),
                new FieldGrid.Field("Rev", revision, 13, CAP_MM),
                new FieldGrid.Field("Sheet", sheet, 18, CAP_MM),
                new FieldGrid.Field("Scale", scale, 20, CAP_MM),
                new FieldGrid.Field("Lengths", units, 64, CAP_MM))));
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
    ProjectionSign.draw(
        firstAngle,
        new Vec2(sign.maxX() - ProjectionSign.WIDTH_MM / 2 - 0.6, sign.centre().y()),
        out);
  }
}
