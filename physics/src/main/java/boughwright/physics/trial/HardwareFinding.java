// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;

/**
 * Something said of what holds a bend.
 *
 * @param level how it stands
 * @param topic what it is about
 * @param sentence the words for a person, with figures, units and what to do
 */
public record HardwareFinding(Level level, Topic topic, String sentence) {
  /** How something stands. */
  public enum Level {
    /** It bears what is asked of it. */
    FINE,
    /** It is near its limit, or nobody can tell. */
    LOOK,
    /** It does not bear what is asked of it. */
    NO
  }

  /** What a finding is about. */
  public enum Topic {
    STRAND,
    TIGHTENING,
    PAD,
    ANCHOR,
    CROTCH,
    STANDING
  }

  public HardwareFinding {
    Objects.requireNonNull(level, "level");
    Objects.requireNonNull(topic, "topic");
    Objects.requireNonNull(sentence, "sentence");
  }

  static HardwareFinding fine(Topic topic, String sentence) {
    return new HardwareFinding(Level.FINE, topic, sentence);
  }

  static HardwareFinding look(Topic topic, String sentence) {
    return new HardwareFinding(Level.LOOK, topic, sentence);
  }

  static HardwareFinding no(Topic topic, String sentence) {
    return new HardwareFinding(Level.NO, topic, sentence);
  }
}
