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

    private StepValue at(int i) throws Unreadable {
      if (i >= values.size()) {
        throw not("there", i);
      }
      return values.get(i);
    }

    int ref(int i) throws Unreadable {
      if (at(i) instanceof Ref ref) {
        return ref.id();
      }
      throw not("a reference", i);
    }

    double real(int i) throws Unreadable {
      if (at(i) instanceof Real real) {
        return real.value();
      }
      throw not("a number with a point", i);
    }

    String text(int i) throws Unreadable {
      if (at(i) instanceof Text text) {
        return text.value();
      }
      throw not("a string", i);
    }

    boolean logical(int i) throws Unreadable {
      if (at(i) instanceof Word word && (word.value().equals("T") || word.value().equals("F"))) {
        return word.value().equals("T");
      }
      throw not("a logical value", i);
    }

    Items items(int i) throws Unreadable {
      if (at(i) instanceof Items items) {
        return items;
      }
      throw not("a list", i);
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
