// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Gathers what a plan puts on the tree: its meshes, and its marks with their words. */
final class Holdings {
  private static final double LINE_SHARE = 0.0014;
  private static final double THREAD_SHARE = 0.1;

  private final Skeleton skeleton;
  private final Stand stand;
  private final Pose pose;
  private final double size;
  private final Fittings fittings;
  private final List<Mesh> meshes = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private CoilStore coils = new CoilStore();
  private boolean fine = true;
  private Predicate<String> told = segment -> true;

  /**
   * @param size size of the tree [m]
   */
  Holdings(Skeleton skeleton, Stand stand, Pose pose, double size) {
    this.skeleton = skeleton;
    this.stand = stand;
    this.pose = pose;
    this.size = size;
    fittings = new Fittings(LINE_SHARE * size);
  }

  /**
   * Takes coils that did not move from a store.
   *
   * @param isFine whether they are drawn for a tree that stands still
   */
  void takeCoilsFrom(CoilStore store, boolean isFine) {
    coils = store;
    fine = isFine;
  }

  /** Tells of places only on some segments. */
  void tellOnlyOf(Predicate<String> segments) {
    told = segments;
  }

  List<Mesh> meshes() {
    return meshes;
  }

  List<Mark> marks() {
    return marks;
  }

  void addPlan(Plan plan, Optional<TrialResult> trial, Cutting kept, List<Limb> limbs) {
    List<Coil> wires = new ArrayList<>();
    Aids aids = new Aids(skeleton, stand, pose, size);
    Guys guys = new Guys(skeleton, stand, pose, LINE_SHARE * size);
    Optional<TrialResult> holding = trial.filter(t -> t.outcome().holds());
    for (Proposal proposal : plan.proposals()) {
      if (trial.isEmpty() || trial.get().proposals().contains(proposal.id())) {
        for (GuyLine line : proposal.guyLines()) {
          if (kept.holds(line.at())) {
            guys.add(line, tried(line, holding));
          }
        }
        proposal.aids().forEach(aid -> aids.add(aid, kept));
        wires.addAll(proposal.coils());
        for (HandBend hand : proposal.handBends()) {
          if (kept.holds(hand.at())) {
            addHand(hand);
          }
        }
        for (HungWeight weight : proposal.hungWeights()) {
          addWeight(weight, plan.stance(), kept);
        }
      }
    }
    Coils wound = new Coils(skeleton, pose, coils, fine);
    wound.add(wires, kept);
    meshes.addAll(wound.meshes());
    meshes.addAll(guys.meshes());
    meshes.addAll(aids.meshes());
    marks.addAll(guys.marks());
    marks.addAll(aids.marks());
    marks.addAll(wound.marks());
    plan.apex().ifPresent(apex -> addApex(apex, plan.frontAzimuth().orElse(0), kept, limbs));
    holding.ifPresent(this::addWeakPlaces);
    for (Spot cut : plan.cuts()) {
      if (kept.holds(cut)) {
        Axis axis = pose.at(skeleton.indexOf(cut.segment()), cut.along());
        marks.add(new Mark.CutPlace(axis.point(), List.of("cut")));
      }
    }
  }

  private static Optional<LineTrial> tried(GuyLine line, Optional<TrialResult> holding) {
    return holding.flatMap(
        t -> t.lines().stream().filter(l -> l.id().equals(line.id())).findFirst());
  }

  private void addHand(HandBend hand) {
    int segment = skeleton.indexOf(hand.at().segment());
    Point3 from = stand.place(skeleton.point(segment, hand.at().along()));
    Point3 to = from.plus(stand.turn().turn(hand.direction()).times(hand.move()));
    marks.add(
        new Mark.Hand(
            from,
            to,
            List.of(
                Wording.shortened(VisibleText.of(hand.id())) + "  by hand",
                Wording.millimetres(hand.move()) + ", then let go")));
  }

  private void addWeight(HungWeight weight, Plan.Stance stance, Cutting kept) {
    if (!kept.holds(weight.at())) {
      return;
    }
    Direction3 down =
        stance == Plan.Stance.PLANTED
            ? Direction3.UP.opposite()
            : stand.turn().turn(Direction3.UP.opposite());
    Point3 from = axis(weight.at()).point();
    double radius = Fittings.weightRadius(weight.mass());
    double thread = radius(weight.at()) + THREAD_SHARE * size;
    Point3 top = from.plus(down.times(thread));
    meshes.add(fittings.thread(from, top));
    meshes.add(fittings.weight(top, down, weight.mass()));
    marks.add(
        new Mark.Weight(
            top.plus(down.times(radius)), radius, List.of(Wording.kilograms(weight.mass()))));
  }

  private void addApex(String id, double front, Cutting kept, List<Limb> limbs) {
    if (!skeleton.has(id) || kept.isGone(skeleton.indexOf(id))) {
      return;
    }
    int segment = skeleton.indexOf(id);
    Limb limb =
        limbs.stream().filter(l -> l.segments().contains(segment)).findFirst().orElseThrow();
    int tip = limb.segments().get(limb.count(kept) - 1);
    Point3 at = pose.at(tip, kept.left(tip)).point();
    Point3 base = stand.place(skeleton.start(skeleton.outward(0)));
    Vector3 offset = at.minus(base);
    ViewAngle view = ViewAngle.level(front);
    double right = offset.dot(view.right().vector());
    double behind = -offset.dot(view.toViewer().vector());
    marks.add(
        new Mark.Apex(
            at,
            new Point3(at.x(), at.y(), Math.min(0, at.z())),
            base,
            right,
            behind,
            List.of("apex " + VisibleText.of(id), Wording.beside(right, behind))));
  }

  /** Where the wood would fail; where nobody asked for the risk, where it is bent hardest. */
  private void addWeakPlaces(TrialResult trial) {
    List<Mark> failures =
        trial
            .risk()
            .map(risk -> new FailureMarks(skeleton, stand, pose).of(risk, told))
            .orElse(List.of());
    marks.addAll(failures);
    if (failures.isEmpty()) {
      trial.peak().filter(peak -> told.test(peak.segment())).ifPresent(this::addHardest);
    }
  }

  private void addHardest(Peak peak) {
    Spot spot = new Spot(peak.segment(), peak.along());
    Axis axis = axis(spot);
    Point3 bark = axis.point().plus(axis.tensionSide().times(radius(spot)));
    marks.add(new Mark.Hardest(bark, axis.tensionSide(), Wording.hardest(peak)));
  }

  private Axis axis(Spot spot) {
    return pose.at(skeleton.indexOf(spot.segment()), spot.along());
  }

  private double radius(Spot spot) {
    return Thickness.radius(skeleton.segment(skeleton.indexOf(spot.segment())), spot.along());
  }
}
