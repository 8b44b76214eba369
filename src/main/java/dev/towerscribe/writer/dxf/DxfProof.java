package dev.towerscribe.writer.dxf;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.regex.Pattern;

/**
 * Reads a written DXF anew, holds it to the format, and compares what it finds with what the
 * drawing must show.
 */
public final class DxfProof {
  /**
   * How far a shape may lie off, mm: a program that cuts takes the numbers as they stand, and no
   * curve is put in place of another, so nothing but rounding may come between.
   */
  private static final double EXACT_MM = Tolerances.SAME_POINT_MM;

  /** Decimals of lengths in messages: a tenth of the tolerance shows. */
  private static final int DECIMALS = 7;

  /** What release 12 allows for names; in release 2000 a star begins names of the format's own. */
  private static final Pattern NAME = Pattern.compile("[A-Z0-9_$-]{1,31}");

  private static final List<String> TABLES_R12 = List.of("LTYPE", "LAYER", "STYLE");
  private static final List<String> TABLES_R2000 =
      List.of(
          "VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD");

  /** Groups that any entity may have, in release 12 and, further, in 2000. */
  private static final Set<Integer> ANY_R12 = Set.of(8, 6);

  private static final Set<Integer> ANY_R2000 = Set.of(5, 330, 100, 370);

  /**
   * A kind of entity.
   *
   * @param groups its groups; whatever else would move, turn or hide it
   * @param markers what marks its parts in release 2000
   */
  private record Kind(Set<Integer> groups, List<String> markers) {}

  private static final Map<String, Kind> KINDS =
      Map.of(
          "LINE",
          new Kind(Set.of(10, 20, 30, 11, 21, 31), List.of("AcDbEntity", "AcDbLine")),
          "CIRCLE",
          new Kind(Set.of(10, 20, 30, 40), List.of("AcDbEntity", "AcDbCircle")),
          "ARC",
          new Kind(Set.of(10, 20, 30, 40, 50, 51), List.of("AcDbEntity", "AcDbCircle", "AcDbArc")),
          "SOLID",
          new Kind(
              Set.of(10, 20, 30, 11, 21, 31, 12, 22, 32, 13, 23, 33),
              List.of("AcDbEntity", "AcDbTrace")),
          "TEXT",
          new Kind(
              Set.of(10, 20, 30, 11, 21, 31, 40, 1, 50, 41, 7, 72, 73),
              List.of("AcDbEntity", "AcDbText", "AcDbText")));

  private final Vec2 datum;
  private final DxfReader file;
  private final DxfVersion version;
  private final List<Proof.RoundHole> rounds = new ArrayList<>();
  private final List<Proof.Bar> straights = new ArrayList<>();
  private final List<String> mismatches = new ArrayList<>();

  private DxfProof(DxfReader file, DxfVersion version, Vec2 datum) {
    this.datum = datum;
    this.file = file;
    this.version = version;
  }

  /**
   * Proves a file against its drawing: that it is sound (sections and tables, names defined before
   * use, no entity on a layer that is off or frozen, in release 2000 handles and owners), that one
   * unit is one mm as far as the version can say so, that the extents are the paper's, and every
   * proof of the page to within {@link Tolerances#SAME_POINT_MM}. A round hole must be there as a
   * CIRCLE, a bar as one LINE.
   *
   * @param dxf the file
   * @param page what was to be written
   * @param version the form it was to have
   * @param datum the page point that the file's origin stands for, page mm
   * @return one line for each mismatch; empty if the file is proved
   */
  public static List<String> check(byte[] dxf, Page page, DxfVersion version, Vec2 datum) {
    List<String> lines = new ArrayList<>();
    String where = "drawing " + page.label();
    try {
      DxfProof proof = new DxfProof(DxfReader.read(dxf), version, datum);
      proof.header(page);
      proof.names();
      if (version == DxfVersion.R2000) {
        DxfHandles.check(proof.file, proof.mismatches);
      }
      for (DxfRecord entity : proof.file.section("ENTITIES")) {
        proof.entity(entity);
      }
      page.proofs().forEach(proof::compare);
      proof.mismatches.forEach(line -> lines.add(where + ": " + line));
    } catch (Unreadable e) {
      lines.add(where + " cannot be read back: " + e.getMessage());
    }
    return lines;
  }

  private void expect(boolean holds, String mismatch) {
    if (!holds) {
      mismatches.add(mismatch);
    }
  }

  private void header(Page page) throws Unreadable {
    String release = file.variable("$ACADVER").text(1);
    expect(release.equals(version.acadVersion()), "the version is not " + version.acadVersion());
    boolean states = !file.variable("$INSUNITS").groups().isEmpty();
    if (version == DxfVersion.R12) {
      expect(!states, "a unit is stated, which this version does not know");
    } else {
      boolean mm =
          states
              && file.variable("$INSUNITS").whole(70) == 4
              && file.variable("$MEASUREMENT").whole(70) == 1;
      expect(mm, "the unit is not stated to be the mm");
    }
    expect(file.variable("$LTSCALE").real(40) == 1, "dashes are scaled");
    expect(
        file.variable("$ANGBASE").real(50) == 0 && file.variable("$ANGDIR").whole(70) == 0,
        "angles do not run counter-clockwise from x");
    Vec2 corner = new Vec2(page.widthMm(), page.heightMm());
    for (String kind : List.of("$EXT", "$LIM")) {
      expect(
          same(file.variable(kind + "MIN").point(10), Vec2.ZERO.minus(datum))
              && same(file.variable(kind + "MAX").point(10), corner.minus(datum)),
          "the extents or limits are not the paper's");
    }
  }

  private static boolean same(Vec2 a, Vec2 b) {
    return a.distanceTo(b) <= EXACT_MM;
  }

