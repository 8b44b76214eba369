package dev.towerscribe.writer.dxf;

import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * All that stands round the entities: header, tables, blocks, objects. Release 2000 wants every
 * record to have a handle and an owner, and its drawing spaces to be blocks with a layout each.
 *
 * <p>Handles are given in a fixed order, so that the same drawing has the same ones.
 */
final class DxfFrame {
  static final String TEXT_STYLE = "STANDARD";

  private static final String LAYER_ZERO = "0";

  /** Width of the grid of letters in the font that release 12 names, against the sheet font. */
  private static final double STROKE_FONT_NARROWED = 0.8;

  private static final String NO_OWNER = "0";

  /** Colour number: black on white, white on black. */
  private static final int AGAINST_GROUND = 7;

  // Handles of what is spoken of before it is written.
  private static final String ROOT = "1";
  private static final String GROUPS = "2";
  private static final String LAYOUTS = "3";
  private static final String LINE_STYLES = "4";
  private static final String PLOT_STYLES = "5";
  private static final String PLAIN_PLOT_STYLE = "6";
  private static final String PLAIN_LINE_STYLE = "7";
  private static final String PAPER_SPACE = "9";
  private static final String MODEL_LAYOUT = "A";
  private static final String PAPER_LAYOUT = "B";
  private static final String LETTERING = "C";

  /** Handle of the block record that owns the entities. */
  static final String MODEL_SPACE = "8";

  private final Page page;
  private final Vec2 datum;
  private final DxfVersion version;
  private final List<Layer> layers;

  /** The last handle given; those above are the first twelve. */
  private int handles = 12;

  DxfFrame(Page page, DxfVersion version, Vec2 datum, List<Layer> layers) {
    this.page = page;
    this.datum = datum;
    this.version = version;
    this.layers = List.copyOf(layers);
  }

  /** The next handle that is free, capital hexadecimal digits. */
  String nextHandle() {
    handles++;
    return hex(handles);
  }

  private static String hex(int handle) {
    return Integer.toHexString(handle).toUpperCase(Locale.ROOT);
  }

  /** How wide letters are set, 1 being as the font has them. */
  double widthFactor() {
    return is2000() ? 1 : STROKE_FONT_NARROWED;
  }

  private boolean is2000() {
    return version == DxfVersion.R2000;
  }

  /** The header section; to be asked for once everything else has its handle. */
  void header(DxfGroups out) {
    Vec2 corner = new Vec2(page.widthMm(), page.heightMm());
    out.beginSection("HEADER");
    out.text(9, "$ACADVER").text(1, version.acadVersion());
    out.text(9, "$DWGCODEPAGE").text(3, "ANSI_1252");
    out.text(9, "$INSBASE").point(10, Vec2.ZERO);
    out.from(datum);
    out.text(9, "$EXTMIN").point(10, Vec2.ZERO);
    out.text(9, "$EXTMAX").point(10, corner);
    out.text(9, "$LIMMIN").point2(10, Vec2.ZERO);
    out.text(9, "$LIMMAX").point2(10, corner);
    out.from(Vec2.ZERO);
    out.text(9, "$LTSCALE").length(40, 1);
    out.text(9, "$TEXTSTYLE").text(7, TEXT_STYLE);
    out.text(9, "$CLAYER").text(8, LAYER_ZERO);
    // Decimal lengths and degrees, counter-clockwise from x.
    out.text(9, "$LUNITS").whole(70, 2);
    out.text(9, "$AUNITS").whole(70, 0);
    out.text(9, "$ANGBASE").length(50, 0);
    out.text(9, "$ANGDIR").whole(70, 0);
    if (is2000()) {
      out.text(9, "$HANDSEED").text(5, hex(handles + 1));
      // Lines are shown as wide as they are meant; millimetres, twice.
      out.text(9, "$LWDISPLAY").whole(290, 1);
      out.text(9, "$INSUNITS").whole(70, 4);
      out.text(9, "$MEASUREMENT").whole(70, 1);
    } else {
      out.text(9, "$HANDLING").whole(70, 0);
    }
    out.endSection();
  }

