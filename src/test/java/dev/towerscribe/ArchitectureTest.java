package dev.towerscribe;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the packages to the table of who may import whom; DEVELOPERS.md gives the reasons. */
class ArchitectureTest {
  private static final String ROOT = "dev.towerscribe";

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  /** Each package with those it may import beside itself. */
  private static final Map<String, Set<String>> MAY_IMPORT = new LinkedHashMap<>();

  static {
    Set<String> base = Set.of("model", "geometry", "quantity", "finding");
    MAY_IMPORT.put("quantity", Set.of());
    MAY_IMPORT.put("finding", Set.of("geometry", "quantity"));
    MAY_IMPORT.put("geometry", Set.of("quantity"));
    MAY_IMPORT.put("model", Set.of("geometry", "quantity", "finding"));
    MAY_IMPORT.put("adjust", Set.of("quantity"));
    MAY_IMPORT.put("job", plus(base, "adjust", "survey", "drilled", "record"));
    MAY_IMPORT.put("layout", base);
    MAY_IMPORT.put("alignment", base);
    MAY_IMPORT.put("layout.quick", plus(base, "layout"));
    MAY_IMPORT.put("placement", plus(base, "layout", "layout.quick", "alignment", "strength"));
    MAY_IMPORT.put("part", plus(base, "layout"));
    MAY_IMPORT.put("survey", plus(base, "adjust"));
    MAY_IMPORT.put("drilled", plus(base, "adjust", "layout", "alignment"));
    MAY_IMPORT.put("record", plus(base, "adjust", "alignment"));
    MAY_IMPORT.put("strength", plus(base, "layout"));
    MAY_IMPORT.put("drawing", Set.of("geometry", "quantity"));
    Set<String> page = plus(base, "drawing", "report");
    MAY_IMPORT.put("sheet.text", page);
    MAY_IMPORT.put("sheet.tower", plus(page, "sheet.text", "layout", "alignment"));
    MAY_IMPORT.put("sheet.shop", plus(page, "sheet.text", "layout", "part"));
    MAY_IMPORT.put("sheet.worksheet", plus(page, "sheet.text"));
    MAY_IMPORT.put(
        "sheet.report",
        plus(
            page,
            "sheet.text",
            "sheet.tower",
            "layout",
            "adjust",
            "alignment",
            "placement",
            "drilled",
            "record",
            "strength"));
    MAY_IMPORT.put(
        "sheet", plus(page, "sheet.text", "sheet.tower", "sheet.report", "layout", "alignment"));
    MAY_IMPORT.put(
        "report",
        plus(base, "adjust", "layout", "alignment", "placement", "survey", "drilled", "record"));
    MAY_IMPORT.put("report.csv", plus(base, "alignment", "record", "report"));
    MAY_IMPORT.put(
        "report.json",
        plus(
            base,
            "adjust",
            "layout",
            "alignment",
            "placement",
            "survey",
            "drilled",
            "record",
            "report"));
    for (String format : Set.of("pdf", "svg", "dxf", "step")) {
      MAY_IMPORT.put("writer." + format, Set.of("drawing", "geometry", "quantity"));
    }
    MAY_IMPORT.put(
        "store",
        plus(
            base,
            "adjust",
            "drilled",
            "record",
            "report",
            "drawing",
            "writer.pdf",
            "writer.svg",
            "writer.dxf",
            "writer.step"));
  }

  private static Set<String> plus(Set<String> some, String... more) {
    Set<String> all = new HashSet<>(some);
    all.addAll(Set.of(more));
    return all;
  }

  /** The package as the table names it: "layout", "writer.pdf", "sheet.text". */
  private static String tableName(JavaClass type) {
    String name = type.getPackageName();
    if (!name.startsWith(ROOT + ".")) {
      return "";
    }
    String[] parts = name.substring(ROOT.length() + 1).split("\\.");
    String two = parts.length > 1 ? parts[0] + "." + parts[1] : parts[0];
    return MAY_IMPORT.containsKey(two) ? two : parts[0];
  }

