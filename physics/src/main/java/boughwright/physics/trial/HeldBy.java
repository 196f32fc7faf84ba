// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * By what means a bend is made and held, and whether they will do.
 *
 * @param hardware tackle of the lines, and whether the container stands; empty where no pose holds
 * @param aids what is done to the wood first
 * @param coils what the plan's coils hold
 * @param wires wire that would hold what is bent by coil or hand
 */
public record HeldBy(
    Optional<Hardware> hardware,
    List<AidEffect> aids,
    List<CoilHold> coils,
    List<WireChoice> wires) {
  public static final HeldBy NOTHING =
      new HeldBy(Optional.empty(), List.of(), List.of(), List.of());

  public HeldBy {
    Objects.requireNonNull(hardware, "hardware");
    aids = List.copyOf(aids);
    coils = List.copyOf(coils);
    wires = List.copyOf(wires);
  }

  /** The means of a trial. */
  public static HeldBy of(TrialRequest request, TrialResult result) {
    return result.outcome().holds()
        ? new HeldBy(
            Optional.of(Hardware.of(request, result)),
            AidEffect.of(request),
            CoilHold.of(request),
            WireChoice.of(request))
        : NOTHING;
  }
}
