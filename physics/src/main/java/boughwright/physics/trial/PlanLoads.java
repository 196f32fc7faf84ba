// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.LineStrength;
import boughwright.physics.rod.RodLine;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.SpanWeight;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The proposals of a plan as loads on rods. */
final class PlanLoads {
  /** Distance of the anchor that stands for a hand, over the size of the tree [1]. */
  private static final double FAR = 1e4;

  /** So many times the size of the tree longer than as measured, a line holds nothing back [1]. */
  private static final double LOOSE = 10;

  private final TreeRods rods;
  private final Skeleton skeleton;
  private final List<GuyLine> lines = new ArrayList<>();
  private final List<HandBend> hands = new ArrayList<>();
  private final List<Double> restLengths = new ArrayList<>();
  private final List<RodLine> rodLines = new ArrayList<>();
  private final List<RodLoads.DeadForce> forces = new ArrayList<>();

  /**
   * Ties the lines and hangs the weights.
   *
   * @param rods the tree
   * @param proposals what to try
   * @param gravity gravity in the tree frame [m/s2]
   */
  PlanLoads(TreeRods rods, List<Proposal> proposals, Vector3 gravity) {
    this.rods = rods;
    skeleton = rods.timber().skeleton();
    proposals.forEach(proposal -> proposal.guyLines().forEach(this::tie));
    proposals.forEach(proposal -> proposal.handBends().forEach(this::take));
    for (Proposal proposal : proposals) {
      for (HungWeight weight : proposal.hungWeights()) {
        forces.add(
            new RodLoads.DeadForce(
                rods.place(segment(weight.at()), along(weight.at()), Vector3.ZERO),
                gravity.times(weight.mass())));
      }
    }
  }

  private int segment(Spot spot) {
    return skeleton.indexOf(spot.segment());
  }

  private double along(Spot spot) {
    return spot.along() * skeleton.length(segment(spot));
  }

  private Point3 point(Spot spot) {
    return skeleton.point(segment(spot), spot.along());
  }

  private void tie(GuyLine line) {
    Vector3 pad = pad(line.at(), line.padRound()).plus(lever(line));
    Point3 at = point(line.at()).plus(pad);
    RodLine.End other;
    Point3 otherPoint;
    if (line.anchor() instanceof Anchor.OnTree anchor) {
      otherPoint = point(anchor.spot());
      other =
          new RodLine.MovingEnd(
              rods.place(segment(anchor.spot()), along(anchor.spot()), Vector3.ZERO));
    } else {
      otherPoint = ((Anchor.Fixed) line.anchor()).point();
      other = new RodLine.FixedEnd(otherPoint);
    }
    double rest = at.distance(otherPoint);
    lines.add(line);
    restLengths.add(rest);
    rodLines.add(
        new RodLine(
            rods.place(segment(line.at()), along(line.at()), pad), other, hold(line, rest)));
  }

  /**
   * Takes hold by hand: a line to an anchor so far away that its direction stays, however the place
   * moves sideways, to a ten-thousandth.
   */
  private void take(HandBend hand) {
    double far = FAR * (size() + hand.move());
    Point3 anchor = point(hand.at()).plus(hand.direction().times(far));
    hands.add(hand);
    restLengths.add(far);
    rodLines.add(
        new RodLine(
            rods.place(segment(hand.at()), along(hand.at()), Vector3.ZERO),
            new RodLine.FixedEnd(anchor),
            new RodLine.Length(far - hand.move(), 0)));
  }

  private double size() {
    double most = 0;
    for (int i = 0; i < skeleton.size(); i++) {
      most = Math.max(most, rods.base().distance(skeleton.end(i)));
    }
    return most;
  }

  private Vector3 pad(Spot at, OptionalDouble round) {
    if (round.isEmpty()) {
      return Vector3.ZERO;
    }
    int i = segment(at);
    return RoundAngle.direction(skeleton.direction(i), round.getAsDouble())
        .times(rods.timber().barkRadius(i, along(at)));
  }

  /** From the place of a line to the end of its lever, at rest [m, tree frame]. */
  private Vector3 lever(GuyLine line) {
    return skeleton.direction(segment(line.at())).times(line.tackle().lever());
  }

  private static RodLine.Hold hold(GuyLine line, double rest) {
    if (line.hold() instanceof Hold.Tension tension) {
      return new RodLine.Constant(tension.newtons());
    }
    double length =
        line.hold() instanceof Hold.Length given
            ? given.metres()
            : rest - ((Hold.Shortening) line.hold()).metres();
    double compliance =
        line.tackle().strand().map(strand -> LineStrength.compliance(strand, length)).orElse(0.0);
    return new RodLine.Length(length, compliance);
  }

  /**
   * A part of the plan's loads, with the whole weight of the wood: tensions and hung weights are
   * scaled, and lines held by length are drawn in by a part of the way from their measured length,
   * hands likewise.
   */
  RodLoads with(List<SpanWeight> weights, HeldTree.Grip grip) {
    List<RodLoads.DeadForce> scaledForces =
        forces.stream()
            .map(force -> new RodLoads.DeadForce(force.at(), force.force().times(grip.lines())))
            .toList();
    List<RodLine> scaledLines = new ArrayList<>();
    for (int i = 0; i < rodLines.size(); i++) {
      RodLine line = rodLines.get(i);
      double part = i < lines.size() ? grip.lines() : grip.hands();
      scaledLines.add(new RodLine(line.at(), line.other(), scaled(line.hold(), i, part)));
    }
    return new RodLoads(scaledForces, List.of(), weights, scaledLines);
  }

  /** Lines that hang loose, weights taken down; the whole weight of the wood. */
  RodLoads loose(List<SpanWeight> weights) {
    List<RodLine> hanging = new ArrayList<>();
    for (int i = 0; i < rodLines.size(); i++) {
      RodLine line = rodLines.get(i);
      RodLine.Hold none =
          line.hold() instanceof RodLine.Constant
              ? new RodLine.Constant(0)
              : new RodLine.Length(restLengths.get(i) + LOOSE * size(), 0);
      hanging.add(new RodLine(line.at(), line.other(), none));
    }
    return new RodLoads(List.of(), List.of(), weights, hanging);
  }

  private RodLine.Hold scaled(RodLine.Hold hold, int line, double part) {
    if (hold instanceof RodLine.Constant constant) {
      return new RodLine.Constant(part * constant.tension());
    }
    RodLine.Length length = (RodLine.Length) hold;
    double rest = restLengths.get(line);
    return new RodLine.Length(rest - part * (rest - length.length()), length.compliance());
  }

  List<GuyLine> lines() {
    return lines;
  }

  /** Pulls by hand; what was found of them follows that of the lines. */
  List<HandBend> hands() {
    return hands;
  }

  /** Distance between the two ends of a line in the measured pose [m]. */
  double restLength(int line) {
    return restLengths.get(line);
  }

  /** What is held fixed: tension, length, weight, hand, coil, joined by a plus sign. */
  String held() {
    List<String> held = new ArrayList<>();
    if (lines.stream().anyMatch(line -> line.hold() instanceof Hold.Tension)) {
      held.add("tension");
    }
    if (lines.stream().anyMatch(line -> !(line.hold() instanceof Hold.Tension))) {
      held.add("length");
    }
    if (!forces.isEmpty()) {
      held.add("weight");
    }
    if (!hands.isEmpty()) {
      held.add("hand");
    }
    if (rods.isCoiled()) {
      held.add("coil");
    }
    return held.isEmpty() ? "nothing" : String.join("+", held);
  }
}
