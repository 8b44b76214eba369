package dev.towerscribe.writer.dxf;

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
  static DxfReader read(byte[] dxf) throws DxfUnreadable {
    DxfReader reader = new DxfReader();
    List<DxfRecord> records = records(groups(dxf));
    int at = 0;
    int last = -1;
    while (at < records.size() - 1) {
      DxfRecord start = records.get(at);
      if (!start.type().equals("SECTION")) {
        throw new DxfUnreadable("a " + start.type() + " outside of any section");
      }
      String name = start.text(2);
      int place = ORDER.indexOf(name);
      if (place <= last) {
        throw new DxfUnreadable("the section " + name + " is unknown or out of order");
      }
      last = place;
      int end = at + 1;
      while (!records.get(end).type().equals("ENDSEC")) {
        if (records.get(end).type().equals("SECTION") || end == records.size() - 1) {
          throw new DxfUnreadable("the section " + name + " does not end");
        }
        end++;
      }
      checkBare(records.get(end));
      reader.section(name, start, List.copyOf(records.subList(at + 1, end)));
      at = end + 1;
    }
    DxfRecord eof = records.get(records.size() - 1);
    if (!eof.type().equals("EOF") || !eof.groups().isEmpty()) {
      throw new DxfUnreadable("the file breaks off");
    }
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

  private static List<DxfRecord.Group> groups(byte[] dxf) throws DxfUnreadable {
    for (byte b : dxf) {
      if (b < ' ' && b != '\r' && b != '\n' || b == 0x7F) {
        throw new DxfUnreadable("a byte that is no printable ASCII character");
      }
    }
    String text = new String(dxf, StandardCharsets.US_ASCII);
    if (!text.endsWith("\n")) {
      throw new DxfUnreadable("the last line breaks off");
    }
    String[] lines = text.substring(0, text.length() - 1).split("\n", -1);
    if (lines.length % 2 != 0) {
      throw new DxfUnreadable("a group code without a value");
    }
    List<DxfRecord.Group> groups = new ArrayList<>(lines.length / 2);
    for (int i = 0; i < lines.length; i += 2) {
      String code = line(lines[i]);
      if (!CODE.matcher(code).matches()) {
        throw new DxfUnreadable("\"" + code + "\" is no group code");
      }
      groups.add(new DxfRecord.Group(Integer.parseInt(code.strip()), line(lines[i + 1])));
    }
    return groups;
  }

  private static String line(String raw) throws DxfUnreadable {
    String line = raw.endsWith("\r") ? raw.substring(0, raw.length() - 1) : raw;
    if (line.indexOf('\r') >= 0) {
      throw new DxfUnreadable("a carriage return within a line");
    }
    return line;
  }

  private static List<DxfRecord> records(List<DxfRecord.Group> groups) throws DxfUnreadable {
    if (groups.isEmpty() || groups.get(0).code() != 0) {
      throw new DxfUnreadable("it does not begin with a section");
    }
    List<DxfRecord> records = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= groups.size(); i++) {
      if (i == groups.size() || groups.get(i).code() == 0) {
        records.add(new DxfRecord(groups.get(from).value(), groups.subList(from + 1, i)));
        from = i;
      }
    }
    return records;
  }

  private static void checkBare(DxfRecord end) throws DxfUnreadable {
    if (!end.groups().isEmpty()) {
      throw new DxfUnreadable("groups after an " + end.type());
    }
  }

  private void section(String name, DxfRecord start, List<DxfRecord> content) throws DxfUnreadable {
    sections.put(name, content);
    if (name.equals("HEADER")) {
      if (!content.isEmpty()) {
        throw new DxfUnreadable("a " + content.get(0).type() + " in the header");
      }
      header(start.groups().subList(1, start.groups().size()));
    } else if (start.groups().size() != 1) {
      throw new DxfUnreadable("groups before the first record of the section " + name);
    } else if (name.equals("TABLES")) {
      tables(content);
    }
  }

  private void header(List<DxfRecord.Group> groups) throws DxfUnreadable {
    int from = 0;
    for (int i = 1; i <= groups.size(); i++) {
      if (i == groups.size() || groups.get(i).code() == 9) {
        DxfRecord.Group first = groups.get(from);
        DxfRecord variable = new DxfRecord(first.value(), groups.subList(from + 1, i));
        if (first.code() != 9 || variable.groups().isEmpty()) {
          throw new DxfUnreadable("a header variable without a name or a value");
        }
        if (header.put(variable.type(), variable) != null) {
          throw new DxfUnreadable("the header variable " + variable.type() + " stands twice");
        }
        from = i;
      }
    }
  }

  private void tables(List<DxfRecord> content) throws DxfUnreadable {
    int at = 0;
    while (at < content.size()) {
      DxfRecord head = content.get(at);
      if (!head.type().equals("TABLE")) {
        throw new DxfUnreadable("a " + head.type() + " outside of any table");
      }
      String name = head.text(2);
      List<DxfRecord> entries = new ArrayList<>();
      at++;
      while (at < content.size() && content.get(at).type().equals(name)) {
        entries.add(content.get(at));
        at++;
      }
      if (at == content.size() || !content.get(at).type().equals("ENDTAB")) {
        throw new DxfUnreadable("the table " + name + " does not end or has a foreign entry");
      }
      checkBare(content.get(at));
      at++;
      if (head.whole(70) != entries.size()) {
        throw new DxfUnreadable("the table " + name + " miscounts its entries");
      }
      if (tables.put(name, new Table(head, List.copyOf(entries))) != null) {
        throw new DxfUnreadable("the table " + name + " stands twice");
      }
    }
  }
}
