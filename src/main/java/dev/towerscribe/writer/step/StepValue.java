package dev.towerscribe.writer.step;

import dev.towerscribe.drawing.Unreadable;
import java.util.ArrayList;
import java.util.List;

/** A parameter as it stands in a file. */
sealed interface StepValue {
  /** A reference to a numbered entity. */
  record Ref(int id) implements StepValue {}

  /** A whole number. */
  record Whole(int value) implements StepValue {}

  /** A number with a point. */
  record Real(double value) implements StepValue {}

  /** A string, decoded. */
  record Text(String value) implements StepValue {}

  /** A word between points: a logical value or an enumeration. */
  record Word(String value) implements StepValue {}

  /** A value not given, or one that follows from others. */
  record Open() implements StepValue {}

  /** A list, or one entity's or one typed value's parameters under its keyword. */
  record Items(String keyword, List<StepValue> values) implements StepValue {
    public Items {
      values = List.copyOf(values);
    }

    private Unreadable not(String what, int i) {
      return new Unreadable(keyword + ": parameter " + (i + 1) + " is not " + what);
    }

    private <T extends StepValue> T at(int i, Class<T> kind, String what) throws Unreadable {
      if (i < values.size() && kind.isInstance(values.get(i))) {
        return kind.cast(values.get(i));
      }
      throw not(what, i);
    }

    int ref(int i) throws Unreadable {
      return at(i, Ref.class, "a reference").id();
    }

    double real(int i) throws Unreadable {
      return at(i, Real.class, "a number with a point").value();
    }

    String text(int i) throws Unreadable {
      return at(i, Text.class, "a string").value();
    }

    boolean logical(int i) throws Unreadable {
      String word = at(i, Word.class, "a logical value").value();
      if (!word.equals("T") && !word.equals("F")) {
        throw not("a logical value", i);
      }
      return word.equals("T");
    }

    Items items(int i) throws Unreadable {
      return at(i, Items.class, "a list");
    }

    List<Integer> refs(int i) throws Unreadable {
      Items items = items(i);
      List<Integer> refs = new ArrayList<>();
      for (int k = 0; k < items.values().size(); k++) {
        refs.add(items.ref(k));
      }
      return refs;
    }
  }
}
