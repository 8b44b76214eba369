import java.io.File;
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
 * Times whole processes: a search of 200 000 placements with 21 wheel heights each, and the place
 * command on the demo job, against a Java program that does nothing. All kinds take turns within
 * each round, so that a busy machine slows all alike; the table gives medians, and ratios to the
 * empty program, which say more than seconds do.
 *
 * <p>docs/performance.md has the commands.
 */
public final class SearchBenchmark {
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

  private SearchBenchmark() {}

  /**
   * Runs and prints the table.
   *
   * @param args how many rounds, if not fifteen
   * @throws Exception if a process fails
   */
  public static void main(String[] args) throws Exception {
    int rounds = args.length > 0 ? Integer.parseInt(args[0]) : ROUNDS;
    Path work = Files.createTempDirectory("search-benchmark");
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
    String job = Path.of("templates/wren.toml").toAbsolutePath().toString();
    String classes =
        String.join(File.pathSeparator, jar.toString(), target.resolve("timing.jar").toString());
    if (!Files.exists(target.resolve("timing.jar"))) {
      throw new IOException("no target/timing.jar; docs/performance.md has the commands");
    }
    String many = "dev.towerscribe.placement.ManyPlacements";
    Path archive = target.resolve("towerscribe.jsa");
    Path searches = archive(java, classes, many, job, work);
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    kinds.put(
        "empty program", join(List.of(java), FLAGS, List.of("-cp", work.toString(), "Empty")));
    kinds.put(
        "200 000 x 21, job made in code",
        join(List.of(java), FLAGS, List.of("-cp", classes, many)));
    kinds.put(
        "200 000 x 21, class archive",
        join(List.of(java), FLAGS, List.of(shared(searches), "-cp", classes, many)));
    kinds.put(
        "200 000 x 21, job file read",
        join(List.of(java), FLAGS, List.of("-cp", classes, many, job)));
    kinds.put(
        "200 000 x 21, file, class archive",
        join(List.of(java), FLAGS, List.of(shared(searches), "-cp", classes, many, job)));
    kinds.put("place, launcher's flags", join(List.of(java), FLAGS, jar(jar), place(job)));
    if (Files.exists(archive) && Files.size(archive) > 0) {
      kinds.put(
          "place, flags and class archive",
          join(List.of(java), FLAGS, List.of(shared(archive)), jar(jar), place(job)));
    }
    return kinds;
  }

  /**
   * A class archive for the searches, made as the launcher makes its own: from what a run loads.
   */
  private static Path archive(String java, String classes, String many, String job, Path work)
      throws Exception {
    Path list = work.resolve("classes.lst");
    Path archive = work.resolve("searches.jsa");
    time(
        join(
            List.of(java),
            FLAGS,
            List.of("-XX:DumpLoadedClassList=" + list, "-cp", classes, many, job)),
        work);
    time(
        join(
            List.of(java),
            FLAGS,
            List.of(
                "-Xshare:dump",
                "-XX:SharedClassListFile=" + list,
                "-XX:SharedArchiveFile=" + archive,
                "-cp",
                classes)),
        work);
    return archive;
  }

  private static String shared(Path archive) {
    return "-XX:SharedArchiveFile=" + archive;
  }

  private static List<String> place(String job) {
    return List.of("place", job, "--json");
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
    System.out.printf("%-36s %10s %10s %8s%n", "", "median s", "least s", "ratio");
    seconds.forEach(
        (kind, taken) ->
            System.out.printf(
                java.util.Locale.ROOT,
                "%-36s %10.3f %10.3f %8.1f%n",
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
