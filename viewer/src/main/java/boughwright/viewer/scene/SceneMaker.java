// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.Wound;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a scene together; used once. */
final class SceneMaker {
  /** A limb that moved less than this is not drawn a second time as a ghost [m]. */
  private static final double UNMOVED = 2e-4;

  private final Skeleton skeleton;
  private final Optional<Plan> plan;
  private final Optional<TrialResult> trial;
  private final Stand stand;
  private final List<Limb> limbs;
  private final Cutting kept;
  private final Pose measured;
  private final Optional<Pose> bent;
  private final Optional<StrainScale> scale;
  private final Skin.Detail detail;

  SceneMaker(Tree tree, Optional<Plan> plan, Optional<TrialResult> trial) {
    skeleton = new Skeleton(tree);
    this.plan = plan;
    this.trial = trial;
    stand = Stand.of(plan.flatMap(Plan::planting), skeleton.start(skeleton.outward(0)));
    limbs = Limb.of(skeleton);
    kept = new Cutting(skeleton, plan.map(Plan::cuts).orElse(List.of()));
    measured = Pose.measured(skeleton, limbs, stand);
    Optional<TrialResult> holding = trial.filter(t -> t.outcome().holds());
    bent = holding.map(t -> Pose.bent(skeleton, limbs, stand, t));
    scale = holding.map(t -> StrainScale.forPeak(t.peak().map(Peak::bendingStrain).orElse(0.0)));
    detail = Skin.Detail.forSegments(skeleton.size());
  }

  Scene make() {
    List<Mesh> solid = new ArrayList<>();
    List<Mesh> ghost = new ArrayList<>();
    List<Mesh> removed = new ArrayList<>();
    for (Limb limb : limbs) {
      int count = limb.count(kept);
      Skin.Stretch stays = staying(limb, count);
      if (!stays.isEmpty()) {
        solid.add(mesh(limb, stays, bent.orElse(measured), scale));
        if (bent.isPresent() && moved(limb, stays)) {
          ghost.add(mesh(limb, stays, measured, Optional.empty()));
        }
      }
      Skin.Stretch goes = going(limb, stays);
      if (!goes.isEmpty()) {
        removed.add(mesh(limb, goes, measured, Optional.empty()));
      }
    }
    addWounds(solid);
    Holdings holdings = holdings(solid);
    List<Body> bodies =
        List.of(
            new Body(Body.Role.SOLID, solid),
            new Body(Body.Role.FITTING, holdings.meshes()),
            new Body(Body.Role.GHOST, ghost),
            new Body(Body.Role.REMOVED, removed));
    return new Scene(
        bodies,
        holdings.marks(),
        bounds(bodies),
        base(),
        plan.map(p -> p.frontAzimuth().orElse(0)).orElse(0.0),
        scale,
        trial.map(TrialResult::outcome).filter(o -> !o.holds()).map(SceneMaker::trouble),
        riskView());
  }

  private Optional<RiskView> riskView() {
    return trial.flatMap(
        t ->
            t.risk()
                .map(
                    risk ->
                        new RiskView(
                            risk,
                            t.outcome().holds()
                                ? LimbStrains.of(skeleton, limbs, t)
                                : Optional.empty())));
  }

  private void addWounds(List<Mesh> solid) {
    WoundPatch patch = new WoundPatch(skeleton, bent.orElse(measured), stand);
    for (Wound wound : skeleton.tree().wounds()) {
      if (kept.holds(new Spot(wound.segment(), wound.along()))) {
        solid.add(patch.mesh(wound));
      }
    }
  }

  private Holdings holdings(List<Mesh> solid) {
    double size = bounds(List.of(new Body(Body.Role.SOLID, solid))).diagonal();
    Holdings holdings = new Holdings(skeleton, stand, bent.orElse(measured), size);
    plan.ifPresent(p -> holdings.addPlan(p, trial, kept, limbs));
    return holdings;
  }

  private Point3 base() {
    return stand.place(skeleton.start(skeleton.outward(0)));
  }

  private static Skin.Stretch staying(Limb limb, int count, Cutting kept) {
    return new Skin.Stretch(0, 0, count - 1, kept.left(limb.segments().get(count - 1)));
  }

  private Skin.Stretch staying(Limb limb, int count) {
    return count == 0 ? new Skin.Stretch(0, 0, 0, 0) : staying(limb, count, kept);
  }

  private static Skin.Stretch going(Limb limb, Skin.Stretch stays) {
    int last = limb.segments().size() - 1;
    boolean endsAtNode = stays.toAlong() == 1 && stays.toSegment() < last;
    return endsAtNode
        ? new Skin.Stretch(stays.toSegment() + 1, 0, last, 1)
        : new Skin.Stretch(stays.toSegment(), stays.toAlong(), last, 1);
  }

  private Mesh mesh(Limb limb, Skin.Stretch stretch, Pose pose, Optional<StrainScale> colours) {
    List<Station> stations = new Skin(skeleton, detail).stations(limb, stretch, pose);
    int last = limb.segments().size() - 1;
    boolean whole = stretch.toSegment() == last && stretch.toAlong() == 1;
    return new SkinMesher(detail.sides(), colours)
        .close(stations, whole ? SkinMesher.End.ROUNDED : SkinMesher.End.CUT);
  }

  private boolean moved(Limb limb, Skin.Stretch stretch) {
    for (int k = 0; k <= stretch.toSegment(); k++) {
      int i = limb.segments().get(k);
      double to = k == stretch.toSegment() ? stretch.toAlong() : 1;
      for (double u : new double[] {0, to / 2, to}) {
        if (bent.orElseThrow().at(i, u).point().distance(measured.at(i, u).point()) > UNMOVED) {
          return true;
        }
      }
    }
    return false;
  }

  private Box bounds(List<Body> bodies) {
    Box box = Box.around(base());
    for (Body body : bodies) {
      for (Mesh mesh : body.meshes()) {
        for (int v = 0; v < mesh.vertexCount(); v++) {
          box = box.with(new Point3(mesh.part(v, 0), mesh.part(v, 1), mesh.part(v, 2)));
        }
      }
    }
    return box;
  }

  private static String trouble(Outcome outcome) {
    String what =
        !outcome.converged()
            ? "No pose found in which the forces balance"
            : "The tree would not stay in this pose: it snaps through or falls away";
    String where = outcome.where().isBlank() ? "" : " (" + outcome.where() + ")";
    return what + where + ". Shown as measured; nothing is bent.";
  }
}
