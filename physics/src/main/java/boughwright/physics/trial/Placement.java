// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import java.util.ArrayList;
import java.util.List;

/** Guy-lines tied not quite where the plan says. */
final class Placement {
  /** Variables per line: along the branch, and three directions of the anchor. */
  static final int PER_LINE = 4;

  /** Nine ties in ten are this close to the mark, along the branch [m] (common practice). */
  static final double TIE_ERROR = 0.003;

  /** Nine anchors in ten are this close in each direction [m] (common practice, no source). */
  static final double ANCHOR_ERROR = 0.005;

  private Placement() {}

  static int lines(List<Proposal> proposals) {
    return proposals.stream().mapToInt(proposal -> proposal.guyLines().size()).sum();
  }

  /**
   * The proposals with their lines moved.
   *
   * @param proposals the proposals as planned
   * @param cutting what is left of the tree, where ties stay
   * @param drawn standard normals
   * @param from index of the first one to use
   */
  static List<Proposal> moved(List<Proposal> proposals, Cutting cutting, double[] drawn, int from) {
    List<Proposal> out = new ArrayList<>();
    int at = from;
    for (Proposal proposal : proposals) {
      List<GuyLine> lines = new ArrayList<>();
      for (GuyLine line : proposal.guyLines()) {
        lines.add(moved(line, cutting, drawn, at));
        at += PER_LINE;
      }
      out.add(
          new Proposal(
              proposal.id(),
              proposal.about(),
              lines,
              proposal.hungWeights(),
              proposal.coils(),
              proposal.handBends(),
              proposal.aids(),
              proposal.extras()));
    }
    return out;
  }

  private static GuyLine moved(GuyLine line, Cutting cutting, double[] drawn, int at) {
    int segment = cutting.skeleton().indexOf(line.at().segment());
    double shift = drawn[at] * TIE_ERROR / Readings.NINE_IN_TEN;
    double along = line.at().along() + shift / cutting.skeleton().length(segment);
    Spot spot =
        new Spot(
            line.at().segment(),
            Math.min(cutting.left(segment), Math.max(0, along)),
            line.at().extras());
    Anchor anchor = line.anchor();
    if (anchor instanceof Anchor.Fixed fixed) {
      double step = ANCHOR_ERROR / Readings.NINE_IN_TEN;
      Vector3 away = new Vector3(step * drawn[at + 1], step * drawn[at + 2], step * drawn[at + 3]);
      anchor = new Anchor.Fixed(fixed.point().plus(away));
    }
    return line.with(spot, anchor, line.hold());
  }
}
