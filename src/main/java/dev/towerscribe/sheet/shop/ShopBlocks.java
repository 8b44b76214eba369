package dev.towerscribe.sheet.shop;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.sheet.text.Flow;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.List;
import java.util.Optional;

/** Blocks of drawings as entries of a flow. */
final class ShopBlocks {
  private static final double NOTE_GAP_MM = 1.0;

  private ShopBlocks() {}

  static Flow.Entry entry(Fragment block, double gapMm) {
    return new Flow.Entry(block, gapMm, false, Optional.empty());
  }

  /** Lines that stay together. */
  private static Flow.Entry stack(List<Fragment> lines) {
    return entry(new Fragments.Stack(lines, 0), NOTE_GAP_MM);
  }

  /** A table; its headings come again where it goes on. */
  static void table(List<Flow.Entry> all, Table table, double gapMm) {
    all.addAll(Flow.Entry.rows(table.head(), table.body(), gapMm));
  }

  /** Notes, each a point of a list. */
  static void notes(List<Flow.Entry> all, List<String> notes, double widthMm) {
    notes.forEach(note -> all.add(stack(Fragments.dotted(note, TextStyle.SMALL, widthMm))));
  }

  /** Accepted stops, told on every drawing. */
  static void accepted(List<Flow.Entry> all, JobInfo job, double widthMm) {
    List<String> ids = job.acceptedStops().stream().map(Finding::id).toList();
    if (ids.isEmpty()) {
      return;
    }
    String head =
        ids.size() == 1
            ? "DRAWN WITH AN ACCEPTED STOP"
            : "DRAWN WITH %s ACCEPTED STOPS".formatted(ids.size());
    all.add(new Flow.Entry(band(head, widthMm), 0, true, Optional.empty()));
    String words = String.join(", ", ids) + ".";
    all.add(stack(Fragments.lines(words, TextStyle.SMALL, widthMm, 2)));
  }

  /** Words on a pale band. */
  static Fragment band(String words, double widthMm) {
    double room = widthMm - 2 * Fragments.Band.INDENT;
    return new Fragments.Band(
        TextStyle.wrap(words, TextStyle.HEADING, room), TextStyle.HEADING, widthMm);
  }
}
