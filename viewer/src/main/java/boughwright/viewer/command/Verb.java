// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What every verb has: the switch to JSON, a page of help, a version. */
@Command(
    sortOptions = false,
    versionProvider = Version.class,
    synopsisHeading = "",
    descriptionHeading = "%n",
    parameterListHeading = "%n",
    optionListHeading = "%n",
    footerHeading = "%n")
abstract class Verb implements Callable<Integer> {
  private final Console console;

  @Option(
      names = "--json",
      order = 90,
      description = "Print the answer as JSON, for programs, and nothing else.")
  private boolean json;

  @Mixin private HelpOptions help;

  Verb(Console console) {
    this.console = console;
  }

  final Console console() {
    return console;
  }

  final boolean json() {
    return json;
  }

  /** Told what is going on, and tells it to a person who watches. */
  final Progress progress() {
    return Progress.of(console, json);
  }

  /** Prints an answer in the form that was asked for. */
  final int answer(Supplier<String> asJson, Supplier<String> asText) {
    console.answer(json ? asJson.get() : asText.get());
    return ExitCode.DONE;
  }

  @Override
  public final Integer call() throws InputException {
    return act();
  }

  /**
   * Does what the person asked for and prints the answer.
   *
   * @return the exit code
   * @throws InputException with every fault of the input; nothing was printed or written then
   */
  abstract int act() throws InputException;
}
