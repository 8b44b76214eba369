package dev.towerscribe.writer.step;

import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Tolerances;
import java.nio.charset.StandardCharsets;

/**
 * Writes a flat part as a solid: a STEP file by ISO 10303-21 with the schema of application
 * protocol 214, one boundary representation in mm, the same bytes for the same part and name.
 *
 * <p>ISO 10303-214 is withdrawn; ISO 10303-242 took its place. The file keeps the older schema's
 * name: of a part without tolerances both hold the same entities, readers old and new know the old
 * name, and its exact spelling was compared with what a CAD kernel writes.
 */
public final class StepWriter {
  /** Stands for an unknown time: a value of the form that the standard asks for, and no news. */
  private static final String NO_DATE = "1970-01-01";

  private static final String SCHEMA = "AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }";

  private StepWriter() {}

  /**
   * Writes a part. Its x and y are the plan's, its lower face lies at z = 0. Numbers are written in
   * full: they read back as the same doubles. Straight edges and arcs stay what they are; only
   * whole circles and arcs beyond a half turn are cut in two.
   *
   * <p>The header's time stamp is midnight of the job's date. The form of that field allows neither
   * a date alone nor nothing, so without a date it is 1970-01-01T00:00:00, which nobody takes for
   * the truth (form of the field: from memory of ISO 10303-21, clause on the header section).
   *
   * @param solid the part; nothing of it may touch or cross
   * @param name what the file says of it
   * @return the file, ASCII
   * @throws IllegalArgumentException if an edge of the part is shorter than {@link
   *     Tolerances#SAME_POINT_MM}
   */
  public static byte[] write(FlatSolid solid, PartName name) {
    StepEntities entities = new StepEntities();
    String application =
        entities.add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
    entities.add(
        "APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,%s)"
            .formatted(application));
    String definition = product(entities, application, name);
    String context = context(entities);
    String axes = entities.placement(new Vec3(0, 0, 0), new Vec3(0, 0, 1), new Vec3(1, 0, 0));
    String brep = StepBrep.write(solid, entities);
    String shape = entities.add("PRODUCT_DEFINITION_SHAPE('',''," + definition + ")");
    String representation =
        entities.add(
            "ADVANCED_BREP_SHAPE_REPRESENTATION(%s,(%s,%s),%s)"
                .formatted(StepEntities.string(name.name()), axes, brep, context));
    entities.add("SHAPE_DEFINITION_REPRESENTATION(" + shape + "," + representation + ")");
    return (header(name) + "DATA;\n" + entities.lines() + "ENDSEC;\nEND-ISO-10303-21;\n")
        .getBytes(StandardCharsets.US_ASCII);
  }

  private static String header(PartName name) {
    String date = name.date().map(Object::toString).orElse(NO_DATE);
    return """
    ISO-10303-21;
    HEADER;
    FILE_DESCRIPTION((%s),'2;1');
    FILE_NAME(%s,'%sT00:00:00',(''),(%s),'Towerscribe','Towerscribe','');
    FILE_SCHEMA(('%s'));
    ENDSEC;
    """
        .formatted(
            StepEntities.string(name.description()),
            StepEntities.string(name.name()),
            date,
            StepEntities.string(name.organisation()),
            SCHEMA);
  }

  private static String product(StepEntities entities, String application, PartName name) {
    String productContext = entities.add("PRODUCT_CONTEXT(''," + application + ",'mechanical')");
    String text = StepEntities.string(name.name());
    String product =
        entities.add(
            "PRODUCT(%s,%s,%s,(%s))"
                .formatted(text, text, StepEntities.string(name.description()), productContext));
    entities.add("PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,(" + product + "))");
    String formation = entities.add("PRODUCT_DEFINITION_FORMATION('',''," + product + ")");
    String stage =
        entities.add("PRODUCT_DEFINITION_CONTEXT('part definition'," + application + ",'design')");
    return entities.add("PRODUCT_DEFINITION('design',''," + formation + "," + stage + ")");
  }

  /** Millimetres, radians, and how far edges that meet may lie apart. */
  private static String context(StepEntities entities) {
    String mm = entities.add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
    String radian = entities.add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
    String steradian = entities.add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
    String near =
        entities.add(
            ("UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(%s),%s,'distance_accuracy_value','edges"
                    + " that meet')")
                .formatted(StepEntities.real(Tolerances.SAME_POINT_MM), mm));
    return entities.add(
        ("(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((%s))"
                + "GLOBAL_UNIT_ASSIGNED_CONTEXT((%s,%s,%s))REPRESENTATION_CONTEXT('part','3D'))")
            .formatted(near, mm, radian, steradian));
  }
}
