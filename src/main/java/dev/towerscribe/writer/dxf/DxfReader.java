package dev.towerscribe.writer.dxf;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.Unreadable;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Takes a DXF apart into its records and holds it to the format's own order: pairs of lines,
 * sections that begin and end, tables within their section, the end at the end.
 */
final class DxfReader {
  private static final Pattern CODE = Pattern.compile(" {0,2}[0-9]{1,4}");

  /** The order in which sections have to come. */
  private static final List<String> ORDER =
      List.of("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS");

  /**
   * A table as read.
   *
   * @param head what stands before its entries
   * @param entries its entries
   */
  record Table(DxfRecord head, List<DxfRecord> entries) {}

  private final Map<String, DxfRecord> header = new LinkedHashMap<>();
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final Map<String, List<DxfRecord>> sections = new LinkedHashMap<>();

  private DxfReader() {}

  /** Reads a file. */
  static DxfReader read(byte[] dxf) throws Unreadable {
    DxfReader reader = new DxfReader();
    List<DxfRecord> records = records(groups(dxf));
    int at = 0;
    int last = -1;
    while (at < records.size() - 1) {
      DxfRecord start = records.get(at);
      must(start.type().equals("SECTION"), "a " + start.type() + " outside of any section");
      String name = start.text(2);
      int place = ORDER.indexOf(name);
      must(place > last, "the section " + name + " is unknown or out of order");
      last = place;
      int end = at + 1;
      while (!records.get(end).type().equals("ENDSEC")) {
        boolean within = !records.get(end).type().equals("SECTION") && end < records.size() - 1;
        must(within, "the section " + name + " does not end");
        end++;
      }
      checkBare(records.get(end));
      reader.section(name, start, List.copyOf(records.subList(at + 1, end)));
      at = end + 1;
    }
    DxfRecord eof = records.get(records.size() - 1);
    must(eof.type().equals("EOF") && eof.groups().isEmpty(), "the file breaks off");
    return reader;
  }

  /** Value of a header variable; empty if there is no such variable. */
  DxfRecord variable(String name) {
    return header.getOrDefault(name, new DxfRecord(name, List.of()));
  }

  Map<String, Table> tables() {
    return tables;
  }

  /** Records of a section other than header and tables; empty if there is no such section. */
  List<DxfRecord> section(String name) {
    return sections.getOrDefault(name, List.of());
  }

  boolean hasSection(String name) {
    return sections.containsKey(name);
  }

  private static List<DxfRecord.Group> groups(byte[] dxf) throws Unreadable {
    for (byte b : dxf) {
      if (b < ' ' && b != '\r' && b != '\n' || b == 0x7F) {
        throw new Unreadable("a byte that is no printable ASCII character");
      }
    }
    String text = new String(dxf, StandardCharsets.US_ASCII);
    must(text.endsWith("\n"), "the last line breaks off");
    String[] lines = text.substring(0, text.length() - 1).split("\n", -1);
    must(lines.length % 2 == 0, "a group code without a value");
    List<DxfRecord.Group> groups = new ArrayList<>(lines.length / 2);
    for (int i = 0; i < lines.length; i += 2) {
      String code = line(lines[i]);
      if (!CODE.matcher(code).matches()) {
        throw new Unreadable("\"" + code + "\" is no group code");
      }
      groups.add(new DxfRecord.Group(Integer.parseInt(code.strip()), line(lines[i + 1])));
    }
    return groups;
  }

  private static String line(String raw) throws Unreadable {
    String line = raw.endsWith("\r") ? raw.substring(0, raw.length() - 1) : raw;
    must(line.indexOf('\r') < 0, "a carriage return within a line");
    return line;
  }

  private static List<DxfRecord> records(List<DxfRecord.Group> groups) throws Unreadable {
    must(!groups.isEmpty() && groups.get(0).code() == 0, "it does not begin with a section");
    return split(groups, 0);
  }

  /** Records that begin with a group of a code, as the first group does. */
  private static List<DxfRecord> split(List<DxfRecord.Group> groups, int code) {
    List<DxfRecord> records = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= groups.size(); i++) {
      if (i == groups.size() || groups.get(i).code() == code) {
        records.add(new DxfRecord(groups.get(from).value(), groups.subList(from + 1, i)));
        from = i;
      }
    }
    return records;
  }

  private static void checkBare(DxfRecord end) throws Unreadable {
    must(end.groups().isEmpty(), "groups after an " + end.type());
  }

  private void section(String name, DxfRecord start, List<DxfRecord> content) throws Unreadable {
    sections.put(name, content);
    if (name.equals("HEADER")) {
      must(content.isEmpty(), "a record in the header");
      header(start.groups().subList(1, start.groups().size()));
      return;
    }
    must(start.groups().size() == 1, "groups before the first record of the section " + name);
    if (name.equals("TABLES")) {
      tables(content);
    }
  }

  private void header(List<DxfRecord.Group> groups) throws Unreadable {
    boolean named = groups.isEmpty() || groups.get(0).code() == 9;
    for (DxfRecord variable : split(groups, 9)) {
      boolean whole = named && !variable.groups().isEmpty();
      must(whole, "a header variable without a name or a value");
      boolean once = header.put(variable.type(), variable) == null;
      must(once, "the header variable " + variable.type() + " stands twice");
    }
  }

  private void tables(List<DxfRecord> content) throws Unreadable {
    int at = 0;
    while (at < content.size()) {
      DxfRecord head = content.get(at);
      must(head.type().equals("TABLE"), "a " + head.type() + " outside of any table");
      String name = head.text(2);
      List<DxfRecord> entries = new ArrayList<>();
      at++;
      while (at < content.size() && content.get(at).type().equals(name)) {
        entries.add(content.get(at));
        at++;
      }
      boolean ends = at < content.size() && content.get(at).type().equals("ENDTAB");
      must(ends, "the table " + name + " does not end or has a foreign entry");
      checkBare(content.get(at));
      at++;
      must(head.whole(70) == entries.size(), "the table " + name + " miscounts its entries");
      boolean first = tables.put(name, new Table(head, List.copyOf(entries))) == null;
      must(first, "the table " + name + " stands twice");
    }
  }
}
