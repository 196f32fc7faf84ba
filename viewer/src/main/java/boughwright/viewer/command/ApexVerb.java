// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.physics.apex.ApexOption;
import boughwright.physics.apex.ApexRequest;
import boughwright.physics.apex.ApexSearch;
import boughwright.physics.apex.Apexes;
import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.command.PictureOptions.Wanted;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Ranks the leaders of a tree as its top. */
@Command(
    name = "apex",
    header = "See which leader could become the top, and what each would take.",
    customSynopsis = {
      "java -jar boughwright.jar apex FILE [--plan ID] [--leaders N] [--most-risk P]",
      "        [--anchors SORT,SORT] [--choice N] [--stays P] [--repot] [--no-course]",
      "        [--picture OUT.png] [--size WxH] [--add-to-plan ID] [--json]",
      "        [--samples N] [--seed N] [--no-risk] [--on DATE] [--frost]",
      "        [--hemisphere north|south] [--months-since-repotting N]",
      "        [--months-since-collecting N] [--months-since-hard-work N]"
    },
    description = {
      "For each leader: what is cut above it, the line that brings its tip over the root",
      "base, force and risk, the step of caliper where it takes over, its height then,",
      "the years until the wounds close and until it is thick enough. Beside them: to chop",
      "the trunk to a bud and grow a new leader.",
      "Nothing in the file is changed, unless you ask for it with --add-to-plan."
    },
    footer = {
      "Example: java -jar boughwright.jar apex hornbeam.tree.json --choice 1",
      "docs/user/apex.md explains the answer.",
      "Lines under tension fly: wear eye protection."
    })
final class ApexVerb extends Verb {
  /** The id of the plan that is tried where the person named none. */
  private static final String NO_PLAN = "apex";

  private static final int MOST_LEADERS = 30;

  @Mixin private TreeArgument tree;

  @Mixin private ApexOptions options;

  @Mixin private SearchOptions search;

  ApexVerb(Console console) {
    super(console);
  }

  /** How the choice is told, and where it is kept. */
  private record Doing(OptionalInt choice, Trying trying, Keeping keeping) {}

  @Override
  int act() throws InputException {
    Faults faults = new Faults();
    TreeArgument.Given given = tree.read(faults);
    Optional<Wanted> picture = search.picture(given.path(), faults);
    TryingOptions.Search asked = search.trying(faults);
    OptionalInt choice = choice(faults);
    int most = most(faults);
    Set<AnchorSort> anchors = search.anchors(faults);
    Optional<Plan> plan =
        given.document().flatMap(document -> search.plan(document, NO_PLAN, faults));
    if (options.addTo != null && given.document().isPresent()) {
      AddToPlan.requireNew(given.document().get(), options.addTo, Optional.empty(), faults);
    }
    faults.throwIfAny();
    TreeFile file = given.file().orElseThrow();
    Trying trying = asked.trying();
    ApexRequest request =
        new ApexRequest(
            file.document().tree(),
            plan.orElseThrow(),
            TrialSpecies.of(file.document().tree()),
            new ReachRequest.Wishes(anchors, asked.mostRisk(), ReachRequest.Wishes.USUAL.lines()),
            new Trying(trying.draws().map(ApexVerb::fewer), trying.said(), Optional.empty()),
            most);
    Keeping keeping =
        new Keeping(given.path().orElseThrow(), picture, Optional.ofNullable(options.addTo));
    ApexAnswer answer;
    try (Progress progress = progress()) {
      answer = answer(file, request, new Doing(choice, trying, keeping), progress);
    }
    return answer(() -> ApexJson.of(answer), () -> ApexText.of(answer));
  }

  /** Enough to rank by. */
  private static Trying.Draws fewer(Trying.Draws draws) {
    return new Trying.Draws(Math.min(draws.samples(), ApexRequest.USUAL_DRAWS), draws.seed());
  }

  private int most(Faults faults) {
    return (int)
        new OptionValues(faults)
            .whole(
                options.leaders,
                new OptionValues.Range("--leaders", 1, MOST_LEADERS, "a number such as 6"),
                ApexRequest.USUAL_MOST);
  }

  private OptionalInt choice(Faults faults) {
    boolean wanted = search.asksPicture() || options.addTo != null;
    if (options.choice == null) {
      return wanted ? OptionalInt.of(1) : OptionalInt.empty();
    }
    OptionValues.Range range =
        new OptionValues.Range(
            "--choice", 1, MOST_LEADERS, "the number of a leader in the answer, such as 1");
    return OptionalInt.of((int) new OptionValues(faults).whole(options.choice, range, 1));
  }

  private ApexAnswer answer(TreeFile tree, ApexRequest request, Doing doing, Progress progress)
      throws InputException {
    Apexes apexes = ApexSearch.of(request, progress, () -> false);
    Optional<ApexAnswer.Told> told = Optional.empty();
    if (doing.choice.isPresent()) {
      int number = doing.choice.getAsInt();
      there(apexes, number);
      told =
          Optional.of(
              told(
                  request,
                  apexes.options().get(number - 1),
                  new Telling(number, doing.trying, progress)));
    }
    ApexAnswer answer =
        new ApexAnswer(tree, request, apexes, told, Optional.empty(), Optional.empty());
    return told.isPresent() ? kept(answer, told.get(), doing, progress) : answer;
  }

  private static void there(Apexes apexes, int number) throws InputException {
    int count = apexes.options().size();
    if (number > count) {
      throw new InputException(
          Problem.fault(
              Place.of("--choice"),
              "no-such-choice",
              count == 0
                  ? "no leader of this tree could become its top"
                  : "the answer has " + count + (count == 1 ? " leader" : " leaders"),
              count == 0 ? "Leave it out to see what else there is" : "Give a number up to that"));
    }
  }

  /** Which choice is told, and how. */
  private record Telling(int number, Trying trying, Progress progress) {}

  private static ApexAnswer.Told told(ApexRequest asked, ApexOption option, Telling as) {
    ApexOption drawn = ApexSearch.drawn(option, as.trying, as.progress);
    TrialRequest request = ApexSearch.trial(asked, drawn);
    TrialResult trial =
        drawn
            .bent()
            .map(ApexOption.Bent::trial)
            .orElseGet(() -> as.trying.judged(request, "the top", as.progress));
    as.progress.now("Looking at the stages");
    return new ApexAnswer.Told(
        as.number, drawn, trial, Hardware.of(request, trial), as.trying.course(request, trial));
  }

  private static ApexAnswer kept(
      ApexAnswer answer, ApexAnswer.Told told, Doing doing, Progress progress)
      throws InputException {
    Keeping.Kept kept =
        doing.keeping.keep(
            new Keeping.Chosen(
                answer.file().document(), told.option().plan(), told.trial(), told.course()),
            progress);
    return answer.kept(kept.picture(), kept.plan());
  }
}
