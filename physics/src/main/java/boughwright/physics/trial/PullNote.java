// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;

/**
 * What a person must know about a pull test besides its result.
 *
 * @param kind what is the matter
 * @param isQuestion whether the test is better not used before the person has looked again
 * @param words the matter, in a sentence
 * @param remedy what to do, in a sentence
 */
public record PullNote(Kind kind, boolean isQuestion, String words, String remedy) {

  /** What is the matter with a test. */
  public enum Kind {
    /** It does not fit what is known of the wood. */
    NOT_EXPECTED,
    /** It does not fit the other tests. */
    NOT_LIKE_THE_OTHERS,
    /** Another test does not fit this one and the rest. */
    OTHER_TEST_STANDS_OUT,
    /** Its two loads do not agree. */
    LOADS_DISAGREE,
    /** The movement was too small to be read well. */
    TOO_SMALL,
    /** The wood flowed, or was in danger. */
    TOO_HARD,
    /** The tree below the branch moved much. */
    BASE_MOVED,
    /** The tree below the branch must have turned, and nobody measured it. */
    BASE_NOT_READ
  }

  public PullNote {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(remedy, "remedy");
  }
}
