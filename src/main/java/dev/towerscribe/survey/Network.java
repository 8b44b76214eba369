package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Points and sizes to be found, and how they are numbered as unknowns. A point may have some of its
 * coordinates given; a plane network gives every third one as zero.
 */
final class Network {
  /** A coordinate to be found. */
  static final double FREE = Double.NaN;

  /** No size: a distance that was taken from centre to centre. */
  static final int NONE = -1;

  static final int AXES = 3;

  private final List<Node> nodes = new ArrayList<>();
  private final List<Integer> sizes = new ArrayList<>();
  private int unknowns;

  /**
   * A point.
   *
   * @param given its coordinates; {@link #FREE} where one is to be found
   * @param unknown which unknown each of them is, or {@link #NONE}
   * @param likely where such a point mostly is: decides between places that fit equally
   * @param least the least each coordinate can be, by sense: a car's points are above the floor
   * @param most the greatest
   */
  record Node(double[] given, int[] unknown, double[] likely, double[] least, double[] most) {
    boolean isGiven() {
      return Arrays.stream(unknown).allMatch(u -> u == NONE);
    }

    /** How many coordinates are out of sense. */
    int senseless(double[] at) {
      int count = 0;
      for (int axis = 0; axis < AXES; axis++) {
        count += at[axis] < least[axis] || at[axis] > most[axis] ? 1 : 0;
      }
      return count;
    }
  }

  /**
   * Adds a point.
   *
   * @return its number
   */
  int node(double[] given, double[] likely, double[] least, double[] most) {
    int[] unknown = new int[AXES];
    for (int axis = 0; axis < AXES; axis++) {
      unknown[axis] = Double.isNaN(given[axis]) ? unknowns++ : NONE;
    }
    nodes.add(new Node(given.clone(), unknown, likely, least, most));
    return nodes.size() - 1;
  }

  /**
   * Adds a size to be found.
   *
   * @return its number
   */
  int size() {
    sizes.add(unknowns++);
    return sizes.size() - 1;
  }

  List<Node> nodes() {
    return nodes;
  }

  int sizes() {
    return sizes.size();
  }

  /** Which unknown a size is. */
  int unknownOfSize(int size) {
    return sizes.get(size);
  }

  int unknowns() {
    return unknowns;
  }

  double coordinate(double[] x, int node, int axis) {
    Node n = nodes.get(node);
    int unknown = n.unknown[axis];
    return unknown == NONE ? n.given[axis] : x[unknown];
  }

  double[] place(double[] x, int node) {
    return new double[] {coordinate(x, node, 0), coordinate(x, node, 1), coordinate(x, node, 2)};
  }

  /** Sets those coordinates of a point that are to be found. */
  void put(double[] x, int node, double[] at) {
    Node n = nodes.get(node);
    for (int axis = 0; axis < AXES; axis++) {
      if (n.unknown[axis] != NONE) {
        x[n.unknown[axis]] = at[axis];
      }
    }
  }
}
