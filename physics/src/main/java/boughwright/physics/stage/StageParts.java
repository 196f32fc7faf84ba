// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.PartRisk;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;

/** How far each stage of a bend goes, where the person left that open. */
final class StageParts {
  /**
   * Most that a stage may add to the bending strain of the place bent hardest (common practice 0.1
   * to 0.25 %, no source) [1].
   */
  static final double MOST_STRAIN = 0.002;

  /** Rounding that makes no further stage. */
  private static final double ROUNDING = 1e-6;

  private static final int MOST_STAGES = 16;

  /** Poses between which strain is taken to go evenly. */
  private static final int NODES = 5;

  /** Trials until the part is known to a hundredth. */
  private static final int TRIES = 7;

  private static final double LEAST = 0.05;

  private final TrialRequest request;
  private final TrialResult full;
  private final double risk;

  StageParts(TrialRequest request, TrialResult full, double risk) {
    this.request = request;
    this.full = full;
    this.risk = risk;
  }

  private TrialResult at(double part) {
    return HeldTree.of(request, new HeldTree.Grip(part, part)).result();
  }

  private boolean allowed(double part) {
    TrialResult result = at(part);
    return result.outcome().holds()
        && PartRisk.breaking(full, result).map(odds -> odds.p() <= risk).orElse(true);
  }

  /** The largest part whose odds are as asked, 1 where all of it is; 0 where none is. */
  double reached() {
    if (allowed(1)) {
      return 1;
    }
    if (!allowed(LEAST)) {
      return 0;
    }
    double low = LEAST;
    double high = 1;
    for (int n = 0; n < TRIES; n++) {
      double middle = (low + high) / 2;
      if (allowed(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Parts up to one, each adding the same strain and none more than is allowed. */
  List<Double> upTo(double reached) {
    double[] strain = new double[NODES + 1];
    for (int n = 1; n <= NODES; n++) {
      double found = at(reached * n / NODES).peak().map(Peak::bendingStrain).orElse(0.0);
      strain[n] = Math.max(strain[n - 1], found);
    }
    double most = strain[NODES];
    int stages = (int) Math.max(1, Math.min(MOST_STAGES, Math.ceil(most / MOST_STRAIN - ROUNDING)));
    List<Double> parts = new ArrayList<>();
    for (int k = 1; k < stages; k++) {
      parts.add(reached * part(strain, most * k / stages));
    }
    parts.add(reached);
    return parts;
  }

  private static double part(double[] strain, double wanted) {
    int n = 1;
    while (strain[n] < wanted) {
      n++;
    }
    double within = (wanted - strain[n - 1]) / (strain[n] - strain[n - 1]);
    return (n - 1 + within) / NODES;
  }
}
