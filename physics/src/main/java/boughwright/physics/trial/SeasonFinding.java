// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;

/**
 * One thing that date or condition of the tree say about a bend.
 *
 * @param best the best verdict it leaves
 * @param words what it is, in a sentence
 * @param until what to wait for, in a sentence; empty where waiting changes nothing
 */
record SeasonFinding(Verdict.Level best, String words, String until) {
  SeasonFinding {
    Objects.requireNonNull(best, "best");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(until, "until");
  }

  /** Something to know that takes nothing away. */
  static SeasonFinding note(String words) {
    return new SeasonFinding(Verdict.Level.TAKES_IT, words, "");
  }
}
