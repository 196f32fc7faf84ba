// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.measure.MeasuredTree;
import boughwright.modeller.measure.TapeSheet;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a tree file from a tape sheet. */
@Command(
    name = "measure",
    header = "Make a tree file from a tape sheet.",
    customSynopsis = {
      "java -jar boughwright.jar measure SHEET.csv [-o OUT.tree.json] [--replace]",
      "                                            [--json]"
    },
    description = {
      "Reads a table with one row for each straight piece of the tree: its name, the",
      "piece it starts on, where it points, its length and its caliper at both ends.",
      "examples/tape-sheet-template.csv is one to fill in. Millimetres, centimetres or",
      "inches, decimal point or comma.",
      "",
      "The tree file is written whole or not at all, and a file that is there already",
      "is left alone unless you say --replace; then the old one is kept beside it with",
      "a ~ at the end of its name."
    },
    footer = "Example: java -jar boughwright.jar measure larch.csv -o larch.tree.json")
final class MeasureVerb extends Verb {
  @Parameters(
      paramLabel = "SHEET.csv",
      arity = "0..*",
      hideParamSyntax = true,
      description = "The tape sheet.")
  private List<String> files;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "OUT",
      order = 1,
      description = "The tree file to make; the name of the sheet with .tree.json by default.")
  private String out;

  @Option(
      names = "--replace",
      order = 2,
      description = "Replace a tree file that is there, and keep the old one.")
  private boolean replace;

  MeasureVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    Optional<Path> sheet = faults.tryTo(() -> InputFiles.only(files, "SHEET.csv"));
    Optional<MeasuredTree> tree = sheet.flatMap(path -> faults.tryTo(() -> TapeSheet.read(path)));
    Optional<Path> target =
        sheet.flatMap(
            path -> faults.tryTo(() -> OutputFile.forTree(targetName(path), path, replace)));
    faults.throwIfAny();
    TreeFiles.write(tree.orElseThrow().document(), target.orElseThrow());
    console().answer(answer(tree.get(), target.get()));
    return ExitCode.DONE;
  }

  private String targetName(Path sheet) {
    if (out != null) {
      return out;
    }
    String name = sheet.getFileName().toString();
    for (String end : List.of(".sheet.csv", ".csv", ".tsv", ".txt")) {
      if (name.toLowerCase(Locale.ROOT).endsWith(end)) {
        name = name.substring(0, name.length() - end.length());
        break;
      }
    }
    return sheet.resolveSibling(name + ".tree.json").toString();
  }

  private String answer(MeasuredTree tree, Path target) {
    int segments = tree.document().tree().segments().size();
    if (json()) {
      ObjectNode node = JsonAnswer.object();
      node.put("file", target.toString());
      node.put("name", tree.document().tree().name());
      node.put("segments", segments);
      node.set("notes", ProblemJson.of(tree.warnings()));
      return JsonAnswer.text(node);
    }
    TextPage page = new TextPage();
    page.words(
        target
            + ": written, "
            + segments
            + (segments == 1 ? " segment of " : " segments of ")
            + tree.document().tree().name());
    tree.warnings().stream().map(Problem::line).forEach(page::words);
    return page.toString();
  }
}
