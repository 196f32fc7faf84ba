// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line without a verb: opens the window; without a display, says what there is. */
@Command(
    name = "boughwright",
    sortOptions = false,
    versionProvider = Version.class,
    customSynopsis = "java -jar boughwright.jar VERB ...",
    header = "A measured tree, and what it takes to bend its branches.",
    commandListHeading = "%nVerbs:%n",
    optionListHeading = "%nOptions:%n",
    description = {"", "Without a verb it opens the window on the tree you worked on last."},
    footer = {
      "",
      "Each verb explains itself: java -jar boughwright.jar bend --help",
      "",
      "Exit codes: 0 done, 1 a defect of this program, 2 something to mend in what",
      "was given, with one line for each fault.",
      "",
      "Numbers are estimates, for trees in containers. Lines under tension fly: wear",
      "eye protection."
    })
final class Program implements Callable<Integer> {
  private final Console console;
  private final WindowOpener opener;

  @Spec private CommandSpec spec;

  @Mixin private HelpOptions help;

  Program(Console console, WindowOpener opener) {
    this.console = console;
    this.opener = opener;
  }

  @Override
  public Integer call() throws InputException {
    if (opener.hasDisplay()) {
      opener.open(Optional.empty());
      return ExitCode.DONE;
    }
    console.answer(spec.commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF));
    return ExitCode.DONE;
  }
}
