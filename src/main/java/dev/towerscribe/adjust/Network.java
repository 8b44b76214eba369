package dev.towerscribe.adjust;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Points and sizes to be found, and how they are numbered as unknowns: in the order in which they
 * are added. A point may have some of its coordinates given; a plane network gives every third one
 * as zero.
 */
public final class Network {
  /** A coordinate to be found. */
  public static final double FREE = Double.NaN;

  /** No unknown: a coordinate that is given. */
  public static final int NONE = -1;

  /** Coordinates of a point. */
  public static final int AXES = 3;

  private final List<Node> nodes = new ArrayList<>();
  private final List<Integer> sizes = new ArrayList<>();
  private int unknowns;

  /**
   * A point.
   *
   * @param given its coordinates, mm; {@link #FREE} where one is to be found
   * @param unknown which unknown each of them is, or {@link #NONE}
   */
  public record Node(double[] given, int[] unknown) {
    /**
     * Whether nothing of it is to be found.
     *
     * @return true if all coordinates are given
     */
    public boolean isGiven() {
      return Arrays.stream(unknown).allMatch(u -> u == NONE);
    }
  }

  /**
   * Adds a point.
   *
   * @param given its three coordinates, mm; {@link #FREE} where one is to be found
   * @return its number
   */
  public int node(double... given) {
    int[] unknown = new int[AXES];
    for (int axis = 0; axis < AXES; axis++) {
      unknown[axis] = Double.isNaN(given[axis]) ? unknowns++ : NONE;
    }
    nodes.add(new Node(given.clone(), unknown));
    return nodes.size() - 1;
  }

  /**
   * Adds a size to be found: the diameter of a round hole.
   *
   * @return its number
   */
  public int size() {
    sizes.add(unknowns++);
    return sizes.size() - 1;
  }

  /**
   * The points.
   *
   * @return by their numbers
   */
  public List<Node> nodes() {
    return nodes;
  }

  /**
   * A point's unknowns.
   *
   * @param node its number
   * @return number of each coordinate's unknown, or {@link #NONE}
   */
  public int[] unknownsOf(int node) {
    return nodes.get(node).unknown();
  }

  /**
   * Which unknown a size is.
   *
   * @param size its number
   * @return number of the unknown
   */
  public int unknownOfSize(int size) {
    return sizes.get(size);
  }

  /**
   * How many figures are to be found.
   *
   * @return coordinates and sizes together
   */
  public int unknowns() {
    return unknowns;
  }

  /**
   * Where a point is.
   *
   * @param x the unknowns
   * @param node the point's number
   * @return its coordinates, given or found, mm
   */
  public double[] place(double[] x, int node) {
    Node n = nodes.get(node);
    double[] at = n.given.clone();
    for (int axis = 0; axis < AXES; axis++) {
      at[axis] = n.unknown[axis] == NONE ? at[axis] : x[n.unknown[axis]];
    }
    return at;
  }

  /**
   * Puts a point somewhere, as far as it is to be found.
   *
   * @param x the unknowns, changed
   * @param node the point's number
   * @param at its coordinates, mm; those that are given stay
   */
  public void put(double[] x, int node, double[] at) {
    int[] unknown = unknownsOf(node);
    for (int axis = 0; axis < AXES; axis++) {
      if (unknown[axis] != NONE) {
        x[unknown[axis]] = at[axis];
      }
    }
  }
}
