// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Options on how the risk is drawn. */
final class Sampling {
  /** Draws when nothing is said. */
  static final int DEFAULT_SAMPLES = 4_000;

  private static final int FEWEST = 100;
  private static final int MOST = 200_000;
  private static final long DEFAULT_SEED = 1;

  /** The largest whole number that programs of any kind read back exactly. */
  private static final long LARGEST_SEED = 1L << 53;

  @Option(
      names = "--samples",
      paramLabel = "N",
      order = 40,
      description = "Draws for the risk, 100 to 200000; 4000 by default, for reach 500.")
  private String samples;

  @Option(
      names = "--seed",
      paramLabel = "N",
      order = 41,
      description = "Start of the draws, 1 by default: the same seed, the same numbers.")
  private String seed;

  @Option(
      names = "--no-risk",
      order = 42,
      description = "Only the best guess: no draws, no probabilities, no verdict.")
  private boolean none;

  /**
   * How many draws, from which seed.
   *
   * @param samples number of draws
   * @param seed seed
   */
  record Draws(int samples, long seed) {}

  /** What was asked for; empty if no risk is wanted. */
  Optional<Draws> read(Faults faults) {
    return read(faults, DEFAULT_SAMPLES);
  }

  /**
   * The same, with another number of draws when nothing is said.
   *
   * @param usual draws when nothing is said
   */
  Optional<Draws> read(Faults faults, int usual) {
    OptionValues values = new OptionValues(faults);
    long count =
        values.whole(
            samples,
            new OptionValues.Range("--samples", FEWEST, MOST, "a whole number such as 4000"),
            usual);
    long start =
        values.whole(
            seed,
            new OptionValues.Range("--seed", 0, LARGEST_SEED, "a whole number such as 1"),
            DEFAULT_SEED);
    if (none && (samples != null || seed != null)) {
      faults.add(
          samples != null ? "--samples" : "--seed",
          "no-draws",
          "nothing is drawn with --no-risk",
          "Leave one of the two out");
    }
    return none ? Optional.empty() : Optional.of(new Draws((int) count, start));
  }
}