  /** What is called by name must be defined, once, by a name that any program can hold. */
  private void names() throws Unreadable {
    for (String table : version == DxfVersion.R12 ? TABLES_R12 : TABLES_R2000) {
      must(file.tables().containsKey(table), "there is no table " + table);
    }
    for (String section : List.of("HEADER", "ENTITIES")) {
      must(file.hasSection(section), "there is no section " + section);
    }
    for (String table : TABLES_R12) {
      Set<String> seen = new HashSet<>();
      for (DxfRecord entry : file.tables().get(table).entries()) {
        String name = entry.text(2).toUpperCase(Locale.ROOT);
        boolean plain = NAME.matcher(name).matches();
        expect(plain, "the name " + name + " is not one that every program takes");
        expect(seen.add(name), table + " " + name + " is defined twice");
      }
    }
    expectDefined("LAYER", "0");
    expectDefined("LTYPE", "CONTINUOUS");
    for (DxfRecord layer : file.tables().get("LAYER").entries()) {
      expectDefined("LTYPE", layer.text(6));
      expect(
          layer.whole(62) > 0 && layer.whole(70) == 0,
          "the layer " + layer.text(2) + " is off, frozen or locked");
    }
    for (DxfRecord type : file.tables().get("LTYPE").entries()) {
      dashes(type);
    }
  }

  private static void dashes(DxfRecord type) throws Unreadable {
    double sum = 0;
    List<String> lengths = type.all(49);
    for (String length : lengths) {
      sum += Math.abs(new DxfRecord("dash", List.of(new DxfRecord.Group(49, length))).real(49));
    }
    must(
        type.whole(73) == lengths.size() && Math.abs(sum - type.real(40)) <= EXACT_MM,
        "the dashes of " + type.text(2) + " do not add up");
  }

  private void expectDefined(String table, String name) {
    boolean defined =
        file.tables().get(table).entries().stream()
            .anyMatch(
                entry -> entry.all(2).stream().anyMatch(found -> found.equalsIgnoreCase(name)));
    expect(defined, table + " " + name + " is used but not defined");
  }

  private void entity(DxfRecord entity) throws Unreadable {
    Kind known = KINDS.get(entity.type());
    must(known != null, "an entity of the kind " + entity.type());
    for (DxfRecord.Group group : entity.groups()) {
      boolean common =
          ANY_R12.contains(group.code())
              || version == DxfVersion.R2000 && ANY_R2000.contains(group.code());
      if (!common && !known.groups.contains(group.code())) {
        throw new Unreadable("a " + entity.type() + " with a group " + group.code());
      }
    }
    expectDefined("LAYER", entity.text(8));
    if (entity.has(6)) {
      expectDefined("LTYPE", entity.text(6));
    }
    expect(
        version == DxfVersion.R12 || entity.all(100).equals(known.markers),
        "a " + entity.type() + " without the markers of its parts");
    Vec2 at = entity.point(10);
    switch (entity.type()) {
      case "LINE" -> straights.add(new Proof.Bar("LINE", at, entity.point(11)));
      case "CIRCLE" -> rounds.add(new Proof.RoundHole("CIRCLE", at, radius(entity)));
      case "ARC" -> {
        radius(entity);
        expect(entity.real(50) != entity.real(51), "an ARC that ends where it begins");
      }
      case "SOLID" -> {
        entity.point(11);
        entity.point(12);
        entity.point(13);
      }
      default -> text(entity);
    }
  }

  private static double radius(DxfRecord entity) throws Unreadable {
    double radius = entity.real(40);
    must(radius > 0, "a " + entity.type() + " without size");
    return radius;
  }

  private void text(DxfRecord text) throws Unreadable {
    expectDefined("STYLE", text.text(7));
    radius(text);
    text.real(50);
    text.text(1);
    if (text.whole(72) != 0) {
      text.point(11);
    }
  }

  private void compare(Proof proof) {
    if (proof instanceof Proof.RoundHole hole) {
      Vec2 centre = hole.centre().minus(datum);
      compare(
          new Proof.RoundHole(hole.name(), centre, hole.radiusMm()),
          rounds,
          Proof.RoundHole::offMm,
          DxfProof::words);
    } else if (proof instanceof Proof.Bar bar) {
      Vec2 from = bar.from().minus(datum);
      Vec2 to = bar.to().minus(datum);
      compare(new Proof.Bar(bar.name(), from, to), straights, Proof.Bar::offMm, DxfProof::words);
    } else {
      throw new IllegalStateException("no way to prove " + proof);
    }
  }

  private <T extends Proof> void compare(
      T wanted, List<T> found, ToDoubleBiFunction<T, T> offMm, Function<T, String> words) {
    Optional<T> best =
        found.stream().min(Comparator.comparingDouble(f -> offMm.applyAsDouble(wanted, f)));
    expect(
        best.isPresent() && offMm.applyAsDouble(wanted, best.get()) <= EXACT_MM,
        "%s: %s not found; %s"
            .formatted(
                wanted.name(),
                words.apply(wanted),
                best.map(b -> "the nearest: " + words.apply(b))
                    .orElse("there is nothing of the kind")));
  }

  private static String words(Proof.RoundHole round) {
    return "CIRCLE of radius %s mm about %s"
        .formatted(Numbers.fixed(round.radiusMm(), DECIMALS), words(round.centre()));
  }

  private static String words(Proof.Bar line) {
    return "LINE from " + words(line.from()) + " to " + words(line.to());
  }

  private static String words(Vec2 p) {
    return "(" + Numbers.fixed(p.x(), DECIMALS) + ", " + Numbers.fixed(p.y(), DECIMALS) + ") mm";
  }
}
