// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.Wound;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a scene together; used once. */
final class SceneMaker {
  /** Half the thickness of a container's edges, as a share of the tree's size [1]. */
  static final double EDGE_SHARE = 0.0011;

  private final Skeleton skeleton;
  private final Optional<Plan> plan;
  private final Optional<TrialResult> trial;
  private final CoursePoses poses;
  private final Optional<TrialResult> shown;
  private final Stand stand;
  private final List<Limb> limbs;
  private final Cutting kept;
  private final LimbSkins skins;
  private final Pose measured;
  private final Optional<Pose> bent;
  private Optional<StrainScale> scale;
  private final List<Body> bodies = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private boolean inLeaf;

  SceneMaker(Tree tree, Optional<Plan> plan, Optional<TrialResult> trial, Optional<Course> course) {
    skeleton = new Skeleton(tree);
    this.plan = plan;
    this.trial = trial;
    poses = new CoursePoses(course);
    shown = poses.shown(trial);
    stand = Stand.of(plan.flatMap(Plan::planting), skeleton.start(skeleton.outward(0)));
    limbs = Limb.of(skeleton);
    kept = new Cutting(skeleton, plan.map(Plan::cuts).orElse(List.of()));
    skins = new LimbSkins(skeleton, limbs, kept);
    measured = Pose.measured(skeleton, limbs, stand);
    Optional<TrialResult> holding = shown.filter(t -> t.outcome().holds());
    bent = holding.map(this::pose);
    // where nothing bends there are no colours, and the key says: as measured
    scale =
        holding.flatMap(TrialResult::peak).map(Peak::bendingStrain).map(StrainScale::forPicture);
  }

  /** The same in leaf, or bare. */
  SceneMaker inLeaf(boolean leaf) {
    inLeaf = leaf;
    return this;
  }

  /** The same with strain, where there is any, in the colours of another scale. */
  SceneMaker colouredBy(StrainScale other) {
    scale = scale.map(own -> other);
    return this;
  }

  private Pose pose(TrialResult result) {
    return Pose.bent(skeleton, limbs, stand, result);
  }

  Scene make() {
    List<Mesh> solid = new ArrayList<>(skins.staying(bent.orElse(measured), scale));
    addWounds(solid);
    double size = bounds(List.of(new Body(Body.Role.SOLID, solid))).diagonal();
    Holdings holdings = new Holdings(skeleton, stand, bent.orElse(measured), size);
    plan.ifPresent(p -> holdings.addPlan(p, withRisk(), kept, limbs));
    List<Mesh> fittings = new ArrayList<>(holdings.meshes());
    bodies.add(new Body(Body.Role.SOLID, solid));
    skeleton
        .tree()
        .setting()
        .container()
        .ifPresent(container -> addContainer(container, fittings, EDGE_SHARE * size));
    bodies.add(new Body(Body.Role.FITTING, fittings));
    bodies.add(
        new Body(
            Body.Role.GHOST, bent.map(pose -> skins.moved(measured, pose)).orElseGet(List::of)));
    bodies.add(new Body(Body.Role.REMOVED, skins.going(measured)));
    if (inLeaf) {
      bodies.add(new Leafage(kept, stand).body(bent.orElse(measured), id -> true));
    }
    marks.addAll(holdings.marks());
    Optional<StagesView> stages = bent.flatMap(this::stages);
    return new Scene(
        bodies,
        marks,
        bounds(bodies),
        base(),
        plan.map(p -> p.frontAzimuth().orElse(0)).orElse(0.0),
        scale,
        trial.map(TrialResult::outcome).filter(o -> !o.holds()).map(SceneMaker::trouble),
        riskView(),
        stages);
  }

  /** What is shown, with the risk of the trial: the wood bears that while it is bent. */
  private Optional<TrialResult> withRisk() {
    Optional<Risk> risk = trial.flatMap(TrialResult::risk);
    return shown.map(
        s -> s.risk().isPresent() || risk.isEmpty() ? s : s.withRisk(risk.get(), List.of()));
  }

  /** The poses on the way, each a body and a mark, and what stays. */
  private Optional<StagesView> stages(Pose reached) {
    if (poses.reached().isEmpty()) {
      return Optional.empty();
    }
    List<Limb> bending = skins.bent(shown.orElseThrow());
    List<StagesView.Ghost> ghosts = new ArrayList<>();
    for (Course.Step step : poses.onTheWay()) {
      ghost(step, bending, reached).ifPresent(ghosts::add);
    }
    Optional<Course.Step> released = poses.released();
    return Optional.of(
        new StagesView(
            poses.reachedWords(),
            ghosts,
            released
                .map(step -> skins.outlines(bending, pose(step.pose()), measured, reached))
                .orElseGet(List::of),
            released.map(step -> "stays, released after " + Wording.time(step.time())).orElse("")));
  }

  /** A pose on the way as a body and a mark; empty where it is not seen beside the others. */
  private Optional<StagesView.Ghost> ghost(Course.Step step, List<Limb> bending, Pose reached) {
    Pose pose = pose(step.pose());
    List<Mesh> meshes = skins.moved(bending, pose, measured, reached);
    if (meshes.isEmpty()) {
      return Optional.empty();
    }
    List<Course.Step> way = poses.onTheWay();
    Colour tone = Palette.stage(way.indexOf(step), way.size());
    String words = poses.words(step);
    bodies.add(new Body(Body.Role.STAGE, meshes.stream().map(m -> m.tinted(tone)).toList()));
    skins
        .farthestEnd(pose, measured)
        .ifPresent(end -> marks.add(new Mark.StageEnd(end, List.of(words))));
    return Optional.of(new StagesView.Ghost(words, tone));
  }

  private void addContainer(Container container, List<Mesh> fittings, double edge) {
    Pot pot = new Pot(container, skeleton.start(skeleton.outward(0)), stand);
    fittings.addAll(pot.edges(edge));
    bodies.add(new Body(Body.Role.CONTAINER, List.of(pot.walls())));
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

  private Point3 base() {
    return stand.place(skeleton.start(skeleton.outward(0)));
  }

  private Box bounds(List<Body> all) {
    return bounds(base(), all);
  }

  /** The box round a point and some bodies. */
  static Box bounds(Point3 base, List<Body> all) {
    Box box = Box.around(base);
    for (Body body : all) {
      for (Mesh mesh : body.meshes()) {
        box = mesh.bounds().map(box::with).orElse(box);
      }
    }
    return box;
  }

  /** Why no pose is shown, in a sentence or two. */
  static String trouble(Outcome outcome) {
    String what =
        !outcome.converged()
            ? "No pose found in which the forces balance"
            : "The tree would not stay in this pose: it snaps through or falls away";
    String where = outcome.where().isBlank() ? "" : " (" + outcome.where() + ")";
    return what + where + ". Shown as measured; nothing is bent.";
  }
}
