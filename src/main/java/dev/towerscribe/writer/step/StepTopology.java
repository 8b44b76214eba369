package dev.towerscribe.writer.step;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Whether faces make one closed shell, judged by what joins what and not by any coordinate. */
final class StepTopology {
  private StepTopology() {}

  /**
   * The faults of a shell.
   *
   * @param faces its faces
   * @param holes how many holes go through the part
   */
  static List<String> faults(List<StepShape.Face> faces, int holes) {
    List<String> faults = new ArrayList<>();
    Map<Integer, List<StepShape.Face>> forward = new TreeMap<>();
    Map<Integer, List<StepShape.Face>> backward = new TreeMap<>();
    Set<Integer> vertices = new HashSet<>();
    Set<Integer> edges = new HashSet<>();
    int loops = 0;
    for (StepShape.Face face : faces) {
      if (face.loops().stream().filter(StepShape.Loop::outer).count() != 1) {
        faults.add("face #" + face.id() + " has not one outer loop");
      }
      for (StepShape.Loop loop : face.loops()) {
        loops++;
        List<StepShape.Use> uses = loop.uses();
        for (int i = 0; i < uses.size(); i++) {
          StepShape.Use use = uses.get(i);
          if (use.toId() != uses.get((i + 1) % uses.size()).fromId()) {
            faults.add("a loop of face #" + face.id() + " does not close");
          }
          if (use.fromId() == use.toId()) {
            faults.add("edge #" + use.edge().id() + " closes on itself");
          }
          vertices.add(use.fromId());
          edges.add(use.edge().id());
          (use.forward() ? forward : backward)
              .computeIfAbsent(use.edge().id(), id -> new ArrayList<>())
              .add(face);
        }
      }
    }
    for (int edge : edges.stream().sorted().toList()) {
      int ahead = forward.getOrDefault(edge, List.of()).size();
      int back = backward.getOrDefault(edge, List.of()).size();
      if (ahead != 1 || back != 1) {
        faults.add(
            "edge #%s is used %s times forward and %s times backward, not once each"
                .formatted(edge, ahead, back));
      }
    }
    if (!connected(faces, forward, backward)) {
      faults.add("the shell is in more than one piece");
    }
    // Euler and Poincare: vertices - edges + faces - (loops - faces) = 2 - 2 * holes through.
    int sum = vertices.size() - edges.size() + 2 * faces.size() - loops;
    if (sum != 2 - 2 * holes) {
      faults.add("the shell has not " + holes + " holes through it");
    }
    return faults;
  }

  private static boolean connected(
      List<StepShape.Face> faces,
      Map<Integer, List<StepShape.Face>> forward,
      Map<Integer, List<StepShape.Face>> backward) {
    if (faces.isEmpty()) {
      return false;
    }
    Map<Integer, StepShape.Face> byId = new HashMap<>();
    faces.forEach(face -> byId.put(face.id(), face));
    Set<Integer> reached = new HashSet<>(Set.of(faces.get(0).id()));
    Deque<Integer> open = new ArrayDeque<>(reached);
    while (!open.isEmpty()) {
      for (StepShape.Loop loop : byId.get(open.pop()).loops()) {
        for (StepShape.Use use : loop.uses()) {
          Map<Integer, List<StepShape.Face>> others = use.forward() ? backward : forward;
          for (StepShape.Face next : others.getOrDefault(use.edge().id(), List.of())) {
            if (reached.add(next.id())) {
              open.push(next.id());
            }
          }
        }
      }
    }
    return reached.size() == faces.size();
  }
}
