// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Names of files as a person gives them. */
final class InputFiles {
  private InputFiles() {}

  /**
   * The one file of a verb that takes one.
   *
   * @param words what stood on the command line besides options
   * @param label what the help calls it
   * @throws InputException if there is none, or more than one
   */
  static Path only(List<String> words, String label) throws InputException {
    if (words == null || words.isEmpty()) {
      throw refused(label, "no-file-given", "no file is given", "Name the file to read");
    }
    if (words.size() > 1) {
      throw refused(
          words.get(1),
          "extra-word",
          "is one word too many, one file is read",
          "Put a name with spaces in quotes");
    }
    return path(words.get(0));
  }

  /**
   * A name as a path.
   *
   * @throws InputException if no file can have that name
   */
  static Path path(String name) throws InputException {
    if (name.isBlank()) {
      throw refused(UsageFaults.quoted(name), "no-path", "is no name of a file", "Name a file");
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw refused(name, "no-path", "no file can have this name here", "Check the name");
    }
  }

  private static InputException refused(String where, String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(where), kind, found, remedy));
  }
}
