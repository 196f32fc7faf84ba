// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tries the proposals of a plan. */
@Command(
    name = "bend",
    header = "Try the proposals of a plan: force, strain, the bent pose, a picture.",
    customSynopsis = {
      "java -jar boughwright.jar bend FILE [--plan ID] [--proposal ID,ID]",
      "                                    [--picture OUT.png] [--size WxH] [--json]"
    },
    description = {
      "Makes the cuts of the plan, then applies its guy-lines and weights together,",
      "and says what the pull in each line is, how far to tighten it, where the wood",
      "is bent hardest, and where the apex comes to stand. Nothing in the file is",
      "changed.",
      "",
      "Wood is taken as straight-line elastic for now: strain is shown beside the",
      "limits published for the species, and no verdict is given."
    },
    footer = {
      "Example: java -jar boughwright.jar bend hornbeam.tree.json --plan a",
      "                                    --picture hornbeam.png",
      "Lines under tension fly: wear eye protection."
    })
final class BendVerb extends Verb {
  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      hideParamSyntax = true,
      description = "A tree file, NAME.tree.json.")
  private List<String> files;

  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 1,
      description = "The plan to try. Without it every plan of the file is tried.")
  private String plan;

  @Option(
      names = "--proposal",
      paramLabel = "ID,ID",
      order = 2,
      description = "Only these proposals of the plan, together. Without it all of them.")
  private List<String> proposals = List.of();

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      order = 3,
      description = "Draw the tree before and after, from the front and from a side.")
  private String picture;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      order = 4,
      description = "Width and height of the picture in pixels, such as 1800x1200.")
  private String size;

  BendVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    Optional<Path> file = faults.tryTo(() -> InputFiles.only(files, "FILE"));
    PictureSize pixels = new OptionValues(faults).size(size);
    if (size != null && picture == null) {
      faults.add("--size", "no-picture", "there is no picture", "Add --picture OUT.png");
    }
    Optional<Path> out = Optional.empty();
    if (picture != null && file.isPresent()) {
      out = faults.tryTo(() -> OutputFile.forPicture(picture, file.get()));
    }
    Optional<TreeFile> tree = file.flatMap(path -> faults.tryTo(() -> TreeFiles.read(path)));
    Optional<List<PlanChoice>> choices =
        tree.flatMap(
            read ->
                faults.tryTo(
                    () -> PlanChoice.of(read.document(), Optional.ofNullable(plan), proposals)));
    if (picture != null && choices.isPresent() && choices.get().size() > 1) {
      faults.add(
          "--picture",
          "which-plan",
          "one picture shows one plan, and the file has " + choices.get().size(),
          "Say which one with --plan");
    }
    faults.throwIfAny();
    BendAnswer answer = tried(tree.orElseThrow(), choices.orElseThrow(), pixels, out);
    console().answer(json() ? BendJson.of(answer) : BendText.of(answer));
    return ExitCode.DONE;
  }

  private BendAnswer tried(
      TreeFile tree, List<PlanChoice> choices, PictureSize pixels, Optional<Path> out)
      throws InputException {
    Document document = tree.document();
    List<BendAnswer.Tried> tried = new ArrayList<>();
    try (Progress progress = Progress.of(console(), json())) {
      for (PlanChoice choice : choices) {
        progress.now("Trying plan " + choice.plan().id());
        TrialRequest request =
            new TrialRequest(
                document.tree(),
                choice.plan(),
                choice.proposals(),
                Published.speciesOf(document.tree()),
                RodOptions.DEFAULT);
        tried.add(BendAnswer.Tried.of(document, choice, Trial.run(request)));
      }
      if (out.isPresent()) {
        progress.now("Drawing the picture");
        BendAnswer.Tried one = tried.get(0);
        PrintedPicture.beforeAfter(document, one.choice().plan(), one.trial(), pixels)
            .write(out.get());
      }
    }
    return new BendAnswer(tree, tried, out.map(Path::toString));
  }
}
