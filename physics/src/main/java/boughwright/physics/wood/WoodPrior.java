// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Grain;
import boughwright.modeller.tree.Knots;

/**
 * What is believed of live branch wood of a species before anything is measured on the tree:
 * medians, and how far the truth may lie from them. All are lognormal. docs/theory/risk.md argues
 * each choice; "living branches" below are the fresh stems of Onoda et al. 2010 (New Phytologist
 * 185, 493) and Rosell et al. 2014, from the AusTraits data set.
 *
 * <p>Limits are strength over stiffness of the same wood: a strain, or a stress divided by the
 * modulus of the branch itself. So they do not depend on how stiff the branch is taken, but for the
 * correlation in {@link #limitFollowsMoe}.
 */
public final class WoodPrior {
  /** Standard deviation of ln of the branch factor on the modulus: CV 0.36, living branches [1]. */
  private static final double BRANCH_MOE = Doubt.ofCoefficient(0.36);

  /**
   * Within a species, standard deviations of ln of modulus, strength and crushing strength [1]:
   * clear wood, Table 5-6 of the Wood Handbook (living branches: 0.23 and 0.20, not far off).
   */
  private static final double MOE_WITHIN = Doubt.ofCoefficient(WoodSpread.CLEAR_WOOD.moe());

  private static final double MOR_WITHIN = Doubt.ofCoefficient(WoodSpread.CLEAR_WOOD.mor());
  private static final double CRUSHING_WITHIN =
      Doubt.ofCoefficient(WoodSpread.CLEAR_WOOD.crushing());

  /**
   * Correlation of strength with stiffness within a species, living branches [1]; taken for
   * crushing strength as well (assumption).
   */
  private static final double WITHIN = 0.84;

  /**
   * Half of what varies within a species is given to the tree, half to the limb (assumption) [1].
   */
  public static final double MOE_OF_TREE = MOE_WITHIN / Math.sqrt(2);

  public static final double MOE_OF_LIMB = MOE_OF_TREE;

  /** Strength over stiffness against handbook wood, between species: living branches. */
  private static final StrengthRatio BETWEEN = new StrengthRatio(0.35, 0.37, 0.76);

  /** Strength, and crushing strength, over stiffness within a species, tree and limb together. */
  private static final StrengthRatio RUPTURE_WITHIN =
      new StrengthRatio(MOE_WITHIN, MOR_WITHIN, WITHIN);

  private static final StrengthRatio YIELD_WITHIN =
      new StrengthRatio(MOE_WITHIN, CRUSHING_WITHIN, WITHIN);

  /**
   * Tension strain of the outermost fibre at the crack over the nominal strain MOR/E [1]: between
   * 1.5 (tension strength of green stem wood over its MOR, two Korean tables) and 2.6 (the section
   * law fed with the ductility of fresh mangrove branches, Santini et al. 2013), a judgement.
   */
  private static final double CRACK_OVER_NOMINAL = 2.0;

  /**
   * Error of that factor and of the size law, as standard deviation of ln: what is missing from the
   * others to a coefficient of variation of 0.40 in all (judgement) [1].
   */
  private static final double CRACK_MODEL = 0.27;

  /**
   * Nominal strain MOR/E of living branches over that of clear stem wood falls with the diameter as
   * 2.21 D^-0.21, D in mm under bark: a line through three points (4.4 mm, 13 mm, clear wood), a
   * cautious shrink and no measured size effect. It ends at 1.
   */
  private static final double SIZE_AT_1_MM = 1.35 / 0.61;

  private static final double SIZE_EXPONENT = -0.21;

  /**
   * Compression strain at which wrinkles are seen, over the yield strain [1]: middle on the log
   * scale between 3.2 (loss of stiffness at 0.8 % in young poplar, Niez et al. 2020) and 20 (inner
   * face at the greatest load, from the section law, an upper bound).
   */
  private static final double KINK_OVER_YIELD = 8.0;

  private static final Doubt KINK = new Doubt(0.5, 0.25);

  /**
   * Yield strain between species: to CV 0.25 in all, of clear wood; living branches agree in mean.
   */
  private static final double YIELD_BETWEEN = 0.20;

