// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.DrawnChoice;
import boughwright.physics.reach.Reach;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.reach.Reached;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.command.PictureOptions.Wanted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Finds lines that bring a place of the tree where it is wanted. */
@Command(
    name = "reach",
    header = "Find where to tie a line, and how far to tighten it, to bring a place somewhere.",
    customSynopsis = {
      "java -jar boughwright.jar reach FILE --segment S [--along F]",
      "        (--to-mm X,Y,Z | --direction X,Y,Z | --upright) [--plan ID [--keep]]",
      "        [--anchors SORT,SORT] [--most-risk P] [--lines 1|2] [--coil [--metal M,M]]",
      "        [--choice N] [--stays P] [--repot] [--no-course]",
      "        [--picture OUT.png] [--size WxH] [--add-to-plan ID] [--json]",
      "        [--samples N] [--seed N] [--no-risk] [--on DATE] [--frost]",
      "        [--hemisphere north|south] [--months-since-repotting N]",
      "        [--months-since-collecting N] [--months-since-hard-work N]"
    },
    description = {
      "Looks at every place along the limb where a line can hold and everything that is",
      "there to tie it to, and says which lines bring the place where it is wanted, or",
      "as near as the risk allowed lets it come; with --coil, which wire and how far to",
      "bend. At most five choices, each with where to tie, how far to tighten, the pull,",
      "tackle, and what it risks; one of them with its risk drawn and its stages.",
      "Nothing in the file is changed, unless you ask for it with --add-to-plan."
    },
    footer = {
      "Example: java -jar boughwright.jar reach hornbeam.tree.json --segment b1c",
      "                                    --to-mm 155,-6,120",
      "docs/user/reaching.md explains the answer.",
      "Lines under tension fly: wear eye protection."
    })
final class ReachVerb extends Verb {
  @Mixin private TreeArgument tree;

  @Mixin private ReachOptions options;

  @Mixin private SearchOptions search;

  ReachVerb(Console console) {
    super(console);
  }

