// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.Mass;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.tree.Container;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Weighs one tree in any pose. */
final class BalanceMaker {
  private final Mass above;
  private final double measured;
  private final Optional<Container> container;

  /**
   * For one tree.
   *
   * @param above its wood above the roots, after the cuts [tree frame]
   * @param measured mass of all its wood as measured, before the cuts [kg]
   * @param container what it stands in
   */
  BalanceMaker(Mass above, double measured, Optional<Container> container) {
    this.above = above;
    this.measured = measured;
    this.container = container;
  }

  /** Mass of wood [kg]. */
  static double mass(Mass wood) {
    return Standing.GREEN_DENSITY * wood.volume();
  }

  private static Balance.Body body(Mass wood, Stand stand) {
    return new Balance.Body(mass(wood), stand.at(wood.centre()));
  }

  /** Weighs it with what is left of the roots, and says what cannot be told. */
  Balance at(Stand stand, List<Frustum> roots, Optional<Box> box, Set<Unsaid> unsaid) {
    Balance.Body wood = body(above, stand);
    Balance.Body tree = roots.isEmpty() ? wood : wood.with(body(Mass.of(roots), stand));
    Optional<Balance.Body> whole = box.flatMap(inside -> whole(tree, inside, unsaid));
    Point3 centre = whole.orElse(tree).centre();
    Optional<Double> margin = box.map(inside -> inside.margin(centre));
    Optional<Double> tips =
        box.map(inside -> Math.atan2(inside.margin(centre), centre.z() - inside.floor()));
    return new Balance(wood, tree, whole, margin, tips);
  }

  /** Soil and container are taken to weigh in the middle of its inside. */
  private Optional<Balance.Body> whole(Balance.Body tree, Box box, Set<Unsaid> unsaid) {
    if (container.isEmpty() || container.get().mass().isEmpty()) {
      unsaid.add(Unsaid.NO_MASS);
      return Optional.empty();
    }
    double rest = container.get().mass().getAsDouble() - measured;
    if (!(rest > 0)) {
      unsaid.add(Unsaid.MASS_TOO_SMALL);
      return Optional.empty();
    }
    return Optional.of(tree.with(new Balance.Body(rest, box.middle())));
  }
}
