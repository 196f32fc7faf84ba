// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.viewer.scene.FrontScene;
import java.util.Objects;
import java.util.Optional;

/**
 * How the tree stands before the viewer while its front is chosen.
 *
 * @param pose which side faces the viewer, and how the tree is tilted
 * @param elevation how far above level the viewer looks from [rad]
 */
public record Stance(FrontPose pose, double elevation) {
  public Stance {
    Objects.requireNonNull(pose, "pose");
    if (!(Math.abs(elevation) <= Math.PI / 2)) {
      throw new IllegalArgumentException("looked at from " + elevation);
    }
  }

  /** The planting angle; empty for the tree as measured. */
  Optional<Planting> planting() {
    return FrontScene.planting(pose);
  }

  /** What a plan leaves of the tree, standing so, without its bends; only to be drawn. */
  Plan of(Optional<Plan> plan) {
    return FrontScene.standing(plan, pose);
  }
}
