package dev.towerscribe.report;

import dev.towerscribe.finding.Finding;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One part of a report. A new kind breaks every renderer when compiled, through {@link Visitor}. A
 * block says what there is to say and nothing of how it looks.
 */
public sealed interface Block {
  /**
   * Calls the method for its kind.
   *
   * @param visitor what to do for each kind
   */
  void accept(Visitor visitor);

  /** One method for each kind of block. */
  interface Visitor {
    /**
     * Names and values.
     *
     * @param facts the block
     */
    void facts(Facts facts);

    /**
     * The answer.
     *
     * @param verdict the block
     */
    void verdict(Verdict verdict);

    /**
     * A heading.
     *
     * @param section the block
     */
    void section(Section section);

    /**
     * Sentences.
     *
     * @param paragraph the block
     */
    void paragraph(Paragraph paragraph);

    /**
     * A list.
     *
     * @param points the block
     */
    void points(Points points);

    /**
     * A table.
     *
     * @param table the block
     */
    void table(Table table);

    /**
     * Findings in full.
     *
     * @param findings the block
     */
    void findings(FoundList findings);

    /**
     * Lines for a file.
     *
     * @param lines the block
     */
    void fileLines(FileLines lines);
  }

  /**
   * A name and its value.
   *
   * @param name one or two words
   * @param value what it is; more lines than one where there is more to say
   */
  record Fact(String name, List<String> value) {
    /** Copies the list. */
    public Fact {
      value = List.copyOf(value);
    }
  }

  /**
   * Names and values: which job, which day, which program.
   *
   * @param facts in reading order
   */
  record Facts(List<Fact> facts) implements Block {
    /** Copies the list. */
    public Facts {
      facts = List.copyOf(facts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.facts(this);
    }
  }

  /**
   * The answer, to be seen before anything else.
   *
   * @param words a few, in capitals
   * @param details sentences that go with it
   */
  record Verdict(String words, List<String> details) implements Block {
    /** Copies the list. */
    public Verdict {
      details = List.copyOf(details);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.verdict(this);
    }
  }

  /**
   * A heading.
   *
   * @param title its words
   */
  record Section(String title) implements Block {
    @Override
    public void accept(Visitor visitor) {
      visitor.section(this);
    }
  }

  /**
   * Sentences.
   *
   * @param words one or more sentences
   * @param fine whether they only explain what stands above
   */
  record Paragraph(String words, boolean fine) implements Block {
    @Override
    public void accept(Visitor visitor) {
      visitor.paragraph(this);
    }
  }

  /**
   * A list of things worth knowing, in no order of steps.
   *
   * @param points each a sentence or more
   */
  record Points(List<String> points) implements Block {
    /** Copies the list. */
    public Points {
      points = List.copyOf(points);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.points(this);
    }
  }

  /**
   * A row of a table.
   *
   * @param cells as many as there are columns; a heading among the rows has only one
   */
  record Row(List<Cell> cells) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }

    /**
     * Whether any figure in it says how near it is.
     *
     * @return true if a renderer has that to show
     */
    public boolean hasLikely() {
      return cells.stream().anyMatch(c -> c instanceof Cell.Figure f && f.likely().isPresent());
    }
  }

  /**
   * A table.
   *
   * @param heads the columns' headings
   * @param rows its rows; one with a single cell is a heading among the rows
   */
  record Table(List<String> heads, List<Row> rows) implements Block {
    /** Copies the lists and checks the counts. */
    public Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
      for (Row row : rows) {
        if (row.cells().size() != heads.size() && row.cells().size() != 1) {
          throw new IllegalArgumentException("a row needs a cell for each column");
        }
      }
    }

    /**
     * An empty table to add rows to.
     *
     * @param heads the columns' headings
     * @return one without rows
     */
    public static Table of(String... heads) {
      return new Table(List.of(heads), List.of());
    }

    /**
     * The same with a row for each of some things.
     *
     * @param things in the order of their rows
     * @param cells a thing's cells
     * @param <T> the kind of thing
     * @return the longer table
     */
    public <T> Table each(Collection<T> things, Function<T, List<Cell>> cells) {
      return new Table(
          heads,
          Stream.concat(rows.stream(), things.stream().map(t -> new Row(cells.apply(t)))).toList());
    }

    /**
     * The same with one row more.
     *
     * @param cells its cells
     * @return the longer table
     */
    public Table plus(Cell... cells) {
      return plus(List.of(cells));
    }

    /**
     * The same with one row more.
     *
     * @param cells its cells
     * @return the longer table
     */
    public Table plus(List<Cell> cells) {
      return each(List.of(cells), row -> row);
    }

    /**
     * The table unless it is empty.
     *
     * @return empty without rows
     */
    public Optional<Table> ifAny() {
      return rows.isEmpty() ? Optional.empty() : Optional.of(this);
    }

    /**
     * The same without the columns after some, for where there is no room for all.
     *
     * @param count how many to keep
     * @return the narrower table
     */
    public Table firstColumns(int count) {
      return new Table(
          heads.subList(0, count),
          rows.stream()
              .map(r -> new Row(r.cells().subList(0, Math.min(count, r.cells().size()))))
              .toList());
    }

    /**
     * Whether a column holds figures.
     *
     * @param column which, from 0
     * @return false for one of words only
     */
    public boolean isFigures(int column) {
      return rows.stream()
          .anyMatch(r -> r.cells().size() > column && r.cells().get(column) instanceof Cell.Figure);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.table(this);
    }
  }

  /**
   * Findings of one severity, each in full: what it is about, figure, limit, source and sentence.
   *
   * @param heading how many there are and what they ask for
   * @param findings in the order they are to be read
   * @param accepted ids of accepted stop findings
   */
  record FoundList(String heading, List<Finding> findings, Set<String> accepted) implements Block {
    /** Copies both. */
    public FoundList {
      findings = List.copyOf(findings);
      accepted = Set.copyOf(accepted);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.findings(this);
    }
  }

  /**
   * Lines to be put into a file as they are.
   *
   * @param lines without their ends
   */
  record FileLines(List<String> lines) implements Block {
    /** Copies the list. */
    public FileLines {
      lines = List.copyOf(lines);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.fileLines(this);
    }
  }
}
