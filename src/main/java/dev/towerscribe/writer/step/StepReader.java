package dev.towerscribe.writer.step;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.Vec3;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Follows a file from its product down to its points. */
final class StepReader {
  private static final double UNIT = 1e-12;

  /** Farther than any part, and near enough for sums and products to stay finite. */
  private static final double FAR_MM = 1e6;

  private final List<StepValue.Items> header;
  private final Map<Integer, StepValue.Items> data;
  private final Map<Integer, StepShape.EdgeCurve> edges = new TreeMap<>();

  private StepReader(StepParser.Sections sections) {
    header = sections.header();
    data = sections.data();
  }

  /**
   * A part as found.
   *
   * @param name the product's name
   * @param nearMm how far edges that meet may lie apart by the file's own word
   * @param faces the faces of the one shell
   */
  record Part(String name, double nearMm, List<StepShape.Face> faces) {}

  static Part read(byte[] file) throws Unreadable {
    StepReader reader = new StepReader(StepParser.parse(file));
    reader.readHeader();
    Part part = reader.readProduct();
    reader.mustReachEverything();
    return part;
  }

  private void readHeader() throws Unreadable {
    List<String> names = header.stream().map(StepValue.Items::keyword).toList();
    must(names.equals(List.of("FILE_DESCRIPTION", "FILE_NAME", "FILE_SCHEMA")), "another header");
    must(header.get(0).text(1).equals("2;1"), "another level of the encoding");
    must(
        header.get(2).items(0).text(0).equals("AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }"),
        "another schema");
  }

  private Part readProduct() throws Unreadable {
    StepValue.Items root = data.get(only("SHAPE_DEFINITION_REPRESENTATION"));
    StepValue.Items shape = entity(root.ref(0), "PRODUCT_DEFINITION_SHAPE");
    StepValue.Items definition = entity(shape.ref(2), "PRODUCT_DEFINITION");
    StepValue.Items formation = entity(definition.ref(2), "PRODUCT_DEFINITION_FORMATION");
    StepValue.Items product = entity(formation.ref(2), "PRODUCT");
    String name = product.text(1);
    must(product.text(0).equals(name), "a product whose number is not its name");
    must(header.get(1).text(0).equals(name), "a header with another name");
    StepValue.Items representation = entity(root.ref(1), "ADVANCED_BREP_SHAPE_REPRESENTATION");
    double nearMm = nearMm(representation.ref(2));
    List<Integer> items = representation.refs(1);
    must(items.size() == 2, "a representation of more or less than axes and a solid");
    StepShape.Placement axes = placement(items.get(0));
    must(
        axes.equals(
            new StepShape.Placement(new Vec3(0, 0, 0), new Vec3(0, 0, 1), new Vec3(1, 0, 0))),
        "axes other than the plan's");
    StepValue.Items solid = entity(items.get(1), "MANIFOLD_SOLID_BREP");
    StepValue.Items shell = entity(solid.ref(1), "CLOSED_SHELL");
    List<StepShape.Face> faces = new ArrayList<>();
    for (int id : shell.refs(1)) {
      faces.add(face(id));
    }
    must(!faces.isEmpty(), "a shell without faces");
    return new Part(name, nearMm, faces);
  }

  private double nearMm(int id) throws Unreadable {
    StepValue.Items context = entity(id);
    List<Integer> units = part(context, "GLOBAL_UNIT_ASSIGNED_CONTEXT").refs(0);
    must(units.size() == 3, "not three units");
    mustBeUnit(units.get(0), "LENGTH_UNIT", "MILLI", "METRE");
    mustBeUnit(units.get(1), "PLANE_ANGLE_UNIT", "", "RADIAN");
    mustBeUnit(units.get(2), "SOLID_ANGLE_UNIT", "", "STERADIAN");
    List<Integer> near = part(context, "GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT").refs(0);
    must(near.size() == 1, "not one uncertainty");
    StepValue.Items measure = entity(near.get(0), "UNCERTAINTY_MEASURE_WITH_UNIT");
    must(measure.ref(1) == units.get(0), "an uncertainty in another unit");
    return measure.items(0).real(0);
  }

  private void mustBeUnit(int id, String kind, String prefix, String unit) throws Unreadable {
    StepValue.Items entity = entity(id);
    part(entity, kind);
    StepValue.Items si = part(entity, "SI_UNIT");
    StepValue wanted = prefix.isEmpty() ? new StepValue.Open() : new StepValue.Word(prefix);
    must(
        si.values().equals(List.of(wanted, new StepValue.Word(unit))),
        "a unit that is not " + unit);
  }

  private StepShape.Face face(int id) throws Unreadable {
    StepValue.Items face = entity(id, "ADVANCED_FACE");
    List<StepShape.Loop> loops = new ArrayList<>();
    for (int boundId : face.refs(1)) {
      StepValue.Items bound = entity(boundId);
      boolean outer = bound.keyword().equals("FACE_OUTER_BOUND");
      must(outer || bound.keyword().equals("FACE_BOUND"), "a bound of kind " + bound.keyword());
      must(bound.logical(2), "a bound against its loop, #" + boundId);
      List<StepShape.Use> uses = new ArrayList<>();
      for (int useId : entity(bound.ref(1), "EDGE_LOOP").refs(1)) {
        StepValue.Items use = entity(useId, "ORIENTED_EDGE");
        uses.add(new StepShape.Use(edge(use.ref(3)), use.logical(4)));
      }
      must(!uses.isEmpty(), "a loop without edges, #" + boundId);
      loops.add(new StepShape.Loop(outer, uses));
    }
    must(!loops.isEmpty(), "face #" + id + " without bounds");
    return new StepShape.Face(id, surface(face.ref(2)), face.logical(3), loops);
  }

