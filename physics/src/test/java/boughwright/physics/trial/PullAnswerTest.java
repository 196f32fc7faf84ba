// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.PullResults;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.physics.trial.PullNote.Kind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What pull tests on one cone tell; movements from the large-deflection cantilever. */
class PullAnswerTest {
  private static final Species HORNBEAM = SpeciesTable.bundled().woodFor("carpinus-betulus");
  private static final TreeWood WOOD = new TreeWood.OfSpecies("carpinus-betulus");
  private static final double USUAL = 0.75 * HORNBEAM.trueMoe();

  /** Of the modulus: half from each of forward model, steps of slopes and the prior's pull. */
  private static final double MODULUS = 0.02;

  private static PullTest.Reading reading(double moe, double typed, double pulled) {
    double moved =
        new DeadLoadCantilever(PullTrees.LENGTH, PullTrees.THICK, PullTrees.THIN, moe).drop(pulled);
    return new PullTest.Reading(typed, moved, 0, 0.02, 0.0003);
  }

  private static PullTest test(String id, PullTest.Reading... readings) {
    return PullTrees.down(id, "b1", readings);
  }

  private static PullAnswer answer(PullTest... tests) {
    Tree tree = PullTrees.ofOnePiece(WOOD, tests);
    return PullAnswer.of(tree, HORNBEAM, tests[tests.length - 1].id());
  }

  private static List<Kind> kinds(PullAnswer answer) {
    return answer.notes().stream().map(PullNote::kind).toList();
  }

  private static List<Kind> questions(PullAnswer answer) {
    return answer.notes().stream().filter(PullNote::isQuestion).map(PullNote::kind).toList();
  }

  @ParameterizedTest
  @CsvSource({"0.6, 4", "1, 8", "1.5, 10"})
  void modulus_isFoundAgain_butForWhatThePriorWeighs(double stiffer, double force) {
    double moe = stiffer * USUAL;
    PullAnswer answer = answer(test("pt1", reading(moe, force, force)));
    double prior = answer.before().spread() * answer.before().spread();
    double left = answer.after().spread() * answer.after().spread();
    // the posterior mean lies as far from the prior as the test outweighs it
    double expected = Math.log(stiffer) * (1 - left / prior);
    assertThat(Math.log(answer.after().median() / USUAL)).isCloseTo(expected, within(MODULUS));
    assertThat(answer.notes().stream().filter(PullNote::isQuestion)).isEmpty();
  }

  /**
   * On a cone that moves little, ln moved = c - ln E - 3 ln r0 - ln r1; so k tests with noise v and
   * caliper variance a leave ln E the variance 1 / (1/t + 1/(a + v/k)), t being the prior's (branch
   * factor CV 0.36, within a species 0.22). The normal linear model by hand.
   */
  @ParameterizedTest
  @CsvSource({"1", "2", "5"})
  void tests_combineToTheRightWidth(int count) {
    double force = 3;
    PullTest[] tests = new PullTest[count];
    for (int n = 0; n < count; n++) {
      tests[n] = test("pt" + n, reading(USUAL, force, force));
    }
    double deviation = 0.0003 / 1.6449;
    double thick = 3 * deviation / (2 * PullTrees.THICK);
    double thin = deviation / (2 * PullTrees.THIN);
    double ruler = 0.0003 / tests[0].readings().get(0).moved();
    double noise = ruler * ruler + 0.02 * 0.02 + 0.05 * 0.05;
    double prior = Math.log(1 + 0.36 * 0.36) + Math.log(1 + 0.22 * 0.22);
    double expected = 1 / (1 / prior + 1 / (thick * thick + thin * thin + noise / count));
    PullAnswer answer = answer(tests);
    assertThat(answer.before().spread()).isCloseTo(Math.sqrt(prior), within(1e-3));
    assertThat(answer.after().spread()).isCloseTo(Math.sqrt(expected), within(1e-3));
    assertThat(answer.notes()).extracting(PullNote::kind).isEmpty();
  }

  @Test
  void poundsForKilograms_areCalledOut_againstTheOtherTests() {
    PullAnswer answer =
        answer(
            test("pt1", reading(USUAL, 6, 6)),
            test("pt2", reading(USUAL, 8, 8)),
            test("pt3", reading(USUAL, 8, 8 / 2.2046)));
    assertThat(questions(answer)).containsExactly(Kind.NOT_LIKE_THE_OTHERS);
    assertThat(answer.fit().others().orElseThrow().lnSofter())
        .isCloseTo(-Math.log(2.2046), within(0.1));
  }

