// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Proposal;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Which wire is strong enough to hold a bend that is made by hand: for each metal and number of
 * strands the thinnest that is sold and that stands the moment with which the bent wood pulls back,
 * everywhere along the coil. Wire springs back itself, so the hand must still go further than where
 * the branch is to rest.
 *
 * @param proposal the proposal
 * @param segment the segment whose place is bent by hand
 * @param move how far it is bent [m]
 * @param alone part of the movement that the wood keeps at once with no wire [1]
 * @param thickest diameter over bark of the thickest wood under the coil that is to be held bent
 *     [m]
 * @param angle slant of the coils tried, to the axis [rad]
 * @param rows one for each metal and number of strands
 */
public record WireChoice(
    String proposal,
    String segment,
    double move,
    double alone,
    double thickest,
    double angle,
    List<Row> rows) {
  /** The trade's rule: wire a third as thick as the branch (common practice, no source) [1]. */
  public static final double RULE = 1.0 / 3;

  /** Most strands that are tried side by side. */
  public static final int MOST_STRANDS = 3;

  /**
   * What one metal does with so many strands.
   *
   * @param metal the metal
   * @param strands strands side by side
   * @param gauge the thinnest sold that is strong enough; empty if none is that can be wound [m]
   * @param strength moment it stands over the moment of the bent wood, at the weakest place; of the
   *     thickest that can be wound where none is strong enough, 0 where none can be wound [1]
   * @param hand how far the hand must go with it so that the branch rests where it is wanted; empty
   *     where that was not tried or cannot be [m]
   */
  public record Row(
      Material metal, int strands, OptionalDouble gauge, double strength, OptionalDouble hand) {
    public Row {
      Objects.requireNonNull(metal, "metal");
      Objects.requireNonNull(gauge, "gauge");
      Objects.requireNonNull(hand, "hand");
    }

    Row with(OptionalDouble goes) {
      return new Row(metal, strands, gauge, strength, goes);
    }
  }

  public WireChoice {
    Objects.requireNonNull(proposal, "proposal");
    Objects.requireNonNull(segment, "segment");
    rows = List.copyOf(rows);
  }

  /** What the trade's rule says, before it is rounded to what is sold [m]. */
  public double byRule() {
    return RULE * thickest;
  }

  /** The row of a metal with so many strands. */
  public Optional<Row> row(Material metal, int strands) {
    return rows.stream()
        .filter(row -> row.metal() == metal && row.strands() == strands)
        .findFirst();
  }

  /** The row with the fewest strands of a metal that are strong enough. */
  public Optional<Row> simplest(Material metal) {
    return rows.stream()
        .filter(row -> row.metal() == metal && row.gauge().isPresent())
        .min(Comparator.comparingInt(Row::strands));
  }

  /** Why computed gauges and the trade's rule differ, in words. */
  public String why() {
    return "The rule of one third (common practice, no source) looks at thickness only. What is"
        + " computed counts how stiff this wood is, how far it is bent and how hard the metal"
        + " becomes when wound, and takes the coil as a spring that lies on the bark: one that is"
        + " wound tight and bites in holds more. The rule is used with bending further than"
        + " wanted, bending again, and months in which the wood gives way.";
  }

  /**
   * Looks for wire for each proposal of a request that bends by hand. Proposals without a coil are
   * given one from the start of the limb to the hand.
   */
  public static List<WireChoice> of(TrialRequest request) {
    return new WireChoosing(request).all();
  }

  /**
   * The thinnest wire sold of some metals that stands so many times the moment of one proposal's
   * bent wood, at little cost: how far the hand must go is not tried.
   *
   * @param proposal a proposal of the request with a pull by hand and a coil
   * @param least moment it must stand over the moment of the bent wood; infinite for the stoutest
   *     wire that can be wound [1]
   */
  public static List<Row> strong(
      TrialRequest request, Proposal proposal, Set<Material> metals, double least) {
    return new WireChoosing(request).strong(proposal, metals, least);
  }
}
