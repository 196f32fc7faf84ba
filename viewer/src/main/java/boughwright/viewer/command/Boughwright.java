// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;

/** The program: {@code java -jar boughwright.jar VERB}. */
public final class Boughwright {
  private Boughwright() {}

  /** Runs one command, in the same words everywhere, and leaves with its exit code. */
  public static void main(String[] args) {
    Locale.setDefault(Locale.ROOT);
    System.exit(run(Console.ofProcess(), WindowOpener.OF_PROCESS, List.of(args)));
  }

  /** Runs one command where there is no display; never throws. */
  static int run(Console console, List<String> args) {
    return run(console, WindowOpener.NONE, args);
  }

  /** Runs one command and gives its exit code; never throws. */
  static int run(Console console, WindowOpener opener, List<String> args) {
    ProblemHandler handler = new ProblemHandler(console);
    try {
      int code = commandLine(console, opener, handler).execute(args.toArray(String[]::new));
      return console.out().checkError() ? handler.unprinted() : code;
    } catch (RuntimeException | Error e) {
      return handler.defect(e);
    }
  }

  private static CommandLine commandLine(
      Console console, WindowOpener opener, ProblemHandler handler) {
    CommandLine line = new CommandLine(new Program(console, opener));
    line.addSubcommand(new CheckVerb(console));
    line.addSubcommand(new BendVerb(console));
    line.addSubcommand(new ReachVerb(console));
    line.addSubcommand(new FrontsVerb(console));
    line.addSubcommand(new BranchVerb(console));
    line.addSubcommand(new PullTestVerb(console));
    line.addSubcommand(new SpeciesVerb(console));
    line.addSubcommand(new MeasureVerb(console));
    line.addSubcommand(new ViewVerb(console, opener));
    line.setExpandAtFiles(false);
    line.setPosixClusteredShortOptionsAllowed(false);
    line.setOut(new PrintWriter(console.out(), true));
    line.setErr(new PrintWriter(console.err(), true));
    line.setParameterExceptionHandler(handler);
    line.setExecutionExceptionHandler(handler);
    line.setUsageHelpWidth(TextPage.WIDTH);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    return line;
  }
}