  @Test
  void poundsForKilograms_ofTwoTests_areCalledOutToo() {
    PullAnswer answer =
        answer(test("pt1", reading(USUAL, 8, 8)), test("pt2", reading(USUAL, 8, 8 * 2.2046)));
    assertThat(questions(answer)).containsExactly(Kind.NOT_LIKE_THE_OTHERS);
  }

  @Test
  void earlierOutlier_isNamed_andEverythingBelievedLess() {
    PullTest odd = test("odd", reading(USUAL, 8, 8 / 2.2046));
    PullTest second = test("pt2", reading(USUAL, 6, 6));
    PullTest third = test("pt3", reading(USUAL, 8, 8));
    PullAnswer with = answer(odd, second, third);
    assertThat(kinds(with)).contains(Kind.OTHER_TEST_STANDS_OUT);
    assertThat(with.notes().get(0).words()).contains("\"odd\"");
    assertThat(questions(with)).isEmpty();
    assertThat(with.after().spread()).isGreaterThan(1.5 * answer(second, third).after().spread());
  }

  /** Readings in another unit than was typed: movement or force wrong by a factor. */
  @ParameterizedTest
  @CsvSource({"9.80665, 1", "0.10197, 1", "1, 25.4", "0.001, 1"})
  void wrongUnit_isQuestioned_againstAllThatIsKnown(double forceFactor, double movedFactor) {
    PullTest.Reading right = reading(USUAL, 8, 8);
    PullTest.Reading wrong =
        new PullTest.Reading(
            8 / forceFactor, right.moved() / movedFactor, 0, 0.02, right.movedError());
    assertThat(questions(answer(test("pt1", wrong)))).containsExactly(Kind.NOT_EXPECTED);
  }

  @Test
  void moreMovement_meansSofterWood() {
    double last = Double.POSITIVE_INFINITY;
    for (double factor : new double[] {0.7, 0.9, 1, 1.2, 1.6}) {
      PullTest.Reading usual = reading(USUAL, 8, 8);
      PullTest.Reading more =
          new PullTest.Reading(8, factor * usual.moved(), 0, 0.02, usual.movedError());
      double median = answer(test("pt1", more)).after().median();
      assertThat(median).isLessThan(last);
      last = median;
    }
  }

  @Test
  void worseRuler_leavesMoreDoubt_andNeverMoreThanBefore() {
    double last = 0;
    for (double error : new double[] {0.0001, 0.0005, 0.002, 0.02}) {
      PullTest.Reading usual = reading(USUAL, 8, 8);
      PullTest.Reading read = new PullTest.Reading(8, usual.moved(), 0, 0.02, error);
      PullAnswer answer = answer(test("pt1", read));
      assertThat(answer.after().spread()).isGreaterThan(last);
      assertThat(answer.after().spread()).isLessThan(answer.before().spread());
      last = answer.after().spread();
    }
  }

  @Test
  void forceForAMovement_isKnownBetterThanTheModulus() {
    PullAnswer answer = answer(test("pt1", reading(USUAL, 8, 8)));
    assertThat(answer.force().after()).isLessThan(answer.after().spread());
    assertThat(answer.force().after()).isLessThan(0.2 * answer.force().before());
  }

  @Test
  void smallMovement_isSaidToTellNothing() {
    PullTest.Reading usual = reading(USUAL, 0.5, 0.5);
    PullTest.Reading read = new PullTest.Reading(0.5, usual.moved(), 0, 0.02, 0.5 * usual.moved());
    assertThat(kinds(answer(test("pt1", read)))).contains(Kind.TOO_SMALL);
  }

  @Test
  void hardPull_isSaidToHaveMadeWoodFlow_andAGentlerOneIsNamed() {
    PullAnswer answer = answer(test("pt1", reading(USUAL, 40, 40)));
    assertThat(kinds(answer)).contains(Kind.TOO_HARD);
    assertThat(answer.strain().gentlest()).isBetween(10.0, 40.0);
    PullAnswer gentle =
        answer(test("pt1", reading(USUAL, answer.strain().gentlest(), answer.strain().gentlest())));
    assertThat(kinds(gentle)).isEmpty();
  }

