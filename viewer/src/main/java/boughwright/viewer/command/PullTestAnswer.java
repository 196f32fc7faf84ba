// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.PullResults;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.PullAnswer;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import java.util.ArrayList;
import java.util.List;

/**
 * What a pull test changes.
 *
 * @param pull what it tells of the branch
 * @param after the document with the test and its result
 * @param plans every plan of the file, before and after
 */
record PullTestAnswer(PullAnswer pull, Document after, List<Change> plans) {
  /** Draws for a comparison of ranges, which needs far fewer than a verdict. */
  private static final int SAMPLES = 400;

  PullTestAnswer {
    plans = List.copyOf(plans);
  }

  /**
   * A plan before and after the test.
   *
   * @param before tried on what the file said
   * @param after tried with the test
   */
  record Change(TrialResult before, TrialResult after) {}

  /** The answer without looking at the plans. */
  static PullTestAnswer plain(Document before, PullAnswer pull) {
    return new PullTestAnswer(pull, with(before, pull), List.of());
  }

  static PullTestAnswer of(Document before, PullAnswer pull, Progress progress) {
    Document after = with(before, pull);
    List<Change> plans = new ArrayList<>();
    for (Plan plan : before.plans()) {
      if (!plan.proposals().isEmpty()) {
        progress.now("Trying plan " + plan.id() + " without the test");
        TrialResult old = trial(before, plan, progress);
        progress.now("Trying plan " + plan.id() + " with the test");
        plans.add(new Change(old, trial(after, plan, progress)));
      }
    }
    return new PullTestAnswer(pull, after, plans);
  }

  private static Document with(Document before, PullAnswer pull) {
    List<PullTest> tests = new ArrayList<>(before.tree().pullTests());
    tests.add(pull.test());
    Tree tree = PullResults.with(before.tree().withPullTests(tests), pull.result());
    return before.withTree(tree);
  }

  private static TrialResult trial(Document document, Plan plan, Progress progress) {
    RiskOptions options = new RiskOptions(SAMPLES, RiskOptions.DEFAULT.seed(), progress::part);
    return RiskTrial.run(
        TrialRequest.of(document.tree(), plan, TrialSpecies.of(document.tree())), options);
  }
}
