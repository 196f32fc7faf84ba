// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.front.Eye;
import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontGauge;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.viewer.window.canvas.Facing;
import boughwright.viewer.window.canvas.Stance;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tree turned and tilted before the viewer, and what is measured of it so. Belongs to the event
 * thread.
 *
 * <p>Turning leaves the tree in its pot as it stands; tilting leaves the side that faces the
 * viewer.
 */
final class Turning {
  /** No tree is laid over further [rad]. */
  static final double MOST_TILT = Math.PI / 2;

  private static final double SAME = 1e-9;

  private final Workspace workspace;
  private final Facing facing;
  private final List<Runnable> listeners = new ArrayList<>();
  private FrontPose pose = FrontPose.upright(0);
  private Optional<Judge> judge = Optional.empty();
  private Optional<FrontScore> score = Optional.empty();
  private boolean inView;
  private boolean standing;

  /** What judges the tree as it is now. */
  record Judge(FrontCase tree, FrontGauge gauge, FrontRules rules) {
    FrontScore score(FrontPose pose) {
      return rules.score(gauge.read(pose));
    }
  }

  /** What fronts are judged of, and by. */
  record Basis(Tree tree, List<Spot> cuts, Optional<String> apex, FrontWishes wishes) {}

  Turning(Workspace workspace, Facing facing) {
    this.workspace = workspace;
    this.facing = facing;
    facing.whenTurned(this::followView);
    workspace.listen(this::heard);
    takePlan();
  }

  void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }

  private void heard(Topic topic) {
    switch (topic) {
      case OPENED, PLAN -> {
        takePlan();
        renew();
      }
      case DOCUMENT -> renew();
      default -> {
        // the tree stays as it stands
      }
    }
  }

  /** Forgets what was measured of the tree before. */
  private void renew() {
    judge = Optional.empty();
    score = Optional.empty();
    if (inView) {
      show();
    }
  }

  private void takePlan() {
    pose =
        workspace
            .plan()
            .map(plan -> pose(plan.frontAzimuth().orElse(0), plan.planting()))
            .orElse(FrontPose.upright(0));
  }

  static FrontPose pose(double azimuth, Optional<Planting> planting) {
    return planting
        .map(one -> FrontPose.of(azimuth, one))
        .orElseGet(() -> FrontPose.upright(azimuth));
  }

  static FrontPose pose(MarkedFront front) {
    return pose(front.azimuth(), front.planting());
  }

  /** Shows the tree so from now on. */
  void begin() {
    inView = true;
    show();
    facing.showWhole();
  }

  /** Shows it again as its plan has it. */
  void end() {
    inView = false;
    facing.stand(Optional.empty());
  }

  FrontPose pose() {
    return pose;
  }

  /** The planting angle; empty for the tree as measured. */
  Optional<Planting> planting() {
    return planting(pose);
  }

  static Optional<Planting> planting(FrontPose pose) {
    return pose.tilt() < SAME ? Optional.empty() : Optional.of(pose.planting());
  }

  /** Brings another side to the viewer; the tree stays in its pot as it stands. */
  void turnTo(double azimuth) {
    to(pose(azimuth, planting()));
  }

  /** Tilts the tree; the same side stays before the viewer [rad]. */
  void tiltTo(double right, double toward) {
    double tilt = Math.hypot(right, toward);
    double part = tilt > MOST_TILT ? MOST_TILT / tilt : 1;
    to(new FrontPose(pose.azimuth(), part * right, part * toward));
  }

  /** Lets the tree stand in some way. */
  void to(FrontPose other) {
    pose = plain(other);
    score = Optional.empty();
    show();
  }

  /** As it was measured, seen from where it is seen. */
  void upright() {
    to(FrontPose.upright(pose.azimuth()));
  }

  /** As its plan has it. */
  void asPlanned() {
    takePlan();
    to(pose);
  }

  /** The same pose, its azimuth between -pi and pi. */
  private static FrontPose plain(FrontPose of) {
    return new FrontPose(
        plain(Math.IEEEremainder(of.azimuth(), 2 * Math.PI)),
        plain(of.tiltRight()),
        plain(of.tiltToward()));
  }

  /** Without the rounding of turning there and back. */
  private static double plain(double angle) {
    return Math.abs(angle) < SAME ? 0 : angle;
  }

  private void show() {
    if (inView) {
      standing = true;
      facing.stand(Optional.of(stance(pose)));
      standing = false;
    }
    tell();
  }

  /** How a front is shown: the viewer looks at it from where the eye is said to be. */
  Stance stance(FrontPose of) {
    return new Stance(of, eye().elevation());
  }

  /** The person has gone round the tree by the keys or buttons of the canvas. */
  private void followView() {
    if (!inView || standing) {
      return;
    }
    double away = Math.IEEEremainder(facing.azimuth() - pose.azimuth(), 2 * Math.PI);
    if (Math.abs(away) > SAME) {
      pose = plain(pose(facing.azimuth(), planting()));
      score = Optional.empty();
    }
    tell();
  }

  /** How much higher the viewer looks from than the eye the front is judged by [rad]. */
  double raised() {
    return facing.elevation() - eye().elevation();
  }

  private Eye eye() {
    return judge().map(one -> one.gauge().eye()).orElse(Eye.LEVEL);
  }

  /** What fronts are judged of now, and by. */
  Basis basis() {
    Optional<Plan> plan = workspace.plan();
    return new Basis(
        workspace.document().tree(),
        plan.map(Plan::cuts).orElse(List.of()),
        plan.flatMap(Plan::apex),
        workspace.document().fronts().wishes());
  }

  /** What judges fronts; empty where nothing can be measured, see {@link #trouble}. */
  Optional<Judge> judge() {
    if (judge.isEmpty()) {
      judge = made();
    }
    return judge;
  }

  /** What was measured; empty where nothing can be. */
  Optional<FrontScore> score() {
    if (score.isEmpty()) {
      score = judge().map(one -> one.score(pose));
    }
    return score;
  }

  /** Why nothing can be measured; blank where something can. */
  String trouble() {
    return judge().isPresent()
        ? ""
        : "No front can be judged: this plan cuts away its own apex, or the trunk base. Choose"
            + " another apex, or take the cut back.";
  }

  private Optional<Judge> made() {
    Document document = workspace.document();
    Optional<Plan> plan = workspace.plan();
    Skeleton skeleton = new Skeleton(document.tree());
    if (plan.filter(one -> FrontCase.isCutAway(skeleton, one)).isPresent()) {
      return Optional.empty();
    }
    FrontWishes wishes = document.fronts().wishes();
    FrontCase tree = FrontCase.of(document, plan, wishes);
    return Optional.of(new Judge(tree, tree.gauge(), FrontRules.of(wishes)));
  }
}