  /**
   * Doubt about tension strength across the grain [1]: 0.28 within clear wood, as in compression
   * across (Wood Handbook, Table 5-6; for tension an assumption).
   */
  private static final Doubt ACROSS = new Doubt(0.20, 0.20);

  /** Shear strength varies by 0.14 within a species (Wood Handbook, Table 5-6). */
  private static final Doubt SHEAR = new Doubt(0.10, 0.14);

  /** Strength of a fork over that of its branch when opened: 0.74 (hazel), CV assumed 0.20. */
  private static final double UNION = 0.74;

  private static final Doubt UNION_DOUBT = new Doubt(0.17, 0.10);

  /** The same with bark caught in the crotch: 0.56, CV assumed 0.30. */
  private static final double UNION_INCLUDED = 0.56;

  private static final Doubt UNION_INCLUDED_DOUBT = new Doubt(0.27, 0.13);

  /** A crotch with caught bark over a sound one, when it is closed: 0.76, as when opened. */
  public static final double CLOSED_INCLUDED_UNION = 0.76;

  /**
   * From this diameter ratio of limb to stem on a union is weak as a fork of equals (Dahle 2022).
   */
  private static final double THICK_RATIO = 0.70;

  /** Strength left by a limb nearly as thick as its stem (assumption). */
  private static final double THICK_UNION = 0.80;

  /** Knots: 0.72 of the strength of clear samples in whole branches (Kane 2007); half-way: SOME. */
  private static final double MANY_KNOTS = 0.72;

  private static final double SOME_KNOTS = 0.86;

  /** Grain sloping 1 in 10: 81 % of the MOR (Wood Handbook, Table 5-12; from memory). */
  private static final double SLOPING_GRAIN = 0.81;

  private final Species species;

  private WoodPrior(Species species) {
    this.species = species;
  }

  /** The prior for a wood of the table, or for what stands in for it. */
  public static WoodPrior of(Species species) {
    return new WoodPrior(species);
  }

  /**
   * Doubt about the modulus shared by all trees of the species, as standard deviation of ln: how
   * branch wood compares with handbook wood, and for a stand-in how woods of the table differ [1].
   */
  public double moeOfSpecies() {
    return species.isProxy() ? Math.hypot(BRANCH_MOE, TableScatter.MOE) : BRANCH_MOE;
  }

  /** The same for the yield strain [1]. */
  public double yieldOfSpecies() {
    return species.isProxy() ? Math.hypot(YIELD_BETWEEN, TableScatter.CRUSHING) : YIELD_BETWEEN;
  }

  /** Doubt about the modulus of a limb. */
  public Doubt moe() {
    return new Doubt(Math.hypot(moeOfSpecies(), MOE_OF_TREE), MOE_OF_LIMB);
  }

  /** Doubt about the yield strain of a limb. */
  public Doubt yield() {
    double half = YIELD_WITHIN.spread() / Math.sqrt(2);
    return new Doubt(Math.hypot(yieldOfSpecies(), half), half);
  }

  /** Median compression strain from which fibres flow [1]. */
  public double yieldStrain() {
    return TableScatter.over(species.crushing(), species).orElse(WoodLimits.USUAL_CRUSHING_STRAIN);
  }

  /**
   * Median tension strain of the outermost fibre at which the wood cracks [1].
   *
   * @param diameter diameter under bark [m]
   */
  public double crackStrain(double diameter) {
    return CRACK_OVER_NOMINAL * nominal() * size(diameter);
  }

  /**
   * Strain at which a dead, dry face cracks: the nominal strain MOR/E of clear wood, with nothing
   * added for living branches (assumption) [1].
   */
  public double deadCrackStrain() {
    return nominal();
  }

  private double nominal() {
    return TableScatter.over(species.mor(), species).orElse(TableScatter.MEDIAN_RUPTURE);
  }

  /** Strength over stiffness of a living branch over that of clear stem wood, by diameter [1]. */
  static double size(double diameter) {
    return Math.max(1, SIZE_AT_1_MM * Math.pow(1000 * diameter, SIZE_EXPONENT));
  }

