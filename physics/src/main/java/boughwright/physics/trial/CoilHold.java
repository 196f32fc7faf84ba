// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How a proposal with coils holds what was bent: bent by hand and lines, let go so that coils and
 * lines hold it, and let go of everything at once. Nothing of creep or growth is in it.
 *
 * @param proposal the proposal
 * @param segment the segment whose end it moves most
 * @param forced how far that end moves when bent [m]
 * @param held how far from its place as measured it comes to rest when the hands let go [m]
 * @param unwired the same when lines and coils are taken off at once too [m]
 * @param kept part of the movement that stays when the hands let go: the middle for a coil that
 *     lies on the bark and slips; the band from what is not known of wood and wire, its upper end
 *     for a coil that grips the bark [1]
 * @param strength moment the coils stand over the moment with which the wood pulls back where it is
 *     bent, at the weakest coiled place [1]
 * @param hands what the hands do
 * @param overbend how much further they must go; empty where that cannot be done or is not needed
 * @param coils how each coil is wound
 */
public record CoilHold(
    String proposal,
    String segment,
    double forced,
    double held,
    double unwired,
    Range kept,
    double strength,
    List<HandPull> hands,
    Optional<Overbend> overbend,
    List<CoilWork> coils) {
  /**
   * One pull by hand.
   *
   * @param id its name
   * @param move how far its place comes along its direction [m]
   * @param force its force at the end [N]
   */
  public record HandPull(String id, double move, double force) {}

  /**
   * A bend beyond what is planned that comes to rest where the plan wanted it.
   *
   * @param factor how far the hands go over what is planned [1]
   * @param hands what they do then
   * @param strain largest bending strain on the way, over that of the plan [1]
   */
  public record Overbend(double factor, List<HandPull> hands, double strain) {
    public Overbend {
      hands = List.copyOf(hands);
    }
  }

  public CoilHold {
    Objects.requireNonNull(proposal, "proposal");
    Objects.requireNonNull(segment, "segment");
    Objects.requireNonNull(kept, "kept");
    hands = List.copyOf(hands);
    Objects.requireNonNull(overbend, "overbend");
    coils = List.copyOf(coils);
  }

  /**
   * Whether the coils stand the moment of the bent wood. They may, and still spring back on the
   * way: then the hands must go further, by {@link #overbend}.
   */
  public boolean holds() {
    return strength >= 1;
  }

  /**
   * What the coils of a request hold, for each proposal that has some and moves something. Empty
   * where no pose holds.
   */
  public static List<CoilHold> of(TrialRequest request) {
    return new CoilHolding(request).all();
  }
}
