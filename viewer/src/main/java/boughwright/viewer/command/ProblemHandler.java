// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.problem.VisibleText;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Turns whatever went wrong into lines on stderr and an exit code; the only place that does. */
final class ProblemHandler implements IParameterExceptionHandler, IExecutionExceptionHandler {
  private static final String OWN = "boughwright.";

  private final Console console;

  ProblemHandler(Console console) {
    this.console = console;
  }

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    return refuse(UsageFaults.of(e));
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine line, ParseResult parsed) {
    return e instanceof InputException refused ? refuse(refused.problems()) : defect(e);
  }

  private int refuse(List<Problem> problems) {
    problems.forEach(problem -> console.err().println(problem.line()));
    console.err().flush();
    return ExitCode.REFUSED;
  }

  /** The answer could not be printed: a full disk, a closed pipe. */
  int unprinted() {
    return refuse(
        List.of(
            Problem.fault(
                Place.of("output"),
                "not-printed",
                "the answer could not be printed in full",
                "Check the disk or the program it is sent to")));
  }

  /** A defect of the program; shows its stack trace only when asked to. */
  int defect(Throwable e) {
    if (e instanceof OutOfMemoryError) {
      return refuse(
          List.of(
              Problem.fault(
                  Place.of("memory"),
                  "out-of-memory",
                  "this needs more memory than Java was given",
                  "Start it as java -Xmx2g -jar boughwright.jar, or ask for less")));
    }
    if (console.traced()) {
      e.printStackTrace(console.err());
    }
    String words = e.getMessage() == null ? "" : ": " + e.getMessage();
    console
        .err()
        .println(
            VisibleText.of(
                "This is a defect of Boughwright "
                    + Version.number()
                    + ", not of what you gave it ("
                    + e.getClass().getSimpleName()
                    + words
                    + place(e)
                    + "). Please report it with the command and the file"));
    console.err().flush();
    return ExitCode.DEFECT;
  }

  private static String place(Throwable e) {
    for (StackTraceElement element : e.getStackTrace()) {
      if (element.getClassName().startsWith(OWN)) {
        String name = element.getClassName();
        return ", " + name.substring(name.lastIndexOf('.') + 1) + ":" + element.getLineNumber();
      }
    }
    return "";
  }
}
