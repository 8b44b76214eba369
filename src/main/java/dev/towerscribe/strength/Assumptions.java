package dev.towerscribe.strength;

import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Seat;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a report takes for granted, in sentences. */
final class Assumptions {
  private Assumptions() {}

  static List<String> of(
      SideLayout layout, StrengthInput input, BoltGroup group, List<BoltFigures> bolts) {
    List<String> all = new ArrayList<>();
    all.add(
        ("One load: static load plus spring rate times bump, times the dynamic factor, along the"
             + " strut. Its direction is that of %s, and does not change with travel. The factor is"
             + " the user's choice; no published one for strut towers was found.")
            .formatted(input.towardFrom()));
    all.add(
        "Left out: side forces of cornering and braking at the strut's top, bump stops, damper"
            + " forces, rebound (it pulls the other way), fatigue, rust, heat. Each can be greater"
            + " than what is here.");
    all.add(
        "The plate is taken as rigid and all bolts as equally stiff, each tight in its hole"
            + " (elastic method, Shigley ch. 8). The tower's thin sheet is neither rigid nor"
            + " checked; nor are its welds, the plate, the slot's fixing and the bearing.");
    all.add(seat(input.seat()));
    if (group.inLine()) {
      all.add(
          "THE BOLTS LIE ON ONE LINE: what tips the plate about that line is held by its edges, not"
              + " by the bolts, and is not checked.");
    }
    all.add(
        "Use of a bolt: pull over proof load, plus shear over proof load / root 3 (distortion"
            + " energy, Shigley ch. 8), simply added; friction holds nothing and the thread is in"
            + " the shear plane. Preload is not in it.");
    all.add(
        ("Class %s for all bolts, proof loads of %s. Thickly zinc-coated bolts may have less (ISO"
                + " 10684).")
            .formatted(input.propertyClass().word(), BoltStrength.SOURCE));
    missing(bolts, all);
    all.add(
        ("Preload and torque: %s, friction %s in thread and under a hexagon head. A"
                + " torque from the plate's maker or an engineer wins; the vehicle maker's is for"
                + " strut and wheel nuts.")
            .formatted(Tightening.SOURCE, Numbers.plain(input.friction(), 2)));
    pressure(layout, input.seat(), all);
    return List.copyOf(all);
  }

  private static String seat(Seat seat) {
    return switch (seat) {
      case ON_TOP ->
          "The plate lies on top of the tower: the strut lifts it, and every bolt share along the"
              + " upward normal is a pull. Where a share is negative the plate presses on the tower"
              + " and the bolt holds nothing. Prying of the plate's edge is left out.";
      case UNDERNEATH ->
          "The plate lies underneath the tower: the strut presses it home, and only a share that"
              + " goes downward is a pull. Prying of the plate's edge is left out.";
    };
  }

  private static void missing(List<BoltFigures> bolts, List<String> all) {
    String noProof = names(bolts.stream().filter(b -> b.strength().isEmpty()).toList());
    if (!noProof.isEmpty()) {
      all.add("NO FIGURE: no published proof load is held for " + noProof + ".");
    }
    String noTorque = names(bolts.stream().filter(b -> b.tightening().isEmpty()).toList());
    if (!noTorque.isEmpty()) {
      all.add("NO FIGURE: no checked preload or torque is held for " + noTorque + ".");
    }
  }

  private static String names(List<BoltFigures> bolts) {
    return bolts.stream()
        .map(b -> "bolt " + b.name() + " (" + b.thread().name() + ")")
        .collect(Collectors.joining(", "));
  }

  private static void pressure(SideLayout layout, Seat seat, List<String> all) {
    all.add(
        "Pressure is a mean: the load square to the plane over the plate's area on the bolting"
            + " face, less the finished opening and the bolt holes, beside the same load over the"
            + " old mount's mark less the opening as found. Metal is pressed hardest near bolts and"
            + " edges.");
    if (seat == Seat.ON_TOP) {
      all.add(
          "With the plate on top these pressures only compare areas: the strut pulls the plate off"
              + " the tower, and the metal is pressed under the washers beneath.");
    }
    if (layout.job().tower().boltingFace().isEmpty()) {
      all.add(
          "No bolting face was measured: all metal under the plate is taken as flat and sound.");
    }
    if (layout.job().tower().crown().isPresent()) {
      all.add(
          "The tower is domed: a flat plate touches it on a part of that area only, and the true"
              + " pressure is higher.");
    }
  }
}
