package dev.towerscribe.writer.dxf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A file as pairs of lines, taken apart in the plainest way: for tests, by no code of the proof.
 */
record Pairs(List<String[]> pairs) {
  static Pairs of(byte[] dxf) {
    String[] lines = new String(dxf, StandardCharsets.US_ASCII).split("\r\n");
    List<String[]> pairs = new ArrayList<>();
    for (int i = 0; i < lines.length; i += 2) {
      pairs.add(new String[] {lines[i].strip(), lines[i + 1]});
    }
    return new Pairs(pairs);
  }

  /** Each entity as "TYPE 8=LAYER 10=...", without what release 2000 adds. */
  List<Pairs> entities() {
    List<Pairs> entities = new ArrayList<>();
    boolean inside = false;
    List<String[]> current = null;
    for (String[] pair : pairs) {
      if (pair[0].equals("2") && pair[1].equals("ENTITIES")) {
        inside = true;
      } else if (inside && pair[0].equals("0")) {
        if (pair[1].equals("ENDSEC")) {
          break;
        }
        current = new ArrayList<>();
        entities.add(new Pairs(current));
      }
      if (current != null) {
        current.add(pair);
      }
    }
    return entities;
  }

  /** Those entities of a type. */
  List<Pairs> entities(String type) {
    return entities().stream().filter(e -> e.text(0).equals(type)).toList();
  }

  String text(int code) {
    for (String[] pair : pairs) {
      if (pair[0].equals(Integer.toString(code))) {
        return pair[1];
      }
    }
    throw new AssertionError("no group " + code + " in " + this);
  }

  double real(int code) {
    return Double.parseDouble(text(code));
  }

  boolean has(int code) {
    return pairs.stream().anyMatch(pair -> pair[0].equals(Integer.toString(code)));
  }

  @Override
  public String toString() {
    StringBuilder words = new StringBuilder();
    for (String[] pair : pairs) {
      words.append(words.length() == 0 ? "" : " ").append(pair[0]).append('=').append(pair[1]);
    }
    return words.toString();
  }
}
