// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.PullResults;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.WoodOverride;
import boughwright.physics.trial.PullAnswer;
import boughwright.physics.trial.PullNote;
import boughwright.physics.trial.TrialSpecies;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks whether a pull test can be used before anything is written. */
final class PullTestCheck {
  private static final String VERB = "pulltest";

  private final Tree tree;
  private final PullTestReading.Given given;
  private final Species species;

  /**
   * @param tree the tree without the test
   * @param given the test
   */
  PullTestCheck(Tree tree, PullTestReading.Given given) {
    this.tree = tree;
    this.given = given;
    species = TrialSpecies.of(tree);
  }

  /**
   * What can be said before the test is worked out.
   *
   * @param replace whether a modulus given by hand may be replaced
   * @throws InputException if the test is in the file already, bends nothing, or its limb has a
   *     modulus given by hand
   */
  void beforehand(boolean replace) throws InputException {
    Faults faults = new Faults();
    PullTest test = given.test();
    tree.pullTests().stream()
        .filter(one -> isSame(one, test))
        .findFirst()
        .ifPresent(
            one ->
                faults.add(
                    VERB,
                    "test-twice",
                    "this very test is in the file already as " + UsageFaults.quoted(one.id()),
                    "Nothing is to be done; a new test on another day has another --done-on"));
    PullAnswer.impossible(tree, species, test)
        .ifPresent(
            why ->
                faults.add(
                    VERB,
                    "tells-nothing",
                    why,
                    "Pull square to the branch and near its end; check --along, --direction and the"
                        + " units"));
    List<WoodOverride> byHand = PullResults.byHand(tree, PullAnswer.limb(tree, test.segment()));
    if (!replace) {
      byHand.forEach(one -> faults.add(VERB, "by-hand", found(one), remedy(one)));
    }
    faults.throwIfAny();
  }

  private static boolean isSame(PullTest one, PullTest test) {
    return one.segment().equals(test.segment())
        && one.along() == test.along()
        && one.doneOn().equals(test.doneOn())
        && one.readings().equals(test.readings());
  }

  private static String found(WoodOverride one) {
    return "the file has a modulus given by hand under wood "
        + UsageFaults.quoted(one.pattern())
        + ", "
        + Shown.gigapascals(one.moe().orElseThrow())
        + one.source().map(source -> " (" + source + ")").orElse("");
  }

  private static String remedy(WoodOverride one) {
    return "Add --replace to use the test instead (the old value stays told in the source), or"
        + " take the modulus out of wood "
        + UsageFaults.quoted(one.pattern());
  }

  /**
   * The answer.
   *
   * @param accept whether the person has looked again at what is questioned
   * @throws InputException if the test is better not used as it is
   */
  PullAnswer answer(boolean accept) throws InputException {
    List<PullTest> tests = new ArrayList<>(tree.pullTests());
    tests.add(given.test());
    PullAnswer answer = PullAnswer.of(tree.withPullTests(tests), species, given.test().id());
    if (!accept) {
      Faults faults = new Faults();
      answer.notes().stream()
          .filter(PullNote::isQuestion)
          .limit(1)
          .forEach(note -> faults.add(VERB, "questioned", note.words(), remedy(answer, note)));
      faults.throwIfAny();
    }
    return answer;
  }

  private String remedy(PullAnswer answer, PullNote note) {
    String units = units(answer, note).map(words -> words + "; ").orElse("");
    String check = units.isEmpty() ? note.remedy() + "; " : capital(units);
    return check + "if it is so all the same, add --accept";
  }

  private Optional<String> units(PullAnswer answer, PullNote note) {
    Optional<PullAnswer.Misfit> misfit =
        switch (note.kind()) {
          case NOT_EXPECTED -> Optional.of(answer.fit().expected());
          case NOT_LIKE_THE_OTHERS -> answer.fit().others();
          default -> Optional.empty();
        };
    String words = misfit.map(one -> PullUnits.fitting(given, one)).orElse("");
    return words.isEmpty() ? Optional.empty() : Optional.of(words);
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
