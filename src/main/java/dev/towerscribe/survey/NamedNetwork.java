package dev.towerscribe.survey;

import dev.towerscribe.adjust.Axes;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Observation;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A network whose points and readings have names. */
final class NamedNetwork {
  /** Words for a car's coordinates; the second is told outward on either side. */
  static final Axes CAR =
      new Axes(
          List.of("place forward", "place outward", "height"), List.of("forward", "out", "up"));

  /** Words for the plan of a tower. */
  static final Axes TOWER =
      new Axes(List.of("place fore", "place in", "height"), List.of("fore", "in"));

  private final Network net = new Network();
  private final Axes axes;
  private final Set<String> ids;
  private final List<Plausible> plausible = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Observation> observations = new ArrayList<>();

  /**
   * A point's name.
   *
   * @param side "left", "right" or "both"
   * @param name its own
   * @param needed whether the job's tables need it
   */
  record Label(String side, String name, boolean needed) {}

  /**
   * An empty network.
   *
   * @param axes how its coordinates are spoken of
   * @param ids names of readings that are taken, of the whole survey: accepting one must never
   *     accept another
   */
  NamedNetwork(Axes axes, Set<String> ids) {
    this.axes = axes;
    this.ids = ids;
  }

  /** Adds a point and gives its number. */
  int point(Label label, Plausible where, double... given) {
    plausible.add(where);
    labels.add(label);
    return net.node(given);
  }

  /**
   * Adds what was read of one thing.
   *
   * @param kind what was read with what
   * @param words what it is
   * @param measure what it is of
   * @param reading the figures
   * @param side "left", "right" or "both"
   * @param thing the rest of its id, part by part
   */
  void read(
      Entry.Kind kind,
      String words,
      Measure measure,
      Repeated reading,
      String side,
      String... thing) {
    String plain =
        side + "." + Stream.of(thing).map(Findings::slug).collect(Collectors.joining("-"));
    String id =
        Stream.iterate(1, n -> n + 1)
            .map(n -> n == 1 ? plain : plain + "-" + n)
            .filter(ids::add)
            .findFirst()
            .orElseThrow();
    observations.add(Observation.of(entries.size(), measure, reading));
    entries.add(new Entry(id, kind, words));
  }

  Network net() {
    return net;
  }

  /** Whether it is of a car's points, and not of a tower. */
  boolean isCar() {
    return axes == CAR;
  }

  Axes axes() {
    return axes;
  }

  /** Whether a point is told as if on the left: outward on the right is -Y. */
  boolean isMirrored(Label label) {
    return isCar() && label.side().equals("right");
  }

  /** One for each point, by its number. */
  List<Label> labels() {
    return labels;
  }

  /** The same. */
  List<Plausible> plausible() {
    return plausible;
  }

  /** All readings, each with the number of its entry. */
  List<Observation> observations() {
    return observations;
  }

  /** What an observation is called. */
  Entry entry(Observation o) {
    return entries.get(o.number());
  }
}
