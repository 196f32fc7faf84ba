// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.NearNames;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command line, in words a person can act on. */
final class UsageFaults {
  private UsageFaults() {}

  /** One fault for each thing that is wrong. */
  static List<Problem> of(ParameterException e) {
    CommandSpec spec = e.getCommandLine().getCommandSpec();
    if (e instanceof UnmatchedArgumentException unmatched) {
      boolean verbMissing = !spec.subcommands().isEmpty();
      return unmatched.getUnmatched().stream()
          .limit(verbMissing ? 1 : Long.MAX_VALUE)
          .map(word -> unknown(spec, word))
          .toList();
    }
    if (e instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing.getMissing().stream().map(UsageFaults::noValue).toList();
    }
    if (e instanceof OverwrittenOptionException twice) {
      return List.of(
          fault(
              nameOf(twice.getOverwritten()),
              "option-twice",
              "is given twice",
              "Give it once, or run the command twice"));
    }
    String first = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    return List.of(fault(spec.name(), "usage", first, helpOf(spec)));
  }

  private static Problem unknown(CommandSpec spec, String word) {
    boolean option = word.startsWith("-") && word.length() > 1;
    Collection<String> known = option ? spec.optionsMap().keySet() : spec.subcommands().keySet();
    String kind = option ? "unknown-option" : "unknown-verb";
    if (!option && known.isEmpty()) {
      return fault(quoted(word), "extra-word", "is one word too many", helpOf(spec));
    }
    String found = option ? "there is no such option of " + spec.name() : "there is no such verb";
    List<String> near = NearNames.of(word.split("=", 2)[0], known);
    String remedy =
        near.isEmpty() ? helpOf(spec) : "Did you mean " + String.join(" or ", near) + "?";
    return fault(option ? word : quoted(word), kind, found, remedy);
  }

  private static Problem noValue(ArgSpec argument) {
    return fault(
        nameOf(argument),
        "no-value",
        "has no value",
        "Write " + argument.paramLabel() + " after it");
  }

  private static String nameOf(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static String helpOf(CommandSpec spec) {
    String verb = spec.parent() == null ? "" : spec.name() + " ";
    return "See java -jar boughwright.jar " + verb + "--help";
  }

  private static Problem fault(String where, String kind, String found, String remedy) {
    return Problem.fault(Place.of(where), kind, found, remedy);
  }

  /** A word that is none of those an option takes. */
  static Problem noneOf(String option, String kind, String word, List<String> known) {
    List<String> near = NearNames.of(word, known);
    return fault(
        option,
        kind,
        quoted(word) + " is none of " + String.join(", ", known),
        near.isEmpty() ? "Give one of them" : "Did you mean " + String.join(" or ", near) + "?");
  }

  static String quoted(String word) {
    return '"' + word + '"';
  }
}
