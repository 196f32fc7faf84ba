// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/** The same bends with less pull: tensions, shortenings and hung weights times one factor. */
final class ScaledPlan {
  private final TrialRequest request;
  private final Skeleton skeleton;
  private final double factor;

  private ScaledPlan(TrialRequest request, double factor) {
    this.request = request;
    this.factor = factor;
    skeleton = new Skeleton(request.tree());
  }

  /**
   * A request whose proposals pull less.
   *
   * @param factor part of the pull, more than 0 and at most 1 [1]
   */
  static TrialRequest of(TrialRequest request, double factor) {
    return new ScaledPlan(request, factor).scaled();
  }

  private TrialRequest scaled() {
    List<Proposal> all = new ArrayList<>();
    List<Proposal> tried = new ArrayList<>();
    for (Proposal proposal : request.plan().proposals()) {
      Proposal less = less(proposal);
      all.add(less);
      if (request.proposals().contains(proposal)) {
        tried.add(less);
      }
    }
    Plan plan = request.plan();
    Plan less =
        new Plan(
            plan.id(),
            plan.frontAzimuth(),
            plan.planting(),
            plan.cuts(),
            plan.apex(),
            all,
            plan.selfWeight(),
            plan.stance(),
            plan.clamp(),
            plan.extras());
    return new TrialRequest(request.tree(), less, tried, request.species(), request.options());
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
        proposal.extras());
  }

  private GuyLine less(GuyLine line) {
    return new GuyLine(
        line.id(), line.at(), line.padRound(), line.anchor(), hold(line), line.extras());
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
