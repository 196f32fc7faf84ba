// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;

/** The same bends with less pull: tensions, shortenings and hung weights times one factor. */
final class ScaledPlan {
  private final Skeleton skeleton;
  private final double factor;

  private ScaledPlan(Tree tree, double factor) {
    this.factor = factor;
    skeleton = new Skeleton(tree);
  }

  /**
   * A request whose proposals pull less.
   *
   * @param factor part of the pull, more than 0 and at most 1 [1]
   */
  static TrialRequest of(TrialRequest request, double factor) {
    return request.changing(new ScaledPlan(request.tree(), factor)::less);
  }

  private Proposal less(Proposal proposal) {
    return new Proposal(
        proposal.id(),
        proposal.about(),
        proposal.guyLines().stream().map(this::less).toList(),
        proposal.hungWeights().stream()
            .map(hung -> new HungWeight(hung.at(), factor * hung.mass(), hung.extras()))
            .toList(),
        proposal.coils(),
        proposal.handBends().stream().map(hand -> hand.moving(factor * hand.move())).toList(),
        proposal.aids(),
        proposal.extras());
  }

  private GuyLine less(GuyLine line) {
    return line.with(line.at(), line.anchor(), hold(line));
  }

  private Hold hold(GuyLine line) {
    if (line.hold() instanceof Hold.Tension tension) {
      return new Hold.Tension(factor * tension.newtons());
    }
    if (line.hold() instanceof Hold.Shortening shortening) {
      return new Hold.Shortening(factor * shortening.metres());
    }
    double length = ((Hold.Length) line.hold()).metres();
    double rest = pad(line).distance(anchor(line.anchor()));
    return new Hold.Length(rest - factor * (rest - length));
  }

  private Point3 pad(GuyLine line) {
    int i = skeleton.indexOf(line.at().segment());
    return line.padRound().isPresent()
        ? skeleton.barkPoint(i, line.at().along(), line.padRound().getAsDouble())
        : point(line.at());
  }

  private Point3 anchor(Anchor anchor) {
    return anchor instanceof Anchor.OnTree onTree
        ? point(onTree.spot())
        : ((Anchor.Fixed) anchor).point();
  }

  private Point3 point(Spot spot) {
    return skeleton.point(skeleton.indexOf(spot.segment()), spot.along());
  }
}
