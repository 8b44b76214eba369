package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A small plot. Each curve's name stands at its right end, joined to it by a short line, so that
 * neither colour nor a legend is needed.
 *
 * @param title above it
 * @param units what is plotted upward and in what, under the title
 * @param across what runs across, under the plot
 * @param ticks marks across, ascending
 * @param from left end, in the units of the marks
 * @param to right end
 * @param curves what is plotted, at least one point in all
 * @param widthMm its width
 * @param heightMm its height
 */
record Plot(
    String title,
    String units,
    String across,
    List<Double> ticks,
    double from,
    double to,
    List<Curve> curves,
    double widthMm,
    double heightMm)
    implements Fragment {
  private static final double TITLE = 3.0;
  private static final double LEFT = 11.0;
  private static final double LEADER = 3.0;

  /** From the plot to the marks' names, clear of the lowest name beside it. */
  private static final double DROP = 1.5;

  private static final double NAME_GAP = 0.8;

  /** Distance of two names' base lines. */
  private static final double NAME_PITCH = 3.9;

  /** Fewest steps of the upward scale. */
  private static final int LEAST_STEPS = 2;

  /** Scale of a plot on which nothing changes. */
  private static final double LEAST_RANGE = 0.1;

  /**
   * A curve.
   *
   * @param name at its right end
   * @param pen its line
   * @param runs its points; a gap lies between two runs
   */
  record Curve(String name, Pen pen, List<List<Vec2>> runs) {
    Curve {
      runs = runs.stream().map(List::copyOf).filter(r -> !r.isEmpty()).toList();
    }

    private Vec2 last() {
      List<Vec2> run = runs.get(runs.size() - 1);
      return run.get(run.size() - 1);
    }
  }

  Plot {
    curves = curves.stream().filter(c -> !c.runs().isEmpty()).toList();
    ticks = List.copyOf(ticks);
  }

  /** The upward scale: a step of 1, 2 or 5 times a power of ten, and its ends on steps. */
  private record Scale(double low, double high, double step) {
    static Scale of(List<Curve> curves) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (Curve curve : curves) {
        for (List<Vec2> run : curve.runs()) {
          for (Vec2 p : run) {
            low = Math.min(low, p.y());
            high = Math.max(high, p.y());
          }
        }
      }
      if (high - low < LEAST_RANGE) {
        double middle = (low + high) / 2;
        low = middle - LEAST_RANGE / 2;
        high = middle + LEAST_RANGE / 2;
      }
      double step = step((high - low) / LEAST_STEPS);
      return new Scale(Math.floor(low / step) * step, Math.ceil(high / step) * step, step);
    }

    private static double step(double most) {
      double power = Math.pow(10, Math.floor(Math.log10(most)));
      double times = most / power;
      return power * (times >= 5 ? 5 : times >= 2 ? 2 : 1);
    }

    int steps() {
      return (int) Math.round((high - low) / step);
    }

    int decimals() {
      return step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
    }
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double names =
        curves.stream()
            .mapToDouble(c -> Lettering.width(c.name(), TextStyle.SMALL))
            .max()
            .orElse(0);
    double x1 = leftMm + LEFT;
    double x2 = leftMm + widthMm - names - LEADER - NAME_GAP;
    double y2 = topMm - TextStyle.lineMm(TITLE) - TextStyle.lineMm(TextStyle.SMALL) - 2.5;
    double y1 = topMm - heightMm + 2 * TextStyle.lineMm(TextStyle.SMALL) + DROP;
    notes.text(leftMm, TextStyle.baseMm(topMm, TITLE), TITLE, Align.START, title);
    double second = topMm - TextStyle.lineMm(TITLE);
    notes.text(
        leftMm, TextStyle.baseMm(second, TextStyle.SMALL), TextStyle.SMALL, Align.START, units);
    Scale scale = Scale.of(curves);
    for (int i = 0; i <= scale.steps(); i++) {
      double value = scale.low() + i * scale.step();
      double y = y1 + (y2 - y1) * i / scale.steps();
      boolean zero = Math.abs(value) < scale.step() / 1000;
      notes.line(x1, y, x2, y, zero ? Pen.OUTLINE : Pen.FINE);
      notes.text(
          x1 - 1.2,
          y - TextStyle.SMALL / 2,
          TextStyle.SMALL,
          Align.END,
          Numbers.fixed(value, scale.decimals()));
    }
    for (double tick : ticks) {
      double x = x1 + (x2 - x1) * (tick - from) / (to - from);
      notes.line(x, y1 - 1.0, x, y2, tick == 0.0 ? Pen.OUTLINE : Pen.FINE);
      notes.text(
          x,
          TextStyle.baseMm(y1 - DROP, TextStyle.SMALL),
          TextStyle.SMALL,
          Align.MIDDLE,
          Numbers.plain(tick, 1));
    }
    notes.text(
        (x1 + x2) / 2,
        TextStyle.baseMm(y1 - DROP - TextStyle.lineMm(TextStyle.SMALL), TextStyle.SMALL),
        TextStyle.SMALL,
        Align.MIDDLE,
        across);
    for (Curve curve : curves) {
      for (List<Vec2> run : curve.runs()) {
        List<Vec2> points = run.stream().map(p -> place(p, scale, x1, x2, y1, y2)).toList();
        if (points.size() > 1) {
          notes.path(points, curve.pen());
        }
      }
    }
    name(scale, new Vec2(x1, y1), new Vec2(x2, y2), out);
  }

  private Vec2 place(Vec2 p, Scale scale, double x1, double x2, double y1, double y2) {
    return new Vec2(
        x1 + (x2 - x1) * (p.x() - from) / (to - from),
        y1 + (y2 - y1) * (p.y() - scale.low()) / (scale.high() - scale.low()));
  }

  /** The names, from the lowest curve's end upward, each as near to its curve as there is room. */
  private void name(Scale scale, Vec2 low, Vec2 high, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    List<Curve> order =
        curves.stream().sorted(Comparator.comparingDouble(c -> c.last().y())).toList();
    List<Double> bases = new ArrayList<>();
    double least = low.y();
    for (Curve curve : order) {
      Vec2 end = place(curve.last(), scale, low.x(), high.x(), low.y(), high.y());
      double base = Math.max(least, end.y() - TextStyle.SMALL / 2);
      bases.add(base);
      least = base + NAME_PITCH;
    }
    double most = high.y() - TextStyle.SMALL / 2;
    for (int i = order.size() - 1; i >= 0; i--) {
      bases.set(i, Math.min(bases.get(i), most));
      most = bases.get(i) - NAME_PITCH;
    }
    for (int i = 0; i < order.size(); i++) {
      Vec2 end = place(order.get(i).last(), scale, low.x(), high.x(), low.y(), high.y());
      double x = high.x() + LEADER;
      notes.line(end.x(), end.y(), x, bases.get(i) + TextStyle.SMALL / 2, Pen.FINE);
      notes.text(x + NAME_GAP, bases.get(i), TextStyle.SMALL, Align.START, order.get(i).name());
    }
  }
}
