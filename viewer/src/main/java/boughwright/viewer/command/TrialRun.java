// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;

/**
 * Tries plans while somebody watches.
 *
 * @param trying how plans are tried
 * @param progress told what is going on
 */
record TrialRun(Trying trying, Progress progress) {
  /**
   * Tries one request, with its risk and verdict where that is wanted.
   *
   * @param name what is tried, such as "plan a"
   */
  TrialResult of(TrialRequest request, String name) {
    return trying.judged(request, name, progress);
  }

  Said said() {
    return trying.said();
  }
}
