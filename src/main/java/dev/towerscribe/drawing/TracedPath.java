package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A path as it is followed through a written page: runs of straight and curved pieces, in the units
 * of the file. After a close the path goes on from where the closed run began (ISO 32000 and SVG
 * agree in this).
 */
public final class TracedPath {
  /** Points taken along each curve. */
  private static final int SAMPLES = 16;

  private static final class Run {
    private final List<Vec2> points = new ArrayList<>();
    private boolean straight;
    private boolean curved;
    private boolean closed;

    Run(Vec2 start) {
      points.add(start);
    }

    private Vec2 last() {
      return points.get(points.size() - 1);
    }

    private boolean isRound() {
      return curved && !straight && last().equals(points.get(0));
    }
  }

  private final List<Run> runs = new ArrayList<>();

  /** Pairs of ends. */
  private final List<Vec2> straights = new ArrayList<>();

  /**
   * Where a map takes a point.
   *
   * @param map the map
   * @param p the point
   * @return its image
   */
  public static Vec2 mapped(AffineTransform map, Vec2 p) {
    Point2D.Double q = new Point2D.Double(p.x(), p.y());
    map.transform(q, q);
    return new Vec2(q.x, q.y);
  }

  /**
   * Begins a run.
   *
   * @param p its first point
   */
  public void moveTo(Vec2 p) {
    runs.add(new Run(p));
  }

  /**
   * Where the path is.
   *
   * @return the point from which it goes on
   * @throws Unreadable if it was not begun
   */
  public Vec2 at() throws Unreadable {
    Run run = run();
    return run.closed ? run.points.get(0) : run.last();
  }

  private Run run() throws Unreadable {
    Unreadable.must(!runs.isEmpty(), "a path that does not begin");
    return runs.get(runs.size() - 1);
  }

  private Run openRun() throws Unreadable {
    if (run().closed) {
      moveTo(at());
    }
    return run();
  }

  /**
   * Goes on straight.
   *
   * @param p where to
   * @throws Unreadable if the path was not begun
   */
  public void lineTo(Vec2 p) throws Unreadable {
    Run run = openRun();
    straights.addAll(List.of(run.last(), p));
    run.straight = true;
    run.points.add(p);
  }

  /**
   * Goes on along a cubic curve.
   *
   * @param p1 its first handle
   * @param p2 its second handle
   * @param p3 where to
   * @throws Unreadable if the path was not begun
   */
  public void curveTo(Vec2 p1, Vec2 p2, Vec2 p3) throws Unreadable {
    Vec2 p0 = at();
    List<Vec2> points = new ArrayList<>(SAMPLES);
    for (int i = 1; i < SAMPLES; i++) {
      double t = (double) i / SAMPLES;
      Vec2 a = p0.toward(p1, t);
      Vec2 b = p1.toward(p2, t);
      Vec2 c = p2.toward(p3, t);
      points.add(a.toward(b, t).toward(b.toward(c, t), t));
    }
    points.add(p3);
    curveThrough(points);
  }

  /**
   * Goes on along any curve.
   *
   * @param points points along it, the last one where it ends
   * @throws Unreadable if the path was not begun
   */
  public void curveThrough(List<Vec2> points) throws Unreadable {
    Run run = openRun();
    run.curved = true;
    run.points.addAll(points);
  }

  /**
   * Closes the run, straight where it has not come back to its start.
   *
   * @throws Unreadable if the path was not begun
   */
  public void close() throws Unreadable {
    Run run = run();
    if (!at().equals(run.points.get(0))) {
      lineTo(run.points.get(0));
    }
    run.closed = true;
  }

  /**
   * Its closed outlines that are nowhere straight.
   *
   * @return points along each, the first not repeated
   */
  public List<List<Vec2>> rounds() {
    return runs.stream()
        .filter(Run::isRound)
        .map(run -> run.points.subList(0, run.points.size() - 1))
        .toList();
  }

  /**
   * Its straight pieces.
   *
   * @return their ends, two for each
   */
  public List<Vec2> straights() {
    return List.copyOf(straights);
  }

  /**
   * The path as a clip.
   *
   * @return corners of the polygon it is
   * @throws Unreadable if it is no single polygon
   */
  public List<Vec2> polygon() throws Unreadable {
    Unreadable.must(runs.size() == 1 && !run().curved, "a clip that is not one polygon");
    return run().points;
  }

  /**
   * Paints the path.
   *
   * @param found takes in what shows
   * @param toMm from the path's units to millimetres of the paper, y up
   * @param visible what shows of the page there
   * @param stroked whether its line is drawn
   * @param filled whether its inside is
   */
  public void paint(
      ReadBack found,
      AffineTransform toMm,
      VisibleRegion visible,
      boolean stroked,
      boolean filled) {
    if (stroked || filled) {
      for (List<Vec2> round : rounds()) {
        found.outline(round.stream().map(p -> mapped(toMm, p)).toList(), visible);
      }
    }
    for (int i = 0; stroked && i < straights.size(); i += 2) {
      found.line(mapped(toMm, straights.get(i)), mapped(toMm, straights.get(i + 1)), visible);
    }
  }
}
