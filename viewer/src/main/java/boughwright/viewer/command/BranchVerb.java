// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.Species;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.PlainBranch;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TipPull;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The ten-second answer for one plain branch. */
@Command(
    name = "branch",
    header = "The ten-second answer for one plain branch, without a file.",
    customSynopsis = {
      "java -jar boughwright.jar branch --species NAME --length-mm L",
      "        --calipers-mm THICK,THIN --tip-mm DOWN [--bark-mm B] [--moe-GPa E]",
      "        [--caliper-error-mm E] [--samples N] [--seed N] [--no-risk]",
      "        [--on DATE] [--frost] [--temperature C] [--hemisphere north|south]",
      "        [--months-since-repotting N] [--months-since-collecting N]",
      "        [--months-since-hard-work N] [--json]"
    },
    description = {
      "A straight, level branch, held where it starts: which force at its tip, straight",
      "down all the way like a hung weight, brings the tip down by so much, how hard",
      "that bends it, and how likely it cracks or kinks. Lengths are millimetres, or",
      "have their unit beside them (14in)."
    },
    footer = {
      "Example: java -jar boughwright.jar branch --species \"european hornbeam\"",
      "         --length-mm 350 --calipers-mm 16,11 --tip-mm 60 --bark-mm 0.8"
    })
final class BranchVerb extends Verb {
  @Option(
      names = "--species",
      paramLabel = "NAME",
      order = 1,
      description = "Botanical or common name; see the verb species.")
  private String species;

  @Option(
      names = "--length-mm",
      paramLabel = "L",
      order = 2,
      description = "From where the branch is held to where you pull.")
  private String length;

  @Option(
      names = "--calipers-mm",
      paramLabel = "THICK,THIN",
      order = 3,
      description = "Calipers over bark at those two places, with decimal points.")
  private String calipers;

  @Option(
      names = "--tip-mm",
      paramLabel = "DOWN",
      order = 4,
      description = "How far the tip is to come down.")
  private String tip;

  @Option(
      names = "--bark-mm",
      paramLabel = "B",
      order = 5,
      description = "Thickness of the bark, one layer; 0 by default.")
  private String bark;

  @Option(
      names = "--moe-GPa",
      paramLabel = "E",
      order = 6,
      description = "Modulus of elasticity of this very branch, if you know it.")
  private String moe;

  @Option(
      names = "--caliper-error-mm",
      paramLabel = "E",
      order = 7,
      description = "Nine caliper readings in ten are right within this; 0.3 by default.")
  private String caliperError;

  @Mixin private Sampling sampling;

  @Mixin private OccasionOptions occasion;

  BranchVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    OptionValues values = new OptionValues(faults);
    Optional<Species> wood = Optional.empty();
    if (values.isGiven("--species", species, "Give the name of a wood")) {
      wood = faults.tryTo(() -> SpeciesChoice.named("--species", species));
    }
    Optional<PlainBranch> branch = branch(values, faults);
    OptionalDouble down = OptionalDouble.empty();
    if (values.isGiven("--tip-mm", tip, "Give how far the tip is to come down")) {
      down = down(branch, values);
    }
    Optional<Trying.Draws> draws = sampling.read(faults);
    Said said = occasion.read(faults);
    faults.throwIfAny();
    BranchAnswer answer;
    try (Progress progress = Progress.of(console(), json())) {
      TipPull pull = TipPull.of(branch.orElseThrow(), wood.orElseThrow(), down.orElseThrow());
      TrialRun run = new TrialRun(new Trying(draws, said, Optional.empty()), progress);
      answer = BranchAnswer.of(pull, wood.get(), run);
    }
    console().answer(json() ? BranchJson.of(answer) : BranchText.of(answer));
    return ExitCode.DONE;
  }

  private Optional<PlainBranch> branch(OptionValues values, Faults faults) {
    OptionalDouble long1 = OptionalDouble.empty();
    if (values.isGiven("--length-mm", length, "Give the length of the branch")) {
      long1 = values.length(length, range("--length-mm", 1, 20000, "the length of the branch"));
    }
    double[] ends = {};
    if (values.isGiven("--calipers-mm", calipers, "Give two calipers, such as 16,11")) {
      ends = calipers(values, faults);
    }
    OptionalDouble layer =
        bark == null
            ? OptionalDouble.of(0)
            : values.length(bark, range("--bark-mm", 0, 100, "the thickness of the bark"));
    OptionalDouble error =
        caliperError == null
            ? OptionalDouble.empty()
            : values.length(
                caliperError, range("--caliper-error-mm", 0.01, 10, "an error such as 0.3"));
    OptionalDouble own =
        moe == null
            ? OptionalDouble.empty()
            : values.number(moe, range("--moe-GPa", 0.01, 100, "a modulus in GPa, such as 6.5"));
    if (long1.isEmpty() || ends.length != 2 || layer.isEmpty() || isAllBark(ends, layer, faults)) {
      return Optional.empty();
    }
    return Optional.of(
        new PlainBranch(
            long1.getAsDouble(),
            ends[0],
            ends[1],
            layer.getAsDouble(),
            own.isPresent() ? OptionalDouble.of(1e9 * own.getAsDouble()) : own,
            error));
  }

  private double[] calipers(OptionValues values, Faults faults) {
    String[] parts = halves(calipers.strip());
    if (parts.length != 2) {
      faults.add(
          "--calipers-mm",
          "no-two-calipers",
          UsageFaults.quoted(calipers) + " is not two calipers",
          "Give the thick and the thin one, such as 16.5,11");
      return new double[] {};
    }
    OptionValues.Range range = range("--calipers-mm", 0.5, 1000, "calipers over bark");
    return List.of(parts).stream()
        .map(part -> values.length(part, range))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .toArray();
  }

  /** The two sides of a comma, else of a semicolon, else of a space; one piece if it is not two. */
  private static String[] halves(String text) {
    for (String separator : List.of(",", ";", " +")) {
      String[] parts = text.split(separator, -1);
      if (parts.length == 2) {
        return parts;
      }
    }
    return new String[] {text};
  }

  private static boolean isAllBark(double[] ends, OptionalDouble layer, Faults faults) {
    double thin = Math.min(ends[0], ends[1]);
    boolean all = layer.getAsDouble() >= thin / 2;
    if (all) {
      faults.add(
          "--bark-mm",
          "all-bark",
          String.format(
              Locale.ROOT,
              "two layers of %s mm leave no wood in a caliper of %s mm",
              Shown.plain(1000 * layer.getAsDouble()),
              Shown.plain(1000 * thin)),
          "Give the thickness of one layer");
    }
    return all;
  }

  private OptionalDouble down(Optional<PlainBranch> branch, OptionValues values) {
    if (branch.isEmpty()) {
      return values.length(tip, range("--tip-mm", 0.01, 20000, "how far the tip comes down"));
    }
    double most = 1000 * branch.get().deepestTip();
    return values.length(
        tip,
        range(
            "--tip-mm",
            0.001 * most,
            most,
            "a movement this branch can make: at most nine tenths of its length"));
  }

  private static OptionValues.Range range(String option, double low, double high, String what) {
    return new OptionValues.Range(option, low, high, what);
  }
}
