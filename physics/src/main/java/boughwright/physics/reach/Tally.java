// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.EnumMap;
import java.util.Map;

/**
 * How many pairs of a place and an anchor were no choice, by the first reason found; may be told
 * from any thread.
 */
final class Tally {
  private final Map<Reason, Integer> counts = new EnumMap<>(Reason.class);

  synchronized void note(Reason reason) {
    counts.merge(reason, 1, Integer::sum);
  }

  /** The counts, in the order of the reasons. */
  synchronized Map<Reason, Integer> counts() {
    return new EnumMap<>(counts);
  }
}
