package dev.towerscribe.record;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;

/**
 * A record as read from its file. Whatever the file holds, nothing is dropped: entries that were
 * edited or cut short are among the others, and what belongs to none is said.
 *
 * @param entries in the file's order
 * @param remarks what is not as it was written, in words, in the file's order
 * @param endsOpen whether the last entry was cut short and nothing marks it off yet
 * @param endsInLine whether the file does not end with a line's end
 * @param empty whether there is nothing in it
 */
public record RecordText(
    List<Entry> entries,
    List<String> remarks,
    boolean endsOpen,
    boolean endsInLine,
    boolean empty) {
  /** Copies the lists. */
  public RecordText {
    entries = List.copyOf(entries);
    remarks = List.copyOf(remarks);
  }

  /**
   * Reads a record.
   *
   * @param text the file, decoded
   * @return what is in it
   */
  public static RecordText read(String text) {
    return new Reading(text).result();
  }

  /**
   * The number that the next entry takes.
   *
   * @return one more than the greatest so far, whether its entry is whole or not
   */
  public int nextNumber() {
    return 1 + entries.stream().flatMap(e -> e.number().stream()).mapToInt(n -> n).max().orElse(0);
  }

  /**
   * What is to be appended to the file.
   *
   * @param entry the entry's text
   * @return that, on a fresh line, with a mark before it if the entry above was cut short
   */
  public String toAppend(String entry) {
    return (endsInLine ? "\n" : "")
        + (endsOpen ? RecordLines.MARK + "\n" : "")
        + (empty ? "" : "\n")
        + entry;
  }

  /**
   * The readings of an entry in one line.
   *
   * @param entry an entry
   * @return for instance "left before caster 2.6 deg, left before camber -0.5 deg", or "none"
   */
  public static String readings(Entry entry) {
    return EntryReader.readings(entry);
  }

  private static final class Reading {
    private final List<Entry> entries = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final String text;
    private List<String> open = new ArrayList<>();
    private int openAt;
    private int strayFrom;

    Reading(String text) {
      this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    RecordText result() {
      boolean endsInLine = !text.isEmpty() && !text.endsWith("\n");
      String[] lines = text.split("\n", -1);
      int count = endsInLine ? lines.length : lines.length - 1;
      for (int i = 0; i < count; i++) {
        String line =
            lines[i].endsWith("\r") ? lines[i].substring(0, lines[i].length() - 1) : lines[i];
        line(line, i + 1);
      }
      stray(count + 1);
      boolean endsOpen = !open.isEmpty();
      cutShort();
      return new RecordText(entries, remarks, endsOpen, endsInLine, text.isEmpty());
    }

    private void line(String line, int at) {
      if (isTitle(line)) {
        stray(at);
        cutShort();
        open = new ArrayList<>(List.of(line));
        openAt = at;
      } else if (line.equals(RecordLines.MARK)) {
        stray(at);
        cutShort();
      } else if (strike(line).isPresent()) {
        stray(at);
        cutShort();
        strike(line, at);
      } else if (open.isEmpty()) {
        if (line.isBlank()) {
          stray(at);
        } else if (strayFrom == 0) {
          strayFrom = at;
        }
      } else {
        open.add(line);
        if (RecordLines.CLOSING.matcher(line).matches()) {
          Entry entry = EntryReader.read(openAt, open, true);
          entries.add(entry);
          if (entry.state() == Entry.State.EDITED) {
            remarks.add(
                ("visit %s, lines %s to %s, was edited after it was written: its checksum does not"
                        + " match")
                    .formatted(number(entry), openAt, at));
          }
          remarks.addAll(entry.troubles());
          open = new ArrayList<>();
        }
      }
    }

    /** The striking that a line is, if it is one. */
    private static Optional<Strike> strike(String line) {
      Matcher m = RecordLines.STRUCK.matcher(line);
      try {
        return m.matches()
            ? Optional.of(new Strike(LocalDate.parse(m.group(2)), m.group(3)))
            : Optional.empty();
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }

    private void strike(String line, int at) {
      Strike strike = strike(line).orElseThrow();
      Matcher m = RecordLines.STRUCK.matcher(line);
      int number = m.matches() ? Integer.parseInt(m.group(1)) : 0;
      int last = entries.size() - 1;
      while (last >= 0 && !entries.get(last).number().equals(Optional.of(number))) {
        last--;
      }
      if (!line.equals(RecordLines.struck(number, strike.words()))) {
        remarks.add(
            ("line %s, which strikes visit %s, was edited after it was written: its checksum does"
                    + " not match")
                .formatted(at, number));
      }
      if (last < 0) {
        remarks.add("line %s strikes visit %s, which is not above it".formatted(at, number));
      } else {
        entries.set(last, entries.get(last).after(strike));
      }
    }

    /** A title, whole or cut off anywhere. */
    private static boolean isTitle(String line) {
      return line.startsWith(RecordLines.TITLE_HEAD)
          || !line.isEmpty() && RecordLines.TITLE_HEAD.startsWith(line);
    }

    private static String number(Entry entry) {
      return entry.number().map(n -> Integer.toString(n)).orElse("without a number");
    }

    private void cutShort() {
      if (open.isEmpty()) {
        return;
      }
      // Empty lines at the end are those between entries.
      while (open.size() > 1 && open.get(open.size() - 1).isBlank()) {
        open.remove(open.size() - 1);
      }
      Entry entry = EntryReader.read(openAt, open, false);
      entries.add(entry);
      remarks.add(
          "an entry was cut short at line %s; its readings are: %s"
              .formatted(entry.lastLine(), EntryReader.readings(entry)));
      remarks.addAll(entry.troubles());
      open = new ArrayList<>();
    }

    private void stray(int next) {
      if (strayFrom > 0) {
        remarks.add(
            strayFrom == next - 1
                ? "line %s belongs to no entry".formatted(strayFrom)
                : "lines %s to %s belong to no entry".formatted(strayFrom, next - 1));
        strayFrom = 0;
      }
    }
  }
}