  @Test
  void secondLoadThatMovesTooFar_isCalledOut() {
    PullTest.Reading first = reading(USUAL, 6, 6);
    PullTest.Reading second = reading(USUAL, 12, 12);
    PullTest.Reading slipped =
        new PullTest.Reading(12, 1.3 * second.moved(), 0, 0.02, second.movedError());
    assertThat(kinds(answer(test("pt1", first, second)))).isEmpty();
    PullAnswer answer = answer(test("pt1", first, slipped));
    assertThat(kinds(answer)).contains(Kind.LOADS_DISAGREE);
    assertThat(answer.fit().loadsApart()).isPositive();
  }

  @Test
  void trunkThatMustHaveTurned_isAskedAbout() {
    PullTest test = PullTrees.down("pt1", PullTrees.reading(3, 0.003));
    PullTest onStout = PullTrees.down("pt1", "b1", PullTrees.reading(3, 0.003));
    Tree stout = PullTrees.ofOnePiece(WOOD, onStout);
    assertThat(kinds(PullAnswer.of(stout, HORNBEAM, "pt1"))).doesNotContain(Kind.BASE_NOT_READ);
    Tree thin = PullTrees.onThinTrunk(WOOD, test);
    assertThat(kinds(PullAnswer.of(thin, HORNBEAM, "pt1"))).contains(Kind.BASE_NOT_READ);
  }

  @Test
  void baseThatMovedMuch_isSaidToMakeItLessSure() {
    PullTest.Reading usual = reading(USUAL, 8, 8);
    PullTest.Reading moving =
        new PullTest.Reading(8, 1.5 * usual.moved(), 0.5 * usual.moved(), 0.02, 0.0003);
    PullAnswer answer = answer(test("pt1", moving));
    assertThat(kinds(answer)).contains(Kind.BASE_MOVED);
    assertThat(answer.after().spread())
        .isGreaterThan(2 * answer(test("pt1", usual)).after().spread());
  }

  @Test
  void result_writtenAndReadAgain_isNotCountedTwice() {
    PullTest test = test("pt1", reading(1.5 * USUAL, 8, 8));
    Tree tree = PullTrees.ofOnePiece(WOOD, test);
    PullAnswer first = PullAnswer.of(tree, HORNBEAM, "pt1");
    Tree written = PullResults.with(tree, first.result());
    assertThat(PullAnswer.of(written, HORNBEAM, "pt1").after()).isEqualTo(first.after());
    assertThat(written.overrides()).hasSize(1);
    assertThat(written.overrides().get(0).moe().getAsDouble())
        .isCloseTo(first.after().median(), within(1e-3 * first.after().median()));
  }

  @Test
  void everyLimb_isItsOwn() {
    PullTest test = PullTrees.down("pt1", PullTrees.reading(3, 0.003));
    PullAnswer answer = PullAnswer.of(PullTrees.of(WOOD, test), HORNBEAM, "pt1");
    assertThat(answer.limb()).containsExactly("b1", "b2");
    List<PullTest> tests = new ArrayList<>(answer.tests());
    assertThat(tests).containsExactly(test);
  }

  @Test
  void testThatCanTellNothing_isNamed_andDoesNotCount() {
    PullTest good = test("pt1", reading(USUAL, 8, 8));
    PullAnswer with = answer(PullTrees.along("bad"), good);
    assertThat(with.after()).isEqualTo(answer(good).after());
    assertThat(with.tests()).containsExactly(good);
    assertThat(with.notes()).hasSize(1);
    assertThat(with.notes().get(0).words()).contains("\"bad\"", "left out");
  }

  @Test
  void impossiblePulls_areExplained() {
    Tree tree = PullTrees.ofOnePiece(WOOD);
    PullTest down = test("pt1", reading(USUAL, 8, 8));
    assertThat(PullAnswer.impossible(tree, HORNBEAM, down)).isEmpty();
    assertThat(PullAnswer.impossible(tree, HORNBEAM, PullTrees.along("pt1")).orElseThrow())
        .contains("along the branch");
    assertThat(PullAnswer.impossible(tree, HORNBEAM, PullTrees.atStart("pt1")).orElseThrow())
        .contains("cannot bend");
  }
}