  private StepShape.Surface surface(int id) throws Unreadable {
    StepValue.Items surface = entity(id);
    StepShape.Placement at = placement(surface.ref(1));
    return switch (surface.keyword()) {
      case "PLANE" -> new StepShape.Plane(at);
      case "CYLINDRICAL_SURFACE" -> {
        must(isRadius(surface.real(2)), "a cylinder without radius, #" + id);
        yield new StepShape.Round(at, surface.real(2), 0, false);
      }
      case "CONICAL_SURFACE" -> {
        double half = surface.real(3);
        must(
            isRadius(surface.real(2)) && half > 0 && half < Math.PI / 2,
            "a cone without radius or angle, #" + id);
        yield new StepShape.Round(at, surface.real(2), Math.tan(half), true);
      }
      default -> throw new Unreadable("a surface of kind " + surface.keyword());
    };
  }

  private static boolean isRadius(double mm) {
    return mm > 0 && mm <= FAR_MM;
  }

  private StepShape.EdgeCurve edge(int id) throws Unreadable {
    StepShape.EdgeCurve known = edges.get(id);
    if (known != null) {
      return known;
    }
    StepValue.Items edge = entity(id, "EDGE_CURVE");
    must(edge.logical(4), "an edge against its curve, #" + id);
    Vec3 start = point(entity(edge.ref(1), "VERTEX_POINT").ref(1));
    Vec3 end = point(entity(edge.ref(2), "VERTEX_POINT").ref(1));
    StepShape.EdgeCurve read =
        new StepShape.EdgeCurve(id, edge.ref(1), edge.ref(2), start, end, curve(edge.ref(3)));
    edges.put(id, read);
    return read;
  }

  private StepShape.Curve curve(int id) throws Unreadable {
    StepValue.Items curve = entity(id);
    switch (curve.keyword()) {
      case "LINE":
        StepValue.Items vector = entity(curve.ref(2), "VECTOR");
        must(vector.real(2) > 0, "a vector without length");
        return new StepShape.Line(point(curve.ref(1)), direction(vector.ref(1)));
      case "CIRCLE":
        must(isRadius(curve.real(2)), "a circle without radius, #" + id);
        return new StepShape.Circle(placement(curve.ref(1)), curve.real(2));
      default:
        throw new Unreadable("a curve of kind " + curve.keyword());
    }
  }

  private StepShape.Placement placement(int id) throws Unreadable {
    StepValue.Items placement = entity(id, "AXIS2_PLACEMENT_3D");
    Vec3 axis = direction(placement.ref(2));
    Vec3 reference = direction(placement.ref(3));
    must(Math.abs(axis.dot(reference)) <= UNIT, "axes that are not square, #" + id);
    return new StepShape.Placement(point(placement.ref(1)), axis, reference);
  }

  private Vec3 direction(int id) throws Unreadable {
    Vec3 direction = triple(entity(id, "DIRECTION").items(1));
    must(Math.abs(direction.norm() - 1) <= UNIT, "a direction not of length one, #" + id);
    return direction;
  }

  private Vec3 point(int id) throws Unreadable {
    return triple(entity(id, "CARTESIAN_POINT").items(1));
  }

  private static Vec3 triple(StepValue.Items items) throws Unreadable {
    must(items.values().size() == 3, "not three coordinates");
    for (int i = 0; i < 3; i++) {
      must(Math.abs(items.real(i)) <= FAR_MM, "a coordinate beyond all bounds");
    }
    return new Vec3(items.real(0), items.real(1), items.real(2));
  }

  private StepValue.Items entity(int id) throws Unreadable {
    must(data.containsKey(id), "no entity #" + id);
    return data.get(id);
  }

  private StepValue.Items entity(int id, String keyword) throws Unreadable {
    StepValue.Items entity = data.get(id);
    must(entity != null && entity.keyword().equals(keyword), "#" + id + " is not a " + keyword);
    return entity;
  }

  private static StepValue.Items part(StepValue.Items complex, String keyword) throws Unreadable {
    for (StepValue value : complex.values()) {
      if (value instanceof StepValue.Items part && part.keyword().equals(keyword)) {
        return part;
      }
    }
    throw new Unreadable("no " + keyword + " where one must be");
  }

  private int only(String keyword) throws Unreadable {
    List<Integer> found =
        data.keySet().stream().filter(id -> data.get(id).keyword().equals(keyword)).toList();
    must(found.size() == 1, found.size() + " of " + keyword + ", not one");
    return found.get(0);
  }

  /** A reading program might show what hangs on nothing, so there may not be any. */
  private void mustReachEverything() throws Unreadable {
    Set<Integer> reached = new HashSet<>();
    Deque<StepValue> open = new ArrayDeque<>();
    open.add(new StepValue.Ref(only("SHAPE_DEFINITION_REPRESENTATION")));
    open.add(new StepValue.Ref(only("APPLICATION_PROTOCOL_DEFINITION")));
    open.add(new StepValue.Ref(only("PRODUCT_RELATED_PRODUCT_CATEGORY")));
    while (!open.isEmpty()) {
      StepValue next = open.pop();
      if (next instanceof StepValue.Ref ref && reached.add(ref.id())) {
        must(data.containsKey(ref.id()), "no entity #" + ref.id());
        open.push(data.get(ref.id()));
      } else if (next instanceof StepValue.Items items) {
        items.values().forEach(open::push);
      }
    }
    must(reached.size() == data.size(), "entities that belong to nothing");
  }
}