  /** Doubt about the crack strain when the modulus is known. */
  public Doubt crack() {
    return ratio().with(new Doubt(CRACK_MODEL, 0));
  }

  /** Doubt about strength over stiffness when the modulus is known. */
  private Doubt ratio() {
    double within = RUPTURE_WITHIN.left() / Math.sqrt(2);
    double unknown = Math.hypot(BETWEEN.left(), within);
    return new Doubt(
        species.isProxy() ? Math.hypot(unknown, TableScatter.RUPTURE) : unknown, within);
  }

  /**
   * Change of ln (strength over stiffness) that goes with wood stiffer or softer than believed.
   *
   * @param ofSpecies how many standard deviations the species' branch wood is stiffer
   * @param withinSpecies the same for tree and limb, summed
   */
  public static double limitFollowsMoe(double ofSpecies, double withinSpecies) {
    return BETWEEN.spread() * BETWEEN.withStiffness() * ofSpecies
        + RUPTURE_WITHIN.spread() / Math.sqrt(2) * RUPTURE_WITHIN.withStiffness() * withinSpecies;
  }

  /**
   * ln of the yield strain of a tree or a limb over its median, apart from the species'.
   *
   * @param stiffness how many standard deviations the tree or the limb is stiffer
   * @param own a standard normal of its own
   */
  public static double yieldWithin(double stiffness, double own) {
    return (YIELD_WITHIN.spread() * YIELD_WITHIN.withStiffness() * stiffness
            + YIELD_WITHIN.left() * own)
        / Math.sqrt(2);
  }

  /** Median compression strain at which the inside wrinkles, over the yield strain [1]. */
  public double kinkOverYield() {
    return KINK_OVER_YIELD;
  }

  public Doubt kink() {
    return KINK;
  }

  /**
   * Median tension strength across the grain over the modulus of the branch [1].
   *
   * @param diameter diameter under bark [m]
   */
  public double acrossOverMoe(double diameter) {
    return TableScatter.over(species.tensionPerp(), species).orElse(TableScatter.MEDIAN_ACROSS)
        * size(diameter);
  }

  public Doubt across() {
    Doubt own = ratio().with(ACROSS);
    return species.tensionPerp().isPresent() && !species.isProxy()
        ? own
        : own.with(new Doubt(TableScatter.ACROSS, 0));
  }

  /**
   * Median shear strength over the modulus of the branch [1].
   *
   * @param diameter diameter under bark [m]
   */
  public double shearOverMoe(double diameter) {
    return TableScatter.over(species.shear(), species).orElse(TableScatter.MEDIAN_SHEAR)
        * size(diameter);
  }

  public Doubt shear() {
    return ratio().with(SHEAR);
  }

  /** Median strength of an opened union over that of the limb itself [1]. */
  public static double union(boolean includedBark) {
    return includedBark ? UNION_INCLUDED : UNION;
  }

  /**
   * What is left of the strength of a union by how thick its limb is [1].
   *
   * @param ratio diameter of the limb over that of its stem [1]
   */
  public static double unionOfThickness(double ratio) {
    return ratio > THICK_RATIO ? THICK_UNION : 1;
  }

  public static Doubt unionDoubt(boolean includedBark) {
    return includedBark ? UNION_INCLUDED_DOUBT : UNION_DOUBT;
  }

  /**
   * What knots and sloping grain leave of the strength, as a moment [1].
   *
   * @param features what the person ticked
   * @param carriesBranches whether thick branches start along the segment, which counts as some
   *     knots where the person did not say
   */
  public static double weakening(Features features, boolean carriesBranches) {
    Knots knots = features.knots().orElse(carriesBranches ? Knots.SOME : Knots.NONE);
    double left =
        switch (knots) {
          case NONE -> 1;
          case SOME -> SOME_KNOTS;
          case MANY -> MANY_KNOTS;
        };
    return features.grain().orElse(Grain.STRAIGHT) == Grain.SLOPING ? SLOPING_GRAIN * left : left;
  }
}
