// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.Proposal;
import java.util.ArrayList;
import java.util.List;

/**
 * What a plan bends and holds with.
 *
 * @param hands pulls by hand
 * @param coils wire wound round it
 * @param lines guy-lines
 * @param weights hung weights
 */
record Means(boolean hands, boolean coils, boolean lines, boolean weights) {
  static Means of(List<Proposal> proposals) {
    return new Means(
        proposals.stream().anyMatch(one -> !one.handBends().isEmpty()),
        proposals.stream().anyMatch(one -> !one.coils().isEmpty()),
        proposals.stream().anyMatch(one -> !one.guyLines().isEmpty()),
        proposals.stream().anyMatch(one -> !one.hungWeights().isEmpty()));
  }

  /** True if something holds when the hands are off. */
  boolean hold() {
    return coils || lines || weights;
  }

  /** What holds, in words. */
  String holders() {
    List<String> named = new ArrayList<>();
    if (coils) {
      named.add("wire");
    }
    if (lines) {
      named.add("lines");
    }
    if (weights) {
      named.add("weights");
    }
    return String.join(" and ", named);
  }
}
