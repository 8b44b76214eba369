import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Times whole processes: packing the demo job, and drawing its parts and jigs, as the launcher does
 * it, against a Java program that does nothing. All kinds take turns within each round, so that a
 * busy machine slows all alike; the table gives medians, and ratios to the empty program, which say
 * more than seconds do.
 *
 * <p>From the source directory, after a build: {@code java src/timing/java/PackBenchmark.java
 * [rounds]}
 */
public final class PackBenchmark {
  private static final int ROUNDS = 15;
  private static final long LONGEST_RUN_S = 300;
  private static final List<String> FLAGS =
      List.of(
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-Xmn8m",
          "-Xshare:auto",
          "-Xlog:disable",
          "-Djava.awt.headless=true");

  private PackBenchmark() {}

  /**
   * Runs and prints the table.
   *
   * @param args how many rounds, if not fifteen
   * @throws Exception if a process fails
   */
  public static void main(String[] args) throws Exception {
    int rounds = args.length > 0 ? Integer.parseInt(args[0]) : ROUNDS;
    Path work = Files.createTempDirectory("pack-benchmark");
    try {
      Map<String, List<String>> kinds = kinds(work);
      Map<String, double[]> seconds = new LinkedHashMap<>();
      kinds.keySet().forEach(kind -> seconds.put(kind, new double[rounds]));
      for (int round = -1; round < rounds; round++) {
        for (Map.Entry<String, List<String>> kind : kinds.entrySet()) {
          double taken = time(kind.getValue(), work);
          // The first round fills the system's file cache and is not counted.
          if (round >= 0) {
            seconds.get(kind.getKey())[round] = taken;
          }
        }
      }
      print(seconds, rounds);
    } finally {
      delete(work);
    }
  }

  private static Map<String, List<String>> kinds(Path work) throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Path source = work.resolve("Empty.java");
    Files.writeString(
        source, "class Empty { public static void main(String[] a) { System.out.println(1); } }");
    time(List.of(java + "c", "-d", work.toString(), source.toString()), work);
    Path target = Path.of("target").toAbsolutePath();
    Path jar;
    try (Stream<Path> files = Files.list(target)) {
      jar =
          files
              .filter(f -> f.getFileName().toString().matches("towerscribe-[0-9.]+\\.jar"))
              .findFirst()
              .orElseThrow(() -> new IOException("no build in target; run: mvn package"));
    }
    Path archive = target.resolve("towerscribe.jsa");
    List<String> pack =
        List.of("pack", Path.of("templates/wren.toml").toAbsolutePath().toString(), "-o", "pack");
    List<String> drawing =
        List.of(
            "drawing",
            Path.of("templates/wren.toml").toAbsolutePath().toString(),
            "-o",
            "drawings",
            "--jig");
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    kinds.put(
        "empty program", join(List.of(java), FLAGS, List.of("-cp", work.toString(), "Empty")));
    kinds.put("pack, plain java -jar", join(List.of(java, "-jar", jar.toString()), pack));
    kinds.put("pack, launcher's flags", join(List.of(java), FLAGS, jar(jar), pack));
    kinds.put("drawing, launcher's flags", join(List.of(java), FLAGS, jar(jar), drawing));
    if (Files.exists(archive) && Files.size(archive) > 0) {
      kinds.put(
          "pack, flags and class archive",
          join(List.of(java), FLAGS, List.of("-XX:SharedArchiveFile=" + archive), jar(jar), pack));
      kinds.put(
          "drawing, flags and class archive",
          join(
              List.of(java),
              FLAGS,
              List.of("-XX:SharedArchiveFile=" + archive),
              jar(jar),
              drawing));
    }
    kinds.put(
        "pack, ./towerscribe", join(List.of(Path.of("towerscribe").toRealPath().toString()), pack));
    return kinds;
  }

  private static List<String> jar(Path jar) {
    return List.of("-jar", jar.toString());
  }

  @SafeVarargs
  private static List<String> join(List<String>... parts) {
    List<String> all = new ArrayList<>();
    Arrays.stream(parts).forEach(all::addAll);
    return all;
  }

  private static double time(List<String> command, Path directory) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(command).directory(directory.toFile());
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    long start = System.nanoTime();
    Process process = builder.start();
    if (!process.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IOException("failed: " + String.join(" ", command));
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static void print(Map<String, double[]> seconds, int rounds) {
    seconds.values().forEach(Arrays::sort);
    double base = seconds.get("empty program")[rounds / 2];
    System.out.println("whole process, " + rounds + " rounds, Java " + Runtime.version());
    System.out.printf("%-32s %10s %10s %8s%n", "", "median s", "least s", "ratio");
    seconds.forEach(
        (kind, taken) ->
            System.out.printf(
                java.util.Locale.ROOT,
                "%-32s %10.3f %10.3f %8.1f%n",
                kind,
                taken[rounds / 2],
                taken[0],
                taken[rounds / 2] / base));
  }

  private static void delete(Path root) throws IOException {
    try (Stream<Path> paths = Files.walk(root)) {
      for (Path path : paths.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(path);
      }
    }
  }
}
