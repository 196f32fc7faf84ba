// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.Objects;

/**
 * Everything that acts on a tree of rods.
 *
 * @param forces forces that keep size and direction
 * @param moments moments that keep size and axis; they have no potential, so the stability of a
 *     pose is not judged where they act
 * @param weights forces spread along spans
 * @param lines lines
 */
public record RodLoads(
    List<DeadForce> forces,
    List<DeadMoment> moments,
    List<SpanWeight> weights,
    List<RodLine> lines) {
  /** Nothing acts. */
  public static final RodLoads NONE = new RodLoads(List.of(), List.of(), List.of(), List.of());

  /**
   * A force that keeps size and direction.
   *
   * @param at where it acts
   * @param force the force [N]
   */
  public record DeadForce(RodPlace at, Vector3 force) {
    public DeadForce {
      Objects.requireNonNull(at, "at");
      Objects.requireNonNull(force, "force");
    }
  }

  /**
   * A moment that keeps size and axis.
   *
   * @param at where it acts
   * @param moment the moment [N m]
   */
  public record DeadMoment(RodPlace at, Vector3 moment) {
    public DeadMoment {
      Objects.requireNonNull(at, "at");
      Objects.requireNonNull(moment, "moment");
    }
  }

  public RodLoads {
    forces = List.copyOf(forces);
    moments = List.copyOf(moments);
    weights = List.copyOf(weights);
    lines = List.copyOf(lines);
  }

  public static RodLoads ofForces(DeadForce... forces) {
    return new RodLoads(List.of(forces), List.of(), List.of(), List.of());
  }

  public static RodLoads ofLines(RodLine... lines) {
    return new RodLoads(List.of(), List.of(), List.of(), List.of(lines));
  }
}
