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
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Print;
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
    facts.put("title", job.title());
    facts.put("date", job.date());
    facts.put("units", job.units());
    job.sides().values().forEach(side -> side(side.side().word(), side));
    drawing(job.drawing());
    jig(job.jig());
    job.load().ifPresent(this::load);
  }

  private void drawing(DrawingInfo d) {
    facts.put("drawing.number", d.number());
    facts.put("drawing.owner", d.owner());
    facts.put("drawing.created-by", d.createdBy());
    facts.put("drawing.approved-by", d.approvedBy());
    facts.put("drawing.revision", d.revision());
    facts.put("drawing.projection", d.projection());
  }

  private void jig(JigRules j) {
    facts.put("jig.thickness", j.thicknessMm());
    facts.put("jig.margin", j.marginMm());
    facts.put("jig.bore", j.boreMm());
    facts.put("jig.outside", j.outsideMm());
    facts.put("jig.fit", j.fit());
  }

  private void load(Load l) {
    facts.put("load.spring", l.springNPerMm());
    facts.put("load.bump", l.bumpMm());
    facts.put("load.static", l.staticN());
    facts.put("load.seat", l.seat());
    facts.put("load.factor", l.factor());
    facts.put("load.bolt-class", l.boltClass());
    facts.put("load.friction", l.friction());
  }

  private void side(String at, SideJob side) {
    facts.put(at, side.side());
    tower(at + ".tower", side.tower());
    plate(at + ".plate", side.plate());
    mount(at + ".mount", side.mount());
    facts.put(at + ".holes.fit", side.holes().fit());
    facts.put(at + ".holes.edge", side.holes().edgeRule());
    cut(at + ".cut", side.cut());
    tools(at + ".tools", side.tools());
    print(at + ".print", side.print());
    side.strut().ifPresent(s -> strut(at + ".strut", s));
    side.axis().ifPresent(a -> axis(at + ".axis", a));
    side.aims().ifPresent(a -> aims(at + ".aims", a));
  }

  private void tower(String at, Tower t) {
    facts.put(at + ".sheet", t.sheetMm());
    facts.put(at + ".opening", t.opening());
    facts.put(at + ".mark", t.mark());
    facts.put(at + ".lean.inboard", t.lean().inboard());
    facts.put(at + ".lean.rearward", t.lean().rearward());
    facts.put(at + ".crown.across", t.crown().map(c -> c.acrossMm()));
    facts.put(at + ".crown.rise", t.crown().map(c -> c.riseMm()));
    facts.put(at + ".pivot-height", t.pivotHeightMm());
    facts.put(at + ".bolting-face", t.boltingFace());
    facts.put(at + ".wall", t.wall());
    for (Landmark l : t.landmarks()) {
      facts.put(at + ".landmark.name", l.name());
      facts.put(at + ".landmark.at", l.at());
      facts.put(at + ".landmark.diameter", l.diameterMm());
    }
    for (Straightedge s : t.straightedges()) {
      facts.put(at + ".straightedge.name", s.name());
      facts.put(at + ".straightedge.from", s.from());
      facts.put(at + ".straightedge.to", s.to());
    }
    for (KeepOut k : t.keepOuts()) {
      facts.put(at + ".keep-out.name", k.name());
      facts.put(at + ".keep-out.outline", k.outline());
      facts.put(at + ".keep-out.margin", k.marginMm());
    }
    t.brackets().forEach(b -> bracket(at + ".bracket", b));
  }

  private void bracket(String at, Bracket b) {
    facts.put(at + ".name", b.name());
    facts.put(at + ".outline", b.outline());
    facts.put(at + ".underside", b.undersideMm());
    facts.put(at + ".least-width", b.leastWidthMm());
    for (Bracket.Fastener f : b.fasteners()) {
      facts.put(at + ".fastener.at", f.at());
      facts.put(at + ".fastener.diameter", f.diameterMm());
    }
  }

  private void plate(String at, Plate p) {
    facts.put(at + ".name", p.name());
    facts.put(at + ".thickness", p.thicknessMm());
    facts.put(at + ".outline", p.outline());
    facts.put(at + ".handed", p.handed());
    facts.put(at + ".slot.from", p.slot().fromMm());
    facts.put(at + ".slot.to", p.slot().toMm());
    facts.put(at + ".slot.index", p.slot().indexMm());
    facts.put(at + ".bearing.x", p.bearingXMm());
    facts.put(at + ".bearing.height", p.bearingHeightMm());
    facts.put(at + ".moving.diameter", p.movingDiameterMm());
    facts.put(at + ".moving.clearance", p.movingClearanceMm());
    facts.put(at + ".cover", p.coverMm());
    facts.put(at + ".wall-gap", p.wallGapMm());
    p.bolts().forEach(b -> bolt(at + ".bolt", b));
    make(at + ".make", p.make());
  }

  private void bolt(String at, Bolt b) {
    facts.put(at + ".name", b.name());
    facts.put(at + ".at", b.at());
    thread(at + ".thread", b.thread());
    facts.put(at + ".flats", b.flatsMm());
    facts.put(at + ".washer", b.washerMm());
    facts.put(at + ".plate-hole", b.plateHoleMm());
    facts.put(at + ".recess", b.recess());
  }

  private void thread(String at, Thread t) {
    facts.put(at + ".name", t.name());
    facts.put(at + ".nominal", t.nominalMm());
    facts.put(at + ".fine", t.fineMm());
    facts.put(at + ".medium", t.mediumMm());
    facts.put(at + ".coarse", t.coarseMm());
    facts.put(at + ".washer", t.washerMm());
    facts.put(at + ".hole-source", t.holeSource());
    facts.put(at + ".washer-source", t.washerSource());
  }

  private void make(String at, PlateMake m) {
    facts.put(at + ".material", m.material());
    facts.put(at + ".density", m.densityGPerCm3());
    facts.put(at + ".finish", m.finish());
    facts.put(at + ".edge-break", m.edgeBreakMm());
    facts.put(at + ".general", m.general());
    facts.put(at + ".slot.width", m.slotWidthMm());
    facts.put(at + ".slot.ends", m.slotEnds());
    facts.put(at + ".slot.corner", m.slotCornerMm());
    facts.put(at + ".index.diameter", m.indexHoles().map(h -> h.diameterMm()));
    facts.put(at + ".index.offset", m.indexHoles().map(h -> h.offsetMm()));
    facts.put(at + ".index.fit", m.indexHoles().map(h -> h.fit()));
    facts.put(at + ".bearing.diameter", m.bearingBore().map(b -> b.diameterMm()));
    facts.put(at + ".bearing.fit", m.bearingBore().map(b -> b.fit()));
    m.slider()
        .ifPresent(
            s -> {
              facts.put(at + ".slider", true);
              facts.put(at + ".slider.length", s.lengthMm());
              facts.put(at + ".slider.width", s.widthMm());
              facts.put(at + ".slider.thickness", s.thicknessMm());
              facts.put(at + ".slider.corner", s.cornerMm());
            });
    facts.put(at + ".fastening", m.fastening());
  }

  private void mount(String at, Mount m) {
    facts.put(at + ".rotation", m.rotation());
    facts.put(at + ".rearward", m.rearwardMm());
    facts.put(at + ".inboard", m.inboardMm());
    facts.put(at + ".setting", m.settingMm());
  }

  private void cut(String at, CutRules c) {
    facts.put(at + ".keep", c.keepMm());
    facts.put(at + ".rough", c.roughMm());
    facts.put(at + ".corner", c.cornerMm());
    facts.put(at + ".starter", c.starterMm());
  }

  private void tools(String at, Tools t) {
    facts.put(at + ".socket", t.socketMm());
    facts.put(at + ".depth", t.depthMm());
    facts.put(at + ".room", t.roomMm());
    facts.put(at + ".assumed", t.assumed());
  }

  private void print(String at, Print p) {
    facts.put(at + ".paper", p.paper());
    facts.put(at + ".margin", p.marginMm());
    facts.put(at + ".scale.across", p.scaleAcross());
    facts.put(at + ".scale.along", p.scaleAlong());
    facts.put(at + ".skew", p.skew());
  }

  private void strut(String at, StrutPoints s) {
    facts.put(at + ".top", s.top());
    facts.put(at + ".ball-joint", s.ballJoint());
    facts.put(at + ".arm-front", s.armFront());
    facts.put(at + ".arm-rear", s.armRear());
    facts.put(at + ".strut-lower", s.strutLower());
    facts.put(at + ".tie-inner", s.tieInner());
    facts.put(at + ".tie-outer", s.tieOuter());
    facts.put(at + ".wheel-centre", s.wheelCentre());
    facts.put(at + ".tyre-radius", s.tyreRadiusMm());
    facts.put(at + ".camber", s.camber());
    facts.put(at + ".toe", s.toe());
    facts.put(at + ".ride", s.rideMm());
    plusMinus(at + ".plus-minus", s.plusMinus());
    facts.put(at + ".knuckle.pivot", s.knuckleBolt().map(k -> k.pivot()));
    facts.put(at + ".knuckle.from", s.knuckleBolt().map(k -> k.from()));
    facts.put(at + ".knuckle.to", s.knuckleBolt().map(k -> k.to()));
    facts.put(at + ".limits.bump", s.limits().bumpMm());
    facts.put(at + ".limits.droop", s.limits().droopMm());
    facts.put(at + ".limits.steer", s.limits().steer());
  }

  /** The points in the order of the strut's own. */
  private void plusMinus(String at, PlusMinus p) {
    facts.put(at + ".points", p.points());
    facts.put(at + ".camber", p.camber());
  }

  private void axis(String at, MeasuredAxis a) {
    facts.put(at + ".caster", a.caster());
    facts.put(at + ".inclination", a.inclination());
    facts.put(at + ".length", a.lengthMm());
    facts.put(at + ".camber", a.camber());
  }

  private void aims(String at, Aims a) {
    facts.put(at + ".use", a.use());
    facts.put(at + ".caster-from", a.casterFrom());
    facts.put(at + ".caster-to", a.casterTo());
    facts.put(at + ".camber", a.camber());
    facts.put(at + ".camber-limit", a.camberLimit());
  }
}
