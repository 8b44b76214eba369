package dev.towerscribe.writer.step;

import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Reads a written STEP file anew and compares the solid in it with the part it must hold. */
public final class StepProof {
  /**
   * How far the volume calculated from the file's faces may differ from that of the part, 1: sums
   * of some hundred terms, each some hundred times the result and right to 1e-16.
   */
  private static final double VOLUME = 1e-9;

  private static final int DECIMALS = 6;
  private static final int QUARTERS = 4;

  private StepProof() {}

  /**
   * Proves a file against its part: that it can be read, is in millimetres and bears the name; that
   * its faces make one closed shell with every edge used once forward and once backward and as many
   * holes as the part; that edges lie on their faces and every face looks out of the metal; and
   * that volume, box, sides, levels, cylinders and cones are the part's, to {@link
   * Tolerances#COMPUTED_MM} and a relative 1e-9 of the volume.
   *
   * @param step the file
   * @param solid the part that was to be written
   * @param name what the file was to say of it
   * @return one line for each mismatch; empty if the file is proved
   */
  public static List<String> check(byte[] step, FlatSolid solid, PartName name) {
    List<String> mismatches = new ArrayList<>();
    try {
      StepReader.Part part = StepReader.read(step);
      if (!part.name().equals(name.name())) {
        mismatches.add("the part is named " + part.name() + ", not " + name.name());
      }
      if (!(part.nearMm() > 0 && part.nearMm() <= Tolerances.SAME_POINT_MM)) {
        mismatches.add("the file's uncertainty is " + Numbers.exact(part.nearMm()) + " mm");
      }
      checkShell(part.faces(), solid, mismatches);
    } catch (Unreadable e) {
      mismatches.add("the file cannot be read back: " + e.getMessage());
    }
    return mismatches;
  }

  private static void checkShell(
      List<StepShape.Face> faces, FlatSolid solid, List<String> mismatches) {
    int holes = solid.cutouts().size() + solid.bores().size();
    mismatches.addAll(StepTopology.faults(faces, holes));
    double triple = 0;
    for (StepShape.Face face : faces) {
      triple += StepFaces.tripleVolume(face, Tolerances.SAME_POINT_MM, mismatches);
    }
    double wanted = solid.volumeMm3();
    if (!(Math.abs(triple / 3 - wanted) <= VOLUME * wanted)) {
      mismatches.add(
          "the volume is %s mm3, not %s"
              .formatted(Numbers.plain(triple / 3, DECIMALS), Numbers.plain(wanted, DECIMALS)));
    }
    checkBox(faces, solid, mismatches);
    mismatches.addAll(StepWalls.faults(faces, solid));
  }

  /** A flat part's box is that of its edges: each wall is straight between two level edges. */
  private static void checkBox(
      List<StepShape.Face> faces, FlatSolid solid, List<String> mismatches) {
    List<Vec3> points =
        faces.stream()
            .flatMap(face -> face.loops().stream())
            .flatMap(loop -> loop.uses().stream())
            .flatMap(use -> extremes(use.edge()).stream())
            .toList();
    double lowest = points.stream().mapToDouble(Vec3::z).min().orElseThrow();
    double highest = points.stream().mapToDouble(Vec3::z).max().orElseThrow();
    Box box =
        points.stream()
            .map(p -> Box.around(new Vec2(p.x(), p.y()), 0))
            .reduce(Box::union)
            .orElseThrow();
    Box wanted = solid.outline().bounds();
    boolean same =
        near(box.minX(), wanted.minX())
            && near(box.minY(), wanted.minY())
            && near(box.maxX(), wanted.maxX())
            && near(box.maxY(), wanted.maxY())
            && near(lowest, 0)
            && near(highest, solid.thicknessMm());
    if (!same) {
      mismatches.add(
          "the box is %s mm, not %s"
              .formatted(text(box, lowest, highest), text(wanted, 0, solid.thicknessMm())));
    }
  }

  /** An edge's ends, and where an arc lies farthest along x or y. */
  private static List<Vec3> extremes(StepShape.EdgeCurve edge) {
    List<Vec3> points = new ArrayList<>(List.of(edge.start(), edge.end()));
    if (edge.curve() instanceof StepShape.Circle circle) {
      Vec3 centre = circle.at().origin();
      for (int quarter = 0; quarter < QUARTERS; quarter++) {
        double along = quarter % 2 == 0 ? circle.radius() : -circle.radius();
        Vec3 way = quarter < 2 ? new Vec3(along, 0, 0) : new Vec3(0, along, 0);
        Vec3 p = centre.plus(way);
        double turned = circle.at().angle(p) - circle.at().angle(edge.start());
        if ((turned < 0 ? turned + 2 * Math.PI : turned) <= edge.turn(circle)) {
          points.add(p);
        }
      }
    }
    return points;
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= Tolerances.COMPUTED_MM;
  }

  private static String text(Box box, double lowMm, double highMm) {
    return DoubleStream.of(box.minX(), box.minY(), lowMm, box.maxX(), box.maxY(), highMm)
        .mapToObj(mm -> Numbers.plain(mm, DECIMALS))
        .collect(Collectors.joining(", "));
  }
}
