// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The tree as it stands before the viewer: the wood that stays, and nothing else. */
public final class FrontScene {
  private static final Set<Body.Role> SEEN =
      EnumSet.of(Body.Role.SOLID, Body.Role.FOLIAGE, Body.Role.GUESSED_FOLIAGE);

  private FrontScene() {}

  /**
   * The scene of a front.
   *
   * @param document the tree
   * @param plan the plan whose cuts are made; without one the tree is uncut
   * @param pose front and tilt
   * @param inLeaf whether it is in leaf
   */
  public static Scene of(Document document, Optional<Plan> plan, FrontPose pose, boolean inLeaf) {
    Optional<Plan> stands = Optional.of(standing(plan, pose));
    Scene scene =
        inLeaf
            ? Scene.inLeaf(document, stands, Optional.empty(), Optional.empty())
            : Scene.of(document, stands, Optional.empty());
    List<Body> wood = scene.bodies().stream().filter(body -> SEEN.contains(body.role())).toList();
    return new Scene(
        wood,
        List.of(),
        scene.bounds(),
        scene.base(),
        scene.front(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** What a plan leaves of the tree, standing so, without its bends; only to be drawn. */
  public static Plan standing(Optional<Plan> plan, FrontPose pose) {
    return new PlanDraft(plan.map(Plan::id).orElse(""))
        .frontAzimuth(OptionalDouble.of(pose.azimuth()))
        .planting(planting(pose))
        .cuts(plan.map(Plan::cuts).orElse(List.of()))
        .apex(plan.flatMap(Plan::apex))
        .build();
  }

  /** The planting angle that a pose takes; empty for the tree as measured. */
  public static Optional<Planting> planting(FrontPose pose) {
    return pose.tilt() == 0 ? Optional.empty() : Optional.of(pose.planting());
  }
}