  /** The sections between the header and the entities. */
  void tablesAndBlocks(DxfGroups out) {
    if (is2000()) {
      out.beginSection("CLASSES");
      classOf(out, "ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
      classOf(out, "ACDBPLACEHOLDER", "AcDbPlaceHolder");
      classOf(out, "LAYOUT", "AcDbLayout");
      out.endSection();
    }
    out.beginSection("TABLES");
    viewports(out);
    lineTypes(out);
    layers(out);
    textStyles(out);
    beginTable(out, "VIEW", 0);
    endTable(out);
    beginTable(out, "UCS", 0);
    endTable(out);
    String applications = beginTable(out, "APPID", 1);
    beginEntry(out, "APPID", applications, "AcDbRegAppTableRecord");
    out.text(2, "ACAD").whole(70, 0);
    endTable(out);
    if (is2000()) {
      dimensionStyles(out);
      String blocks = beginTable(out, "BLOCK_RECORD", 2);
      blockRecord(out, blocks, MODEL_SPACE, "*Model_Space", MODEL_LAYOUT);
      blockRecord(out, blocks, PAPER_SPACE, "*Paper_Space", PAPER_LAYOUT);
      endTable(out);
    }
    out.endSection();
    out.beginSection("BLOCKS");
    if (is2000()) {
      block(out, "*Model_Space", MODEL_SPACE, false);
      block(out, "*Paper_Space", PAPER_SPACE, true);
    }
    out.endSection();
  }

  private static void classOf(DxfGroups out, String record, String name) {
    out.text(0, "CLASS").text(1, record).text(2, name).text(3, "ObjectDBX Classes");
    out.whole(90, 0).whole(280, 0).whole(281, 0);
  }

  /** Begins a table and returns its handle. */
  private String beginTable(DxfGroups out, String name, int entries) {
    String handle = nextHandle();
    out.text(0, "TABLE").text(2, name).since2000(5, handle).since2000(330, NO_OWNER);
    out.since2000(100, "AcDbSymbolTable").whole(70, entries);
    return handle;
  }

  private static void endTable(DxfGroups out) {
    out.text(0, "ENDTAB");
  }

  private void beginEntry(DxfGroups out, String type, String table, String subclass) {
    beginEntry(out, type, table, subclass, 5, nextHandle());
  }

  private void beginEntry(
      DxfGroups out, String type, String table, String subclass, int handleCode, String handle) {
    out.text(0, type).since2000(handleCode, handle).since2000(330, table);
    out.since2000(100, "AcDbSymbolTableRecord").since2000(100, subclass);
  }

  /** One view of the whole sheet, so that a program opens the file with all of it in sight. */
  private void viewports(DxfGroups out) {
    double width = page.widthMm();
    double height = page.heightMm();
    String table = beginTable(out, "VPORT", 1);
    beginEntry(out, "VPORT", table, "AcDbViewportTableRecord");
    out.text(2, is2000() ? "*Active" : "*ACTIVE").whole(70, 0);
    out.point2(10, Vec2.ZERO).point2(11, new Vec2(1, 1));
    out.point2(12, page.centre().minus(datum)).point2(13, Vec2.ZERO);
    out.point2(14, new Vec2(10, 10)).point2(15, new Vec2(10, 10));
    // Looking straight down.
    out.length(16, 0).length(26, 0).length(36, 1);
    out.point(17, Vec2.ZERO);
    out.length(40, height).length(41, width / height).length(42, 50);
    out.length(43, 0).length(44, 0).length(50, 0).length(51, 0);
    out.whole(71, 0).whole(72, 1000).whole(73, 1).whole(74, 3);
    out.whole(75, 0).whole(76, 0).whole(77, 0).whole(78, 0);
    endTable(out);
  }

  private void lineTypes(DxfGroups out) {
    DxfLineType[] types = DxfLineType.values();
    String table = beginTable(out, "LTYPE", types.length + (is2000() ? 2 : 0));
    if (is2000()) {
      lineType(out, table, "ByBlock", "", List.of());
      lineType(out, table, "ByLayer", "", List.of());
    }
    for (DxfLineType type : types) {
      lineType(out, table, type.name(), type.description(), type.pattern().dashesMm());
    }
    endTable(out);
  }

  private void lineType(
      DxfGroups out, String table, String name, String description, List<Double> dashesMm) {
    beginEntry(out, "LTYPE", table, "AcDbLinetypeTableRecord");
    out.text(2, name).whole(70, 0).text(3, description).whole(72, 'A');
    out.whole(73, dashesMm.size());
    out.length(40, dashesMm.stream().mapToDouble(Double::doubleValue).sum());
    for (int i = 0; i < dashesMm.size(); i++) {
      // A gap is a negative length.
      out.length(49, i % 2 == 0 ? dashesMm.get(i) : -dashesMm.get(i)).since2000(74, "0");
    }
  }

  private void layers(DxfGroups out) {
    String table = beginTable(out, "LAYER", layers.size() + 1);
    layer(out, table, LAYER_ZERO, AGAINST_GROUND);
    for (Layer layer : layers) {
      layer(out, table, DxfLayers.name(layer), DxfLayers.colour(layer));
    }
    endTable(out);
  }

  private void layer(DxfGroups out, String table, String name, int colour) {
    beginEntry(out, "LAYER", table, "AcDbLayerTableRecord");
    out.text(2, name).whole(70, 0).whole(62, colour).text(6, DxfLineType.CONTINUOUS.name());
    // The usual width, where an entity does not say its own.
    out.since2000(370, "-3").since2000(390, PLAIN_PLOT_STYLE);
  }

  private void textStyles(DxfGroups out) {
    String table = beginTable(out, "STYLE", 1);
    beginEntry(out, "STYLE", table, "AcDbTextStyleTableRecord", 5, LETTERING);
    out.text(2, TEXT_STYLE).whole(70, 0);
    out.length(40, 0).length(41, widthFactor()).length(50, 0).whole(71, 0).length(42, 3.5);
    // Release 12 knows only fonts of strokes; "txt" is the one that comes with every program. The
    // other one has the widths of the sheet font.
    out.text(3, is2000() ? "arial.ttf" : "txt").text(4, "");
    endTable(out);
  }

  private void dimensionStyles(DxfGroups out) {
    String table = beginTable(out, "DIMSTYLE", 1);
    out.text(100, "AcDbDimStyleTable").whole(71, 0);
    beginEntry(out, "DIMSTYLE", table, "AcDbDimStyleTableRecord", 105, nextHandle());
    out.text(2, "STANDARD").whole(70, 0).text(340, LETTERING);
    endTable(out);
  }

  private void blockRecord(DxfGroups out, String table, String handle, String name, String layout) {
    beginEntry(out, "BLOCK_RECORD", table, "AcDbBlockTableRecord", 5, handle);
    out.text(2, name).text(340, layout);
  }

  private void block(DxfGroups out, String name, String owner, boolean onPaper) {
    out.text(0, "BLOCK").text(5, nextHandle()).text(330, owner).text(100, "AcDbEntity");
    paper(out, onPaper);
    out.text(8, LAYER_ZERO).text(100, "AcDbBlockBegin").text(2, name).whole(70, 0);
    out.point(10, Vec2.ZERO).text(3, name).text(1, "");
    out.text(0, "ENDBLK").text(5, nextHandle()).text(330, owner).text(100, "AcDbEntity");
    paper(out, onPaper);
    out.text(8, LAYER_ZERO).text(100, "AcDbBlockEnd");
  }

  private static void paper(DxfGroups out, boolean onPaper) {
    if (onPaper) {
      out.whole(67, 1);
    }
  }

  /** The objects section, which only release 2000 has. */
  void objects(DxfGroups out) {
    if (!is2000()) {
      return;
    }
    out.beginSection("OBJECTS");
    beginDictionary(out, "DICTIONARY", ROOT, NO_OWNER);
    entry(out, "ACAD_GROUP", GROUPS);
    entry(out, "ACAD_LAYOUT", LAYOUTS);
    entry(out, "ACAD_MLINESTYLE", LINE_STYLES);
    entry(out, "ACAD_PLOTSTYLENAME", PLOT_STYLES);
    beginDictionary(out, "DICTIONARY", GROUPS, ROOT);
    beginDictionary(out, "DICTIONARY", LAYOUTS, ROOT);
    entry(out, "Layout1", PAPER_LAYOUT);
    entry(out, "Model", MODEL_LAYOUT);
    beginDictionary(out, "DICTIONARY", LINE_STYLES, ROOT);
    entry(out, "STANDARD", PLAIN_LINE_STYLE);
    beginDictionary(out, "ACDBDICTIONARYWDFLT", PLOT_STYLES, ROOT);
    entry(out, "Normal", PLAIN_PLOT_STYLE);
    out.text(100, "AcDbDictionaryWithDefault").text(340, PLAIN_PLOT_STYLE);
    out.text(0, "ACDBPLACEHOLDER").text(5, PLAIN_PLOT_STYLE).text(330, PLOT_STYLES);
    doubleLineStyle(out);
    layout(out, MODEL_LAYOUT, "Model", MODEL_SPACE, true);
    layout(out, PAPER_LAYOUT, "Layout1", PAPER_SPACE, false);
    out.endSection();
  }

  private static void beginDictionary(DxfGroups out, String type, String handle, String owner) {
    out.text(0, type).text(5, handle).text(330, owner).text(100, "AcDbDictionary").whole(281, 1);
  }

  private static void entry(DxfGroups out, String name, String handle) {
    out.text(3, name).text(350, handle);
  }

  /** A style of double lines; not used, but programs look for one of this name. */
  private void doubleLineStyle(DxfGroups out) {
    out.text(0, "MLINESTYLE").text(5, PLAIN_LINE_STYLE).text(330, LINE_STYLES);
    out.text(100, "AcDbMlineStyle").text(2, "STANDARD").whole(70, 0).text(3, "");
    out.whole(62, 256).length(51, 90).length(52, 90).whole(71, 2);
    out.length(49, 0.5).whole(62, 256).text(6, "BYLAYER");
    out.length(49, -0.5).whole(62, 256).text(6, "BYLAYER");
  }

  private static void zeros(DxfGroups out, int... codes) {
    IntStream.of(codes).forEach(code -> out.length(code, 0));
  }

  private void layout(DxfGroups out, String handle, String name, String space, boolean model) {
    Vec2 corner = new Vec2(page.widthMm(), page.heightMm());
    out.text(0, "LAYOUT").text(5, handle).text(330, LAYOUTS);
    out.text(100, "AcDbPlotSettings").text(1, "").text(2, "none_device").text(4, "").text(6, "");
    zeros(out, 40, 41, 42, 43);
    out.length(44, page.widthMm()).length(45, page.heightMm());
    zeros(out, 46, 47, 48, 49, 140, 141);
    // One to one; for the model's own layout a flag says so. Millimetres, not turned, all of it.
    out.length(142, 1).length(143, 1).whole(70, model ? 1024 : 0);
    out.whole(72, 1).whole(73, 0).whole(74, 1).text(7, "").whole(75, 16).length(147, 1);
    out.length(148, 0).length(149, 0);
    out.text(100, "AcDbLayout").text(1, name).whole(70, 1).whole(71, model ? 0 : 1);
    out.from(datum).point2(10, Vec2.ZERO).point2(11, corner).from(Vec2.ZERO);
    out.point(12, Vec2.ZERO);
    out.from(datum).point(14, Vec2.ZERO).point(15, corner).from(Vec2.ZERO).length(146, 0);
    out.point(13, Vec2.ZERO).point(16, new Vec2(1, 0)).point(17, new Vec2(0, 1)).whole(76, 0);
    out.text(330, space);
  }
}
