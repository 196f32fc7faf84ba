// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Gauges;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.hold.WireMetal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Looks for wire that is strong enough on the bare branch in its bent pose, which costs one trial,
 * and then how far the hand must go with the simplest of each metal.
 */
final class WireChoosing {
  /**
   * Slant of a coil that the plan does not have: the middle of 45 to 60 degrees (common practice).
   */
  static final double ANGLE = Math.toRadians(50);

  /** Wire thicker than this part of the thinnest wood cannot be wound on it (assumption) [1]. */
  private static final double THICKEST = 0.7;

  private final TrialRequest request;
  private final Skeleton skeleton;

  WireChoosing(TrialRequest request) {
    this.request =
        new TrialRequest(
            request.tree(),
            request.plan(),
            request.proposals(),
            request.species(),
            CoilHolding.ROUGH);
    skeleton = new Skeleton(request.tree());
  }

  List<WireChoice> all() {
    List<WireChoice> out = new ArrayList<>();
    for (Proposal proposal : request.proposals()) {
      if (!proposal.handBends().isEmpty()) {
        Coil coil = pattern(proposal);
        CoilPath path = CoilPath.of(skeleton, coil);
        if (!path.stretches().isEmpty()) {
          choice(proposal, path).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  /** The rows of some metals, judged by a strength; how far the hand goes is not tried. */
  List<WireChoice.Row> strong(Proposal proposal, Set<Material> metals, double least) {
    Coil coil = pattern(proposal);
    CoilPath path = CoilPath.of(skeleton, coil);
    HeldTree forced = HeldTree.of(with(proposal, List.of()), HeldTree.Grip.ALL);
    if (path.stretches().isEmpty() || !forced.holds()) {
      return List.of();
    }
    WireJudge judge = new WireJudge(forced, proposal.handBends().get(0), path);
    List<WireChoice.Row> rows = new ArrayList<>();
    for (Material metal : metals) {
      for (int strands = 1; strands <= WireChoice.MOST_STRANDS; strands++) {
        rows.add(row(new Wanted(coil, least), metal, strands, judge));
      }
    }
    return rows;
  }

  /** A coil of some wire, and how many times the moment of the bent wood that wire must stand. */
  private record Wanted(Coil coil, double least) {
    /** Whether the stoutest that can be wound is wanted. */
    boolean isStoutest() {
      return Double.isInfinite(least);
    }
  }

  /** The first coil of a proposal, or one from the start of the limb to the hand. */
  private Coil pattern(Proposal proposal) {
    List<CoilPath> own = CoilWays.of(skeleton, proposal);
    if (!own.isEmpty()) {
      return own.get(0).coil();
    }
    Spot hand = proposal.handBends().get(0).at();
    int root = Limbs.rootOf(skeleton, skeleton.indexOf(hand.segment()));
    Spot start = new Spot(skeleton.segment(root).id(), 0);
    return new Coil(start, hand, Material.ALUMINIUM, 1e-3, 1, ANGLE, Hand.RIGHT, Map.of());
  }

  private Optional<WireChoice> choice(Proposal proposal, CoilPath path) {
    TrialRequest bare = with(proposal, List.of());
    HeldTree forced = HeldTree.of(bare, HeldTree.Grip.ALL);
    if (!forced.holds()) {
      return Optional.empty();
    }
    HandBend hand = proposal.handBends().get(0);
    WireJudge judge = new WireJudge(forced, hand, path);
    if (Double.isInfinite(judge.thinnest())) {
      return Optional.empty();
    }
    List<WireChoice.Row> rows = new ArrayList<>();
    for (Material metal : Material.values()) {
      if (metal.isWire()) {
        rows.addAll(rows(proposal, path.coil(), metal, judge));
      }
    }
    return Optional.of(
        new WireChoice(
            proposal.id(),
            hand.at().segment(),
            hand.move(),
            judge.alone(),
            judge.thickest(),
            path.coil().angleToAxis(),
            rows));
  }

  private TrialRequest with(Proposal proposal, List<Coil> coils) {
    return request.changing(one -> one.equals(proposal) ? one.withCoils(coils) : one);
  }

  /** One to three strands of a metal; how far the hand goes is tried for the fewest that do. */
  private List<WireChoice.Row> rows(Proposal proposal, Coil coil, Material metal, WireJudge judge) {
    List<WireChoice.Row> rows = new ArrayList<>();
    boolean tried = false;
    for (int strands = 1; strands <= WireChoice.MOST_STRANDS; strands++) {
      WireChoice.Row row = row(new Wanted(coil, 1), metal, strands, judge);
      if (!tried && row.gauge().isPresent()) {
        tried = true;
        row = row.with(hand(proposal, like(coil, metal, row.gauge().getAsDouble(), strands)));
      }
      rows.add(row);
    }
    return rows;
  }

  private static WireChoice.Row row(Wanted wanted, Material metal, int strands, WireJudge judge) {
    double strength = 0;
    OptionalDouble found = OptionalDouble.empty();
    for (double gauge : Gauges.sold(metal)) {
      CoilShape shape = new CoilShape(gauge, strands, wanted.coil.angleToAxis());
      if (gauge > THICKEST * judge.thinnest() || shape.gap(judge.thinnest()) < 0) {
        break;
      }
      strength = strands * judge.strength(WireMetal.of(metal), shape);
      boolean isEnough = strength >= wanted.least;
      found = isEnough || wanted.isStoutest() ? OptionalDouble.of(gauge) : found;
      if (isEnough) {
        break;
      }
    }
    return new WireChoice.Row(metal, strands, found, strength, OptionalDouble.empty());
  }

  /** A coil like the plan's, of other wire. */
  private static Coil like(Coil coil, Material metal, double gauge, int strands) {
    return new Coil(
        coil.from(),
        coil.to(),
        metal,
        gauge,
        strands,
        coil.angleToAxis(),
        coil.hand(),
        coil.extras());
  }

  private OptionalDouble hand(Proposal proposal, Coil coil) {
    TrialRequest wired = with(proposal, List.of(coil));
    Proposal changed =
        wired.proposals().stream()
            .filter(one -> one.id().equals(proposal.id()))
            .findFirst()
            .orElseThrow();
    return new CoilOverbend(wired, changed)
        .factor().stream().map(factor -> factor * proposal.handBends().get(0).move()).findFirst();
  }
}
