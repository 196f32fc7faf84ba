// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.PullResults;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a pull test tells of the limb it was made on, together with all other tests of the tree.
 *
 * @param test the test
 * @param limb ids of the segments of the limb, in file order
 * @param tests the tests made on that limb that count, in file order
 * @param before modulus of the limb before any test
 * @param after modulus of the limb after all tests
 * @param force how well the force for a given movement is known
 * @param fit how the test fits what was expected
 * @param strain how hard the wood worked under the greatest pull of the test
 * @param notes what the person must know, questions first
 */
public record PullAnswer(
    PullTest test,
    List<String> limb,
    List<PullTest> tests,
    MoeBelief before,
    MoeBelief after,
    ForceSpread force,
    Fit fit,
    PullStrain strain,
    List<PullNote> notes) {

  /**
   * How well the force that moves the place of the test by a given amount is known: standard
   * deviation of its logarithm. Modulus and calipers together, so it is narrower than the modulus.
   *
   * @param before before any test [1]
   * @param after after all tests [1]
   */
  public record ForceSpread(double before, double after) {}

  /**
   * How a test fits.
   *
   * @param lnOverExpected ln of the movement seen over the one expected before any test [1]
   * @param expected how it lies to what was believed of the wood before any test
   * @param others how it lies to what the other tests of the tree lead to expect; empty where there
   *     is no other
   * @param loadsApart how much more the second load moved it than the first leads to expect, in
   *     standard deviations; 0 where there is none [1]
   */
  public record Fit(
      double lnOverExpected, Misfit expected, Optional<Misfit> others, double loadsApart) {}

  /**
   * How a test lies to something else.
   *
   * @param lnSofter ln of the factor by which the wood would be softer for this test alone [1]
   * @param spread standard deviation of that, if nothing is wrong [1]
   */
  public record Misfit(double lnSofter, double spread) {
    /** How many standard deviations that is [1]. */
    public double deviations() {
      return lnSofter / spread;
    }
  }

  public PullAnswer {
    limb = List.copyOf(limb);
    tests = List.copyOf(tests);
    notes = List.copyOf(notes);
  }

  /**
   * Works a test out.
   *
   * @param tree the tree with all its tests; moduli that tests gave before are taken out first, and
   *     so is any modulus that a person gave for this very limb
   * @param species values for the tree's wood
   * @param testId id of the test to answer for
   * @throws IllegalArgumentException if that test can tell nothing where it is ({@link
   *     #impossible})
   */
  public static PullAnswer of(Tree tree, Species species, String testId) {
    Skeleton skeleton = new Skeleton(tree);
    PullTest test =
        tree.pullTests().stream().filter(one -> one.id().equals(testId)).findFirst().orElseThrow();
    int segment = skeleton.indexOf(test.segment());
    List<String> limb = limb(skeleton, segment);
    Tree bare = PullResults.released(PullResults.without(tree), limb);
    PullUpdate update = new PullUpdate(bare, species);
    int n = update.indexOf(test);
    Fit fit =
        new Fit(
            update.lnSeenOverExpected(n),
            update.misfitToBelief(n),
            update.misfitToOthers(n),
            PullNotes.loadsApart(update.points().get(n)));
    PullStrain strain = PullStrain.of(new Skeleton(bare), species, update, n);
    PullAnswer plain =
        new PullAnswer(
            test,
            limb,
            update.tests().stream().filter(one -> limb.contains(one.segment())).toList(),
            update.before(segment),
            update.after(segment),
            new ForceSpread(update.forceBefore(n), update.forceAfter(n)),
            fit,
            strain,
            List.of());
    return plain.with(new PullNotes(plain, update, n).all());
  }

  /**
   * Why a pull cannot tell anything where it is, whatever was read.
   *
   * @param tree the tree as measured
   * @param species values for its wood
   * @param test the test
   * @return what is wrong, in words; empty if nothing is
   */
  public static Optional<String> impossible(Tree tree, Species species, PullTest test) {
    Skeleton skeleton = new Skeleton(tree);
    return new PulledBranch(skeleton, test, TrialWood.best(skeleton, species)).whyNot();
  }

  /** Ids of the segments of the limb that a segment is part of, in file order. */
  public static List<String> limb(Tree tree, String segment) {
    Skeleton skeleton = new Skeleton(tree);
    return limb(skeleton, skeleton.indexOf(segment));
  }

  private static List<String> limb(Skeleton skeleton, int segment) {
    return Limbs.segmentsWith(skeleton, segment).stream()
        .map(i -> skeleton.segment(i).id())
        .toList();
  }

  private PullAnswer with(List<PullNote> others) {
    List<PullNote> sorted = new ArrayList<>(others);
    sorted.sort((a, b) -> Boolean.compare(b.isQuestion(), a.isQuestion()));
    return new PullAnswer(test, limb, tests, before, after, force, fit, strain, sorted);
  }

  /** What is to be written for the limb. */
  public PullResults.Result result() {
    return new PullResults.Result(limb, shown(after.median()), shown(after.variation()), tests);
  }

  /** More digits than a test tells, few enough to be read. */
  private static double shown(double value) {
    return new BigDecimal(value).round(new MathContext(4)).doubleValue();
  }
}
