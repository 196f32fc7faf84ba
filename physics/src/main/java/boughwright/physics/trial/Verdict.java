// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.Objects;

/**
 * The answer in a grower's words.
 *
 * @param level what to do
 * @param reason why, in a sentence
 * @param firstChange the first thing that would change it, in a sentence; empty when nothing need
 *     change
 * @param season what date and condition of the tree speak for or against, each a sentence
 * @param life whether the limb lives on, apart from breaking, each a sentence
 */
public record Verdict(
    Level level, String reason, String firstChange, List<String> season, List<String> life) {

  /** What to do, from good to bad. */
  public enum Level {
    TAKES_IT("takes it"),
    IN_STAGES("take it slowly, in stages"),
    WITH_PROTECTION("only with protection, and at your risk"),
    NO("no");

    private final String words;

    Level(String words) {
      this.words = words;
    }

    /** The level as it is said. */
    public String words() {
      return words;
    }
  }

  public Verdict {
    Objects.requireNonNull(level, "level");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(firstChange, "firstChange");
    season = List.copyOf(season);
    life = List.copyOf(life);
  }
}
