// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.physics.choice.PlanFigures;
import boughwright.physics.grow.CutTime;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.command.PictureOptions.Wanted;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what plans of one tree risk, cost and leave, beside one another. */
@Command(
    name = "compare",
    header = "See plans of one tree side by side: risk, force, wounds, years, height.",
    customSynopsis = {
      "java -jar boughwright.jar compare FILE [--plans ID,ID,...]",
      "        [--picture OUT.png] [--size WxH] [--json]",
      "        [--most-risk P] [--stays P] [--repot] [--no-course]",
      "        [--samples N] [--seed N] [--no-risk] [--on DATE] [--frost]",
      "        [--hemisphere north|south] [--months-since-repotting N]",
      "        [--months-since-collecting N] [--months-since-hard-work N]"
    },
    description = {
      "Tries two to four plans as the verb bend does and lays what came of them side by",
      "side: verdict, odds of breaking, hardest pull, the wounds that are left and their",
      "years, thickening, when the bend stays, height, taper, the front, and what of it",
      "can be undone. Nothing in the file is changed."
    },
    footer = {
      "Example: java -jar boughwright.jar compare hornbeam.tree.json --plans a,b",
      "docs/user/comparing.md explains the answer."
    })
final class CompareVerb extends Verb {
  private static final int FEWEST = 2;

  /** More do not fit beside one another. */
  private static final int MOST = 4;

  @Mixin private TreeArgument tree;

  @Option(
      names = "--plans",
      paramLabel = "ID,ID",
      order = 1,
      description = "Two to four plans; all of the file by default, where it has no more.")
  private String plans;

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      order = 20,
      description = "Draw the bent trees side by side, each from its own front, planted.")
  private String picture;

  @Mixin private PictureOptions pictures;

  @Mixin private TryingOptions options;

  CompareVerb(Console console) {
    super(console);
  }

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<Wanted> out = pictures.read(picture, given.path(), faults);
    List<Plan> chosen = given.document().map(read -> chosen(read, faults)).orElse(List.of());
    Trying trying = options.read(faults);
    faults.throwIfAny();
    CompareAnswer answer;
    try (Progress progress = progress()) {
      TreeFile file = given.file().orElseThrow();
      List<PlanFigures> figures = figures(file.document(), chosen, new TrialRun(trying, progress));
      answer = new CompareAnswer(file, figures, out.map(Wanted::name));
      if (out.isPresent()) {
        progress.now("Drawing the picture");
        PictureSize size = out.get().size().orElse(PictureSize.ofPlans(chosen.size()));
        PrintedPicture.plans(subjects(answer), size).write(out.get().file());
      }
    }
    return answer(() -> CompareJson.of(answer), () -> CompareText.of(answer));
  }

  private List<Plan> chosen(Document document, Faults faults) {
    List<Plan> chosen = new ArrayList<>();
    if (plans == null) {
      chosen.addAll(document.plans());
    } else {
      for (String id : Arrays.stream(plans.split(",", -1)).map(String::strip).toList()) {
        Optional<Plan> plan = faults.tryTo(() -> PlanChoice.named(document, id, "--plans"));
        if (plan.isPresent() && chosen.contains(plan.get())) {
          faults.add(
              "--plans",
              "plan-twice",
              "plan " + UsageFaults.quoted(id) + " is named twice",
              "Name each plan once");
        } else if (plan.isEmpty()) {
          return chosen;
        }
        plan.ifPresent(chosen::add);
      }
    }
    if (chosen.size() < FEWEST || chosen.size() > MOST) {
      faults.add(
          "--plans",
          chosen.size() < FEWEST ? "too-few-plans" : "too-many-plans",
          (plans == null ? "the file has " : "it names ")
              + chosen.size()
              + (chosen.size() == 1 ? " plan" : " plans"),
          document.plans().size() < FEWEST
              ? "Add a second plan to the file, to compare it with"
              : "Name two to four of the file's plans, such as --plans "
                  + document.plans().get(0).id()
                  + ","
                  + document.plans().get(1).id());
    }
    return chosen;
  }

  private static List<PlanFigures> figures(Document document, List<Plan> chosen, TrialRun run) {
    CutTime time =
        CutTime.of(
            Optional.of(run.said().on()),
            run.said().over(document.tree().condition()).hemisphere());
    List<PlanFigures> figures = new ArrayList<>();
    for (Plan plan : chosen) {
      TrialRequest request =
          TrialRequest.of(document.tree(), plan, TrialSpecies.of(document.tree()));
      Trying.Tried tried = run.trying().whole(request, "plan " + plan.id(), run.progress());
      figures.add(PlanFigures.of(document, tried, time));
    }
    return figures;
  }

  private static List<PrintedPicture.Subject> subjects(CompareAnswer answer) {
    return answer.plans().stream()
        .map(
            one ->
                new PrintedPicture.Subject(
                    answer.file().document(),
                    Optional.of(one.plan()),
                    Optional.of(one.tried().trial())))
        .toList();
  }
}
