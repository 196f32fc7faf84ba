// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.stage.Trying;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options on how the risk is drawn. */
final class Sampling {
  private static final int FEWEST = 100;
  private static final int MOST = 200_000;

  /** The largest whole number that programs of any kind read back exactly. */
  private static final long LARGEST_SEED = 1L << 53;

  @Option(
      names = "--samples",
      paramLabel = "N",
      order = 40,
      description = "Draws for the risk, 100 to 200000; 4000 by default, 500 for reach and apex.")
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

  /** What was asked for; empty if no risk is wanted. */
  Optional<Trying.Draws> read(Faults faults) {
    return read(faults, Trying.Draws.USUAL.samples());
  }

  /**
   * The same, with another number of draws when nothing is said.
   *
   * @param usual draws when nothing is said
   */
  Optional<Trying.Draws> read(Faults faults, int usual) {
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
            Trying.Draws.USUAL.seed());
    if (none && (samples != null || seed != null)) {
      faults.add(
          samples != null ? "--samples" : "--seed",
          "no-draws",
          "nothing is drawn with --no-risk",
          "Leave one of the two out");
    }
    return none ? Optional.empty() : Optional.of(new Trying.Draws((int) count, start));
  }
}
