package dev.towerscribe.store;

import dev.towerscribe.model.Aims;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.JigRules;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Load;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.Thread;
import dev.towerscribe.model.Tools;
import dev.towerscribe.model.Tower;

/**
 * Every fact of a job, as any of them may decide what a sheet shows. Comments, the order of keys
 * and the unit that a length was written in are no facts: files that say the same have one mark.
 */
final class JobFacts {
  private final Facts facts = new Facts();

  private JobFacts() {}

  /**
   * The facts of a job.
   *
   * @param job any job
   * @return its facts; of several things of a kind each begins with its name
   */
  static Facts of(Job job) {
    JobFacts all = new JobFacts();
    all.job(job);
    return all.facts;
  }

  private void job(Job job) {
    facts.put("title", job.title()).put("date", job.date()).put("units", job.units());
    job.sides().values().forEach(side -> side(side.side().word(), side));
    DrawingInfo d = job.drawing();
    facts.all("drawing", "number owner created-by", d.number(), d.owner(), d.createdBy());
    facts.all("drawing", "approved-by revision", d.approvedBy(), d.revision());
    facts.put("drawing.projection", d.projection());
    JigRules j = job.jig();
    facts.all("jig", "thickness margin bore", j.thicknessMm(), j.marginMm(), j.boreMm());
    facts.all("jig", "outside fit", j.outsideMm(), j.fit());
    job.load().ifPresent(this::load);
  }

  private void load(Load l) {
    facts.all("load", "spring bump static", l.springNPerMm(), l.bumpMm(), l.staticN());
    facts.all("load", "factor bolt-class friction", l.factor(), l.boltClass(), l.friction());
  }

  private void side(String at, SideJob side) {
    facts.put(at, side.side());
    tower(at + ".tower", side.tower());
    plate(at + ".plate", side.plate());
    Mount m = side.mount();
    facts.all(at + ".mount", "rotation rearward", m.rotation(), m.rearwardMm());
    facts.all(at + ".mount", "inboard setting", m.inboardMm(), m.settingMm());
    Seating s = side.seating();
    facts.all(at + ".mount", "seat packing", s.stated(), s.packing());
    facts.all(at + ".mount", "rest rim", s.restMm(), s.rimMm());
    facts.all(at + ".holes", "fit edge", side.holes().fit(), side.holes().edgeRule());
    CutRules c = side.cut();
    facts.all(at + ".cut", "keep rough", c.keepMm(), c.roughMm());
    facts.all(at + ".cut", "corner starter", c.cornerMm(), c.starterMm());
    Tools t = side.tools();
    facts.all(at + ".tools", "socket depth", t.socketMm(), t.depthMm());
    facts.all(at + ".tools", "room assumed", t.roomMm(), t.assumed());
    Print p = side.print();
    facts.all(at + ".print", "paper margin", p.paper(), p.marginMm());
    facts.all(at + ".print", "scale.across scale.along", p.scaleAcross(), p.scaleAlong());
    facts.put(at + ".print.skew", p.skew());
    side.strut().ifPresent(points -> strut(at + ".strut", points));
    side.axis().ifPresent(a -> axis(at + ".axis", a));
    side.aims().ifPresent(a -> aims(at + ".aims", a));
  }

  private void tower(String at, Tower t) {
    facts.all(at, "sheet opening mark", t.sheetMm(), t.opening(), t.mark());
    facts.all(at + ".lean", "inboard rearward", t.lean().inboard(), t.lean().rearward());
    t.crown().ifPresent(c -> facts.all(at + ".crown", "across rise", c.acrossMm(), c.riseMm()));
    facts.put(at + ".pivot-height", t.pivotHeightMm());
    facts.all(at, "bolting-face wall", t.boltingFace(), t.wall());
    for (Landmark l : t.landmarks()) {
      facts.all(at + ".landmark", "name at diameter", l.name(), l.at(), l.diameterMm());
    }
    for (Straightedge s : t.straightedges()) {
      facts.all(at + ".straightedge", "name from to", s.name(), s.from(), s.to());
    }
    for (KeepOut k : t.keepOuts()) {
      facts.all(at + ".keep-out", "name outline margin", k.name(), k.outline(), k.marginMm());
    }
    t.brackets().forEach(b -> bracket(at + ".bracket", b));
    t.lip()
        .ifPresent(
            l -> {
              facts.all(at + ".lip", "turned height", l.turned(), l.heightMm());
              facts.all(at + ".lip", "radius flat", l.radiusMm(), l.flat());
            });
    t.secondSkin()
        .ifPresent(s -> facts.all(at + ".second-skin", "sheet apart", s.sheetMm(), s.apartMm()));
  }

