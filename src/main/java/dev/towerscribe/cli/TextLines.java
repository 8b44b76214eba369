package dev.towerscribe.cli;

import java.util.List;

/** Lines of a report: words wrapped, tables with their columns lined up. */
final class TextLines {
  private static final int WRAP_COLUMN = 92;

  private final StringBuilder text = new StringBuilder();

  /** Adds a table: words to the left, numbers to the right. */
  void table(List<List<String>> rows) {
    line("");
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder cells = new StringBuilder();
      for (int i = 0; i < columns; i++) {
        String pad = " ".repeat(widths[i] - row.get(i).length());
        boolean number = rows.size() > 1 && isNumber(rows.get(1).get(i));
        cells.append("  ").append(number ? pad + row.get(i) : row.get(i) + pad);
      }
      line(cells.toString().stripTrailing());
    }
  }

  private static boolean isNumber(String cell) {
    return cell.matches("-?[0-9.]+");
  }

  /** Adds words, broken at spaces. */
  void wrapped(String indent, String words) {
    StringBuilder row = new StringBuilder(indent);
    for (String word : words.split(" ")) {
      if (row.length() > indent.length() && row.length() + word.length() + 1 > WRAP_COLUMN) {
        line(row.toString());
        row = new StringBuilder(indent);
      }
      row.append(row.length() > indent.length() ? " " : "").append(word);
    }
    line(row.toString());
  }

  /** Adds a line. */
  void line(String words) {
    text.append(words).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