  @Test
  void packagesImportOnlyWhatTheTableAllows() {
    Set<String> offences = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      String from = tableName(type);
      if (from.equals("cli")) {
        continue;
      }
      Set<String> allowed = MAY_IMPORT.get(from);
      if (allowed == null) {
        offences.add(type.getName() + " is in a package that the table does not name");
        continue;
      }
      type.getDirectDependenciesFromSelf()
          .forEach(
              use -> {
                String to = tableName(use.getTargetClass().getBaseComponentType());
                if (!to.isEmpty() && !to.equals(from) && !allowed.contains(to)) {
                  offences.add(from + " -> " + to + ": " + use.getDescription());
                }
              });
    }
    assertThat(offences).isEmpty();
  }

  @Test
  void noClassReachesItselfThroughOthers() {
    // A class and those nested in it count as one. As packages make no circle, a circle lies inside
    // one package.
    SliceAssignment byTopLevelClass =
        new SliceAssignment() {
          @Override
          public SliceIdentifier getIdentifierOf(JavaClass type) {
            return SliceIdentifier.of(type.getName().replaceFirst("\\$.*", ""));
          }

          @Override
          public String getDescription() {
            return "top-level classes";
          }
        };
    slices().assignedFrom(byTopLevelClass).should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void theClassesWereFound() {
    // Guards the other tests: on an empty import every rule would hold.
    assertThat(CLASSES.stream().map(ArchitectureTest::tableName))
        .contains(
            "quantity",
            "geometry",
            "model",
            "layout",
            "alignment",
            "drawing",
            "sheet.tower",
            "writer.dxf",
            "cli");
  }

  @ParameterizedTest
  @CsvSource({
    "geometry, org.locationtech.jts",
    "job report.json, com.fasterxml.jackson",
    "writer.pdf, org.apache.pdfbox",
    "writer.pdf, org.apache.fontbox",
    "writer.svg, org.jfree",
    "cli, picocli",
    "adjust alignment survey drilled drawing, org.hipparchus",
  })
  void onlyTheirOwnersUseALibrary(String owners, String library) {
    String[] packages =
        Arrays.stream(owners.split(" ")).map(o -> ROOT + "." + o + "..").toArray(String[]::new);
    noClasses()
        .that()
        .resideOutsideOfPackages(packages)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library + "..")
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineTouchesTheProcess() {
    Set<String> offences = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      if (tableName(type).equals("cli")) {
        continue;
      }
      for (JavaAccess<?> access : type.getAccessesFromSelf()) {
        boolean process = Set.of("out", "err", "in", "exit").contains(access.getName());
        if (process && access.getTargetOwner().isEquivalentTo(System.class)
            || access.getName().equals("printStackTrace")) {
          offences.add(access.getDescription());
        }
      }
    }
    assertThat(offences).isEmpty();
  }

  @Test
  void nothingReadsTheClockOrTheDefaultLocaleOrZone() {
    // The same job gives the same bytes; a run's own lock may use a clock.
    Set<String> offences = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      for (JavaAccess<?> access : type.getAccessesFromSelf()) {
        String target = access.getTargetOwner().getName() + "." + access.getName();
        boolean clock =
            target.equals("java.lang.System.currentTimeMillis")
                || target.equals("java.lang.System.nanoTime")
                || access.getName().equals("now")
                    && access.getTargetOwner().getPackageName().equals("java.time");
        boolean local =
            target.equals("java.util.Locale.getDefault")
                || target.equals("java.util.TimeZone.getDefault")
                || target.equals("java.time.ZoneId.systemDefault");
        if (local || clock && !type.getName().equals(ROOT + ".store.DirectoryLock")) {
          offences.add(access.getDescription());
        }
      }
    }
    assertThat(offences).isEmpty();
  }
}