  /** How the choices are drawn and kept. */
  private record Doing(int choice, TrialRun run, Keeping keeping) {}

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<Wanted> picture = search.picture(given.path(), faults);
    TryingOptions.Search asked = search.trying(faults);
    Optional<ReachRequest> request =
        new ReachReading(options, search, faults).read(given.document(), asked.mostRisk());
    given.document().ifPresent(document -> planIsFree(document, faults));
    Trying trying = asked.trying();
    int choice = choice(faults, trying.draws().isPresent() || trying.asked().isPresent());
    faults.throwIfAny();
    Keeping keeping =
        new Keeping(given.path().orElseThrow(), picture, Optional.ofNullable(options.addTo));
    ReachAnswer answer;
    try (Progress progress = progress()) {
      Doing doing = new Doing(choice, new TrialRun(trying, progress), keeping);
      answer = answer(given.file().orElseThrow(), request.orElseThrow(), doing);
    }
    return answer(() -> ReachJson.of(answer), () -> ReachText.of(answer));
  }

  private int choice(Faults faults, boolean told) {
    if (options.choice != null && !search.asksPicture() && options.addTo == null && !told) {
      faults.add(
          "--choice",
          "nothing-done",
          "nothing is done with a choice",
          "Add --picture OUT.png or --add-to-plan ID");
    }
    OptionValues.Range range =
        new OptionValues.Range("--choice", 1, 5, "the number of a choice, such as 1");
    return (int) new OptionValues(faults).whole(options.choice, range, 1);
  }

  /** A plan that is there takes the choice only where its own proposals were kept in the trial. */
  private void planIsFree(Document document, Faults faults) {
    if (options.addTo == null) {
      return;
    }
    boolean itself = options.keep && search.planId().equals(Optional.of(options.addTo));
    if (!itself) {
      AddToPlan.requireNew(
          document,
          options.addTo,
          Optional.of("--plan " + options.addTo + " --keep, to try it with that plan"),
          faults);
    }
  }

  private ReachAnswer answer(TreeFile file, ReachRequest request, Doing doing)
      throws InputException {
    doing.run.progress().now("Looking for lines");
    Reached reached = Reach.of(request);
    if (reached.unreachable().isPresent()) {
      throw new InputException(
          Problem.fault(
              Place.of(wanted()),
              reached.unreachable().get().kind(),
              reached.unreachable().get().found(),
              reached.unreachable().get().remedy()));
    }
    if (doing.choice > reached.choices().size()) {
      throw new InputException(
          Problem.fault(
              Place.of("--choice"),
              "no-such-choice",
              "there are " + reached.choices().size() + " choices",
              "Give a number up to that"));
    }
    List<ReachAnswer.Drawn> drawn = new ArrayList<>();
    for (Choice choice : reached.choices()) {
      boolean chosen = drawn.size() + 1 == doing.choice;
      drawn.add(chosen ? chosen(request, choice, doing) : guessed(request, choice));
    }
    return new ReachAnswer(
        file,
        request.target(),
        request.wishes().mostRisk(),
        doing.run.said().on(),
        reached,
        drawn,
        kept(file.document(), drawn.get(doing.choice - 1), doing));
  }

  /** A choice as it was found, its risk guessed. */
  private static ReachAnswer.Drawn guessed(ReachRequest request, Choice choice) {
    return of(request, choice, choice.trial());
  }

  /** The choice that is told in full. */
  private static ReachAnswer.Drawn chosen(ReachRequest request, Choice choice, Doing doing) {
    ReachAnswer.Drawn drawn = drawn(request, choice, "choice " + doing.choice, doing.run);
    TrialRequest trial = trial(request, drawn.choice());
    doing.run.progress().now("Looking at the stages");
    List<CoilHold> coils =
        choice.bend().isPresent()
            ? CoilHold.of(trial).stream().filter(one -> isOf(one, drawn.choice())).toList()
            : List.of();
    return drawn.with(coils, doing.run.trying().course(trial, drawn.trial()));
  }

  private static boolean isOf(CoilHold hold, Choice choice) {
    return hold.proposal().equals(choice.proposal().id());
  }

  /** With a coil the lines bear what they bear once the hand has let go. */
  private static ReachAnswer.Drawn of(ReachRequest request, Choice choice, TrialResult trial) {
    TrialResult borne = choice.bend().map(Choice.Bend::held).orElse(trial);
    return ReachAnswer.Drawn.of(choice, trial, Hardware.of(trial(request, choice), borne));
  }

  /** A choice with its risk drawn, eased where that is more than was guessed and allowed. */
  private static ReachAnswer.Drawn drawn(
      ReachRequest request, Choice choice, String name, TrialRun run) {
    DrawnChoice.Drawing<ReachAnswer.Drawn> drawing =
        new DrawnChoice.Drawing<>() {
          @Override
          public ReachAnswer.Drawn draw(Choice one, int easing) {
            String words = easing == 0 ? name : name + ", eased";
            return of(request, one, run.of(trial(request, one), words));
          }

          @Override
          public double risk(ReachAnswer.Drawn drawn) {
            return drawn.trial().risk().map(risk -> risk.breaking().p()).orElse(0.0);
          }
        };
    return DrawnChoice.eased(request, choice, drawing).drawn();
  }

  private String wanted() {
    return options.upright ? "--upright" : options.to != null ? "--to-mm" : "--direction";
  }

  private static TrialRequest trial(ReachRequest request, Choice choice) {
    return new TrialRequest(
        request.tree(),
        choice.plan(),
        choice.plan().proposals(),
        request.species(),
        RodOptions.DEFAULT);
  }

  private static ReachAnswer.Kept kept(Document document, ReachAnswer.Drawn drawn, Doing doing)
      throws InputException {
    Keeping.Kept kept =
        doing.keeping.keep(
            new Keeping.Chosen(document, drawn.choice().plan(), drawn.trial(), drawn.course()),
            doing.run.progress());
    return new ReachAnswer.Kept(doing.choice, kept.picture(), kept.plan());
  }
}
