// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.wood.Doubt;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The inputs a person may ask about, as numbers of a draw, and their shares in the doubt about
 * cracking: stiffness and yielding of the limb that would crack first, each caliper reading on the
 * wood that is bent, and each guy-line's place.
 */
final class Inputs {
  /** Shares below this are not worth a word [1]. */
  private static final double NOTHING = 0.005;

  private static final int STIFFNESS = 0;
  private static final int YIELDING = 1;
  private static final int FIRST_READING = 2;

  private final int limb;
  private final String limbName;
  private final List<Reading> readings = new ArrayList<>();
  private final List<GuyLine> lines;

  /** A caliper reading and where it was taken. */
  private record Reading(int index, String place) {}

  /**
   * For the wood that is bent.
   *
   * @param limb the limb that would crack first
   * @param bent indices of the segments that are bent
   */
  Inputs(Beliefs beliefs, Skeleton skeleton, int limb, List<Integer> bent, List<Proposal> tried) {
    this.limb = limb;
    limbName = skeleton.segment(beliefs.limbs().first(limb)).id();
    lines = tried.stream().flatMap(proposal -> proposal.guyLines().stream()).toList();
    for (int i : bent) {
      String id = skeleton.segment(i).id();
      note(beliefs.reading(beliefs.readings().atStart(i)), "the start of \"" + id + "\"");
      note(beliefs.reading(beliefs.readings().atEnd(i)), "the end of \"" + id + "\"");
    }
  }

  private void note(int index, String place) {
    if (readings.stream().noneMatch(reading -> reading.index == index)) {
      readings.add(new Reading(index, place));
    }
  }

  /** How many variables guy-lines have. */
  int placements() {
    return Placement.PER_LINE * lines.size();
  }

  int count() {
    return FIRST_READING + readings.size() + placements();
  }

  /** The inputs of a draw, shape (count). */
  double[] values(Beliefs beliefs, double[] shared, double[] own, double[] placement) {
    double[] values = new double[count()];
    double[] deviation = beliefs.limbDeviation(shared, own, limb);
    values[STIFFNESS] = deviation[0];
    values[YIELDING] = deviation[1];
    for (int k = 0; k < readings.size(); k++) {
      values[FIRST_READING + k] = own[readings.get(k).index];
    }
    System.arraycopy(placement, 0, values, FIRST_READING + readings.size(), placement.length);
    return values;
  }

  /**
   * Shares of all inputs and of the limit itself, the largest first.
   *
   * @param tally over all draws
   * @param limit doubt about the crack strain when the modulus is known
   * @param tested whether a pull test of the limb is kept already
   */
  List<InputShare> shares(DrawTally tally, Doubt limit, boolean tested) {
    double own = limit.total() * limit.total();
    double all = tally.variance() + own;
    double drawn = tally.variance() / all;
    List<InputShare> out = new ArrayList<>();
    out.add(new InputShare("the strain at which this wood cracks", own / all, ""));
    out.add(
        new InputShare(
            "the stiffness of limb \"" + limbName + "\"",
            drawn * tally.share(STIFFNESS),
            tested
                ? "A second pull test of \"" + limbName + "\" narrows it further."
                : "A pull test of \"" + limbName + "\" narrows it."));
    out.add(
        new InputShare(
            "the strain at which \"" + limbName + "\" begins to yield",
            drawn * tally.share(YIELDING),
            ""));
    for (int k = 0; k < readings.size(); k++) {
      String place = readings.get(k).place;
      out.add(
          new InputShare(
              "the caliper at " + place,
              drawn * tally.share(FIRST_READING + k),
              "Measure the caliper at " + place + " again."));
    }
    for (int n = 0; n < lines.size(); n++) {
      out.add(placement(tally, drawn, n));
    }
    return out.stream()
        .filter(share -> share.share() > NOTHING)
        .sorted(Comparator.comparingDouble(InputShare::share).reversed())
        .toList();
  }

  private InputShare placement(DrawTally tally, double drawn, int n) {
    double share = 0;
    for (int k = 0; k < Placement.PER_LINE; k++) {
      share += tally.share(FIRST_READING + readings.size() + Placement.PER_LINE * n + k);
    }
    String id = lines.get(n).id();
    return new InputShare(
        "where line \"" + id + "\" is tied and anchored",
        drawn * Math.min(1, share),
        "Mark pad and anchor of line \"" + id + "\" before you tie it.");
  }
}