  private void bracket(String at, Bracket b) {
    facts.all(at, "name outline", b.name(), b.outline());
    facts.all(at, "underside least-width", b.undersideMm(), b.leastWidthMm());
    for (Bracket.Fastener f : b.fasteners()) {
      facts.all(at + ".fastener", "at diameter", f.at(), f.diameterMm());
    }
  }

  private void plate(String at, Plate p) {
    facts.all(at, "name thickness outline", p.name(), p.thicknessMm(), p.outline());
    facts.put(at + ".handed", p.handed());
    Plate.Slot slot = p.slot();
    facts.all(at + ".slot", "from to index", slot.fromMm(), slot.toMm(), slot.indexMm());
    facts.all(at + ".bearing", "x height", p.bearingXMm(), p.bearingHeightMm());
    facts.all(at + ".moving", "diameter clearance", p.movingDiameterMm(), p.movingClearanceMm());
    facts.all(at, "cover wall-gap", p.coverMm(), p.wallGapMm());
    p.bolts().forEach(b -> bolt(at + ".bolt", b));
    make(at + ".make", p.make());
  }

  private void bolt(String at, Bolt b) {
    facts.all(at, "name at", b.name(), b.at());
    thread(at + ".thread", b.thread());
    facts.all(at, "flats washer", b.flatsMm(), b.washerMm());
    facts.all(at, "plate-hole recess", b.plateHoleMm(), b.recess());
  }

  private void thread(String at, Thread t) {
    facts.all(at, "name nominal", t.name(), t.nominalMm());
    facts.all(at, "fine medium coarse", t.fineMm(), t.mediumMm(), t.coarseMm());
    facts.put(at + ".washer", t.washerMm());
    facts.all(at, "hole-source washer-source", t.holeSource(), t.washerSource());
  }

  private void make(String at, PlateMake m) {
    facts.all(at, "material density finish", m.material(), m.densityGPerCm3(), m.finish());
    facts.all(at, "edge-break general", m.edgeBreakMm(), m.general());
    facts.all(at + ".slot", "width ends corner", m.slotWidthMm(), m.slotEnds(), m.slotCornerMm());
    m.indexHoles()
        .ifPresent(
            h ->
                facts.all(
                    at + ".index", "diameter offset fit", h.diameterMm(), h.offsetMm(), h.fit()));
    m.bearingBore()
        .ifPresent(b -> facts.all(at + ".bearing", "diameter fit", b.diameterMm(), b.fit()));
    m.slider().ifPresent(s -> slider(at + ".slider", s));
    facts.put(at + ".fastening", m.fastening());
  }

  private void slider(String at, PlateMake.SliderSize s) {
    facts.put(at, true);
    facts.all(at, "length width", s.lengthMm(), s.widthMm());
    facts.all(at, "thickness corner", s.thicknessMm(), s.cornerMm());
  }

  private void strut(String at, StrutPoints s) {
    facts.all(at, "top ball-joint", s.top(), s.ballJoint());
    facts.all(at, "arm-front arm-rear", s.armFront(), s.armRear());
    facts.put(at + ".strut-lower", s.strutLower());
    facts.all(at, "tie-inner tie-outer", s.tieInner(), s.tieOuter());
    facts.all(at, "wheel-centre tyre-radius", s.wheelCentre(), s.tyreRadiusMm());
    facts.all(at, "camber toe ride", s.camber(), s.toe(), s.rideMm());
    // The points in the order of the strut's own.
    facts.all(at + ".plus-minus", "points camber", s.plusMinus().points(), s.plusMinus().camber());
    s.knuckleBolt()
        .ifPresent(k -> facts.all(at + ".knuckle", "pivot from to", k.pivot(), k.from(), k.to()));
    StrutPoints.Limits l = s.limits();
    facts.all(at + ".limits", "bump droop steer", l.bumpMm(), l.droopMm(), l.steer());
    facts.put(at + ".limits.droop-stated", l.droopStated());
  }

  private void axis(String at, MeasuredAxis a) {
    facts.all(at, "caster inclination", a.caster(), a.inclination());
    facts.all(at, "length camber", a.lengthMm(), a.camber());
  }

  private void aims(String at, Aims a) {
    facts.all(at, "use caster-from caster-to", a.use(), a.casterFrom(), a.casterTo());
    facts.all(at, "camber camber-limit", a.camber(), a.camberLimit());
  }
}
