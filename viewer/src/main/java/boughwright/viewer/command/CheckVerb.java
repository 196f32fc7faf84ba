// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.problem.VisibleText;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Names every fault of tree files. */
@Command(
    name = "check",
    header = "Read tree files and name every fault, with its place and its remedy.",
    customSynopsis = "java -jar boughwright.jar check FILE... [--json]",
    description = {
      "Reads each file to its end and prints one line for each fault: file, line and",
      "column, the segment or line it is about, what is wrong, and how to mend it.",
      "Lines that start with \"note\" are worth a look; the file is usable with them.",
      "No file is changed."
    },
    footer = {
      "Example: java -jar boughwright.jar check hornbeam.tree.json",
      "Exit code 2 if any file has a fault."
    })
final class CheckVerb extends Verb {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      hideParamSyntax = true,
      description = "Tree files, NAME.tree.json.")
  private List<String> files;

  CheckVerb(Console console) {
    super(console);
  }

  /** What became of one file. */
  private record Checked(String name, Optional<Document> document, List<Problem> problems) {}

  @Override
  int act() throws InputException {
    if (files == null) {
      InputFiles.only(List.of(), "FILE");
    }
    List<Checked> all = new ArrayList<>();
    try (Progress progress = progress()) {
      for (String file : files) {
        progress.now("Reading " + file);
        all.add(check(file));
      }
    }
    console().answer(json() ? json(all) : text(all));
    Faults faults = new Faults();
    all.forEach(one -> one.problems.stream().filter(Problem::isFault).forEach(faults::add));
    faults.throwIfAny();
    return ExitCode.DONE;
  }

  private static Checked check(String file) {
    Faults faults = new Faults();
    Optional<TreeFile> read = faults.tryTo(() -> TreeFiles.read(InputFiles.path(file)));
    return new Checked(
        file, read.map(TreeFile::document), read.map(TreeFile::warnings).orElse(faults.all()));
  }

  private static String text(List<Checked> all) {
    StringBuilder text = new StringBuilder();
    for (Checked one : all) {
      one.document()
          .ifPresent(
              document ->
                  text.append(VisibleText.of(one.name))
                      .append(": sound, ")
                      .append(count(document.tree().segments().size(), "segment"))
                      .append(", ")
                      .append(count(document.plans().size(), "plan"))
                      .append('\n'));
      one.problems.stream()
          .filter(problem -> !problem.isFault())
          .forEach(note -> text.append(note.line()).append('\n'));
    }
    return text.toString();
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private static String json(List<Checked> all) {
    ObjectNode answer = JsonAnswer.object();
    ArrayNode list = answer.putArray("files");
    for (Checked one : all) {
      ObjectNode node = list.addObject();
      node.put("file", one.name);
      node.put("sound", one.document.isPresent());
      one.document()
          .ifPresent(
              document -> {
                node.put("name", document.tree().name());
                node.put("segments", document.tree().segments().size());
                node.put("plans", document.plans().size());
              });
      node.set("problems", ProblemJson.of(one.problems));
    }
    return JsonAnswer.text(answer);
  }
}
