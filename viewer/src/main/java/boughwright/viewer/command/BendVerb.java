// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.command.PictureOptions.Wanted;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tries the proposals of a plan. */
@Command(
    name = "bend",
    header = "Try the proposals of a plan: whether the wood takes it, force, a picture.",
    customSynopsis = {
      "java -jar boughwright.jar bend FILE [--plan ID] [--proposal ID,ID]",
      "                                    [--picture OUT.png] [--size WxH] [--in-leaf]",
      "        [--details] [--json]",
      "        [--most-risk P] [--stays P] [--repot] [--no-course]",
      "        [--samples N] [--seed N] [--no-risk] [--on DATE] [--frost]",
      "        [--temperature C] [--hemisphere north|south] [--months-since-repotting N]",
      "        [--months-since-collecting N] [--months-since-hard-work N]"
    },
    description = {
      "Makes the cuts of the plan, then applies its guy-lines and weights together,",
      "and says whether the wood takes it: how likely it kinks, cracks or splits and",
      "where to mark that on the bark, the pull in each line, how far to tighten it,",
      "and where the apex comes to stand. Nothing in the file is changed.",
      "",
      "Probabilities come from many draws of what is not known of this wood. The day",
      "and what the tree has been through count for the verdict; what is said here",
      "counts before what the file says."
    },
    footer = {
      "Example: java -jar boughwright.jar bend hornbeam.tree.json --plan a",
      "                                    --picture hornbeam.png",
      "Lines under tension fly: wear eye protection."
    })
final class BendVerb extends Verb {
  @Mixin private TreeArgument tree;

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
      order = 20,
      description = "Draw the tree before and after, from the front and from a side.")
  private String picture;

  @Mixin private PictureOptions pictures;

  @Option(
      names = "--in-leaf",
      order = 22,
      description = "Show the picture in leaf: the pads of the file, or a guess.")
  private boolean inLeaf;

  @Option(
      names = "--details",
      order = 23,
      description = "Show also what decides most, all strains, and what the numbers rest on.")
  private boolean details;

  @Mixin private TryingOptions options;

  BendVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<Wanted> out = pictures.read(picture, given.path(), faults);
    PictureOptions.needsPicture("--in-leaf", inLeaf && picture == null, faults);
    Optional<List<PlanChoice>> choices =
        given
            .document()
            .flatMap(
                document ->
                    faults.tryTo(
                        () -> PlanChoice.of(document, Optional.ofNullable(plan), proposals)));
    if (picture != null && choices.isPresent() && choices.get().size() > 1) {
      faults.add(
          "--picture",
          "which-plan",
          "one picture shows one plan, and the file has " + choices.get().size(),
          "Say which one with --plan");
    }
    Trying trying = options.read(faults);
    faults.throwIfAny();
    BendAnswer answer;
    try (Progress progress = progress()) {
      TreeFile file = given.file().orElseThrow();
      List<BendAnswer.Tried> tried =
          tried(file.document(), choices.orElseThrow(), new TrialRun(trying, progress));
      answer = new BendAnswer(file, tried, out.map(Wanted::name), trying.said(), details);
      if (out.isPresent()) {
        progress.now("Drawing the picture");
        draw(answer, inLeaf, out.get().pixels()).write(out.get().file());
      }
    }
    return answer(() -> BendJson.of(answer), () -> BendText.of(answer));
  }

  private static PrintedPicture draw(BendAnswer answer, boolean inLeaf, PictureSize pixels)
      throws InputException {
    BendAnswer.Tried one = answer.tried().get(0);
    PrintedPicture.Subject subject =
        new PrintedPicture.Subject(
            answer.file().document(),
            Optional.of(one.choice().plan()),
            Optional.of(one.trial()),
            inLeaf);
    return PrintedPicture.beforeAfter(subject, one.course(), pixels);
  }

  private static List<BendAnswer.Tried> tried(
      Document document, List<PlanChoice> choices, TrialRun run) {
    List<BendAnswer.Tried> tried = new ArrayList<>();
    for (PlanChoice choice : choices) {
      TrialRequest request =
          new TrialRequest(
              document.tree(),
              choice.plan(),
              choice.proposals(),
              TrialSpecies.of(document.tree()),
              RodOptions.DEFAULT);
      Trying.Tried whole =
          run.trying().whole(request, "plan " + choice.plan().id(), run.progress());
      tried.add(
          BendAnswer.Tried.of(document, choice, whole.trial())
              .with(whole.letGo(), whole.heldBy(), whole.course()));
    }
    return tried;
  }
}
