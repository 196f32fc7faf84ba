// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.LineStrength;
import java.util.Comparator;

/**
 * A guy-line in the bent pose.
 *
 * @param line the line
 * @param trial what the trial does to it
 * @param pull pull it is judged for [N]
 * @param skeleton the tree
 * @param result what the trial does to the tree
 */
record LineAtWork(
    GuyLine line, LineTrial trial, double pull, Skeleton skeleton, TrialResult result) {

  static LineAtWork of(GuyLine line, LineTrial trial, Skeleton skeleton, TrialResult result) {
    double high =
        result
            .risk()
            .map(risk -> risk.tensions().get(line.id()))
            .map(Range::high)
            .orElse(trial.tension());
    return new LineAtWork(line, trial, Math.max(high, trial.tension()), skeleton, result);
  }

  /** Which way the line pulls the tree. */
  Vector3 toward() {
    return trial.anchor().minus(trial.pad()).direction().vector();
  }

  /** Distance between its points in the measured pose [m]. */
  double gap() {
    return trial.length() + trial.shortening();
  }

  /** How much longer its strand is under the pull of the best guess [m]. */
  double stretch() {
    return line.tackle()
        .strand()
        .map(
            strand -> {
              // L (1 + c T) is the length seen, c being the compliance of one metre
              double perMetre = LineStrength.compliance(strand, 1) * trial.tension();
              return trial.length() * perMetre / (1 + perMetre);
            })
        .orElse(0.0);
  }

  /** Diameter over bark where a place is [m]. */
  double diameter(Spot spot) {
    return skeleton.caliper(skeleton.indexOf(spot.segment()), spot.along());
  }

  /** The wood nearest to a place in the bent pose. */
  PathSample sample(Spot spot) {
    SegmentTrial segment = result.segment(spot.segment()).orElseThrow();
    return segment.samples().stream()
        .min(Comparator.comparingDouble(sample -> Math.abs(sample.along() - spot.along())))
        .orElseThrow();
  }

  /** Which way the branch runs at the pad. */
  Direction3 axis() {
    return sample(line.at()).direction();
  }
}
