// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.FrontPose;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The account of the root base for one front and planting angle.
 *
 * @param pose the front and the planting angle
 * @param trunk diameter of the trunk base over bark [m]
 * @param base the roots that are seen; empty without any
 * @param roots the roots in the soil; empty without any
 * @param fit the container beside what the trade asks for; empty without one
 * @param balance where the mass stands
 * @param ties what keeps it from rocking; empty if nothing bears it
 * @param unsaid what cannot be said
 */
public record GroundAnswer(
    FrontPose pose,
    double trunk,
    Optional<RootBase> base,
    Optional<RootMass> roots,
    Optional<ContainerFit> fit,
    Balance balance,
    Optional<TieDown> ties,
    Set<Unsaid> unsaid) {
  public GroundAnswer {
    Objects.requireNonNull(pose, "pose");
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(roots, "roots");
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(balance, "balance");
    Objects.requireNonNull(ties, "ties");
    unsaid = Set.copyOf(unsaid);
  }
}
