// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.species.SpeciesTable;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Aids on a level branch with a weight at its tip, against the integral of moments for small
 * movements, ∫ P (L - x)² / (E I(x)) dx, with second moments summed strip by strip here.
 */
class AidEffectTest {
  private static final double MOE = 6e9;
  private static final double LENGTH = 0.3;
  private static final double RADIUS = 0.01;
  private static final double MASS = 0.05;
  private static final double PULL = MASS * 9.80665;
  private static final int STEPS = 20_000;

  /** What small-movement formulas leave out here, and the grid of a grooved section, relative. */
  private static final double SMALL_MOVEMENT = 5e-3;

  private static final String ELASTIC =
      "{\"name\": \"test wood\", \"moe_GPa\": 6, \"response\": \"elastic\"}";

  @TempDir Path folder;

  private TrialRequest level(String species, String aid, double mass) {
    return new TreeText(species)
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [300, 0, 0], \"caliper_start_mm\": 20, \"caliper_end_mm\": 20")
        .proposal(
            text(
                "\"hung_weights\": [{\"segment\": \"t\", \"along\": 1, \"mass_kg\": %s}],"
                    + " \"aids\": [{\"segment\": \"t\", %s}]",
                mass, aid))
        .request(folder);
  }

  private AidEffect effect(String aid) {
    List<AidEffect> effects = AidEffect.of(level(ELASTIC, aid, MASS));
    assertThat(effects).hasSize(1);
    return effects.get(0);
  }

  private static double drop(DoubleUnaryOperator second) {
    double sum = 0;
    for (int k = 0; k < STEPS; k++) {
      double x = LENGTH * (k + 0.5) / STEPS;
      sum += PULL * (LENGTH - x) * (LENGTH - x) / (MOE * second.applyAsDouble(x));
    }
    return sum * LENGTH / STEPS;
  }

  private static double whole() {
    return Math.PI / 4 * Math.pow(RADIUS, 4);
  }

  /** Second moment about the level axis through its own middle of the disc below some height. */
  private static double below(double height) {
    double area = 0;
    double first = 0;
    double second = 0;
    int strips = 2000;
    for (int k = 0; k < strips; k++) {
      double z = -RADIUS + (height + RADIUS) * (k + 0.5) / strips;
      double strip = 2 * Math.sqrt(RADIUS * RADIUS - z * z) * (height + RADIUS) / strips;
      area += strip;
      first += strip * z;
      second += strip * z * z;
    }
    return second - first * first / area;
  }

  private static void assertMoved(AidEffect effect, double without, double with) {
    assertThat(effect.without().orElseThrow().moved())
        .isCloseTo(without, within(SMALL_MOVEMENT * without));
    assertThat(effect.with().orElseThrow().moved()).isCloseTo(with, within(SMALL_MOVEMENT * with));
  }

  /** Tube between a fifth and seven tenths of the length, solid elsewhere. */
  @Test
  void hollow_softensItsStretchOnly() {
    double tube = whole() - Math.PI / 4 * Math.pow(0.006, 4);
    AidEffect effect = effect("\"kind\": \"hollow\", \"from\": 0.2, \"to\": 0.7, \"depth_mm\": 12");
    assertMoved(effect, drop(x -> whole()), drop(x -> x > 0.06 && x < 0.21 ? tube : whole()));
    assertThat(effect.price()).contains("heartwood");
  }

  /**
   * A slot from the top, 2 mm wide and 8 mm deep: a strip less, about the middle of what is left.
   */
  @Test
  void slot_softensItsStretchOnly() {
    double area = Math.PI * RADIUS * RADIUS;
    double gone = 0.002 * 0.008;
    double at = RADIUS - 0.004;
    double middle = -gone * at / (area - gone);
    double left =
        whole()
            - 0.002 * Math.pow(0.008, 3) / 12
            - gone * at * at
            - (area - gone) * middle * middle;
    AidEffect effect =
        effect(
            "\"kind\": \"slot\", \"from\": 0.1, \"to\": 0.5, \"round_deg\": 0, \"width_mm\": 2,"
                + " \"depth_mm\": 8");
    assertMoved(effect, drop(x -> whole()), drop(x -> x > 0.03 && x < 0.15 ? left : whole()));
  }

  /** Depth gone beside cuts at 0.045, 0.075 and 0.105 m, 1 mm wide and 6 mm deep, at 45 degrees. */
  private static double gone(double x) {
    double depth = 0;
    for (double cut : new double[] {0.045, 0.075, 0.105}) {
      depth = Math.max(depth, 0.006 - Math.max(0, Math.abs(x - cut) - 0.0005));
    }
    return depth;
  }

  private static final String CUTS =
      "\"kind\": \"relief-cut\", \"from\": 0.1, \"to\": 0.4, \"round_deg\": %s, \"width_mm\": 1,"
          + " \"depth_mm\": 6, \"count\": 3";

  @Test
  void reliefCuts_softenTheBranchRoundThem_andCloseByTheDifference() {
    AidEffect effect = effect(text(CUTS, 180));
    assertMoved(effect, drop(x -> whole()), drop(x -> below(RADIUS - gone(x))));
    assertThat(effect.cuts()).hasSize(3);
    double turned = 0;
    for (int k = 0; k < STEPS; k++) {
      double x = 0.045 - 0.0065 + 0.013 * (k + 0.5) / STEPS;
      double moment = PULL * (LENGTH - x);
      turned += moment / MOE * (1 / below(RADIUS - gone(x)) - 1 / whole()) * 0.013 / STEPS;
    }
    AidEffect.Cut first = effect.cuts().get(0);
    assertThat(first.along()).isCloseTo(0.15, within(1e-12));
    // read from samples by the trapezoidal rule
    assertThat(first.closed()).isCloseTo(turned, within(0.02 * turned));
    assertThat(first.isShut()).isFalse();
    assertThat(effect.says()).anyMatch(words -> words.contains("closes by"));
  }

  /** The sides meet at the bark when they have turned by the width over the way to the middle. */
  @Test
  void reliefCut_isShut_whenItsMouthHasClosed() {
    double area = 0;
    double first = 0;
    int strips = 20_000;
    double floor = RADIUS - 0.006;
    for (int k = 0; k < strips; k++) {
      double z = -RADIUS + (floor + RADIUS) * (k + 0.5) / strips;
      double strip = Math.sqrt(RADIUS * RADIUS - z * z);
      area += strip;
      first += strip * z;
    }
    double full = 0.001 / (RADIUS - first / area);
    AidEffect.Cut cut = effect(text(CUTS, 180)).cuts().get(0);
    assertThat(cut.full()).isCloseTo(full, within(1e-4 * full));
    String narrow = text(CUTS, 180).replace("\"width_mm\": 1,", "\"width_mm\": 0.01,");
    AidEffect much = AidEffect.of(level(ELASTIC, narrow, 4)).get(0);
    assertThat(much.cuts().get(0).isShut()).isTrue();
    assertThat(much.says()).anyMatch(words -> words.contains("wood on wood"));
  }

  @Test
  void reliefCutOnTheOutside_gapes_andIsToldSo() {
    AidEffect effect = effect(text(CUTS, 0));
    assertThat(effect.cuts().get(0).closed()).isNegative();
    assertThat(effect.says()).anyMatch(words -> words.contains("Turn it round"));
  }

  /**
   * A limb bent upward in its growing is straightened by a weight. A wrap wound with 20 N, half of
   * it left, two bands of 8 mm over each other: 2500 N/m over the radius presses the wood together,
   * and what splitting may use grows by that.
   */
  @Test
  void wrap_addsItsPressureToTheStrengthAcross() {
    String species = "{\"name\": \"test wood\", \"moe_GPa\": 6, \"response\": \"fibre\"}";
    TreeText tree =
        new TreeText(species)
            .segment(limb("t", "null", 80, 0, "\"start_mm\": [0,0,0],"))
            .segment(limb("u", "\"t\"", 155, 28, ""))
            .segment(limb("v", "\"u\"", 220, 74, ""));
    tree.proposal(
        "\"hung_weights\": [{\"segment\": \"v\", \"along\": 1, \"mass_kg\": 2}], \"aids\": ["
            + "{\"kind\": \"wrap\", \"segment\": \"t\", \"from\": 0, \"to\": 1},"
            + "{\"kind\": \"wrap\", \"segment\": \"u\", \"from\": 0, \"to\": 1},"
            + "{\"kind\": \"wrap\", \"segment\": \"v\", \"from\": 0, \"to\": 1}]");
    TrialRequest request = tree.request(folder);
    double with = new AidTrial(request).figures().orElseThrow().split().getAsDouble();
    TrialRequest bare = request.changing(proposal -> proposal.withAids(List.of()));
    double without = new AidTrial(bare).figures().orElseThrow().split().getAsDouble();
    double pressure = 20 * 2 * 0.5 / 0.008 / RADIUS;
    // what the wood bears follows from both: demand / (bears + pressure) over demand / bears
    double bears = pressure / (without / with - 1);
    // green hardwoods bear 2 to 9 MPa in tension across the grain (Wood Handbook, Table 5-3b), and
    // living branches of this thickness somewhat more for their stiffness of 6 GPa
    assertThat(bears).isBetween(1e6, 12e6);
    AidEffect effect = AidEffect.of(request).get(0);
    assertThat(effect.says()).anyMatch(words -> words.contains("no probability of a crack"));
  }

  private static String limb(String id, String parent, double x, double z, String start) {
    return text(
        "\"id\": \"%s\", \"parent\": %s, \"kind\": \"branch\", %s \"end_mm\": [%s, 0, %s],"
            + " \"caliper_start_mm\": 20, \"caliper_end_mm\": 20",
        id, parent, start, x, z);
  }

  @ParameterizedTest
  @CsvSource({
    "juniperus-virginiana, dead wood",
    "prunus-serotina, gum",
    "acer-rubrum, bleeds while sap rises"
  })
  void cut_hasThePriceOfItsGenus(String species, String price) {
    TrialRequest request = level("\"" + species + "\"", text(CUTS, 180), MASS);
    TrialRequest named =
        new TrialRequest(
            request.tree(),
            request.plan(),
            request.proposals(),
            SpeciesTable.bundled().woodFor(species),
            request.options());
    assertThat(AidEffect.of(named).get(0).price()).contains(price, "common practice, no source");
  }

  /** A lever of 100 mm adds its moment: the same pull moves the tip further. */
  @Test
  void lever_isHeldAgainstTheSameLineWithoutIt() {
    TrialRequest request =
        new TreeText(ELASTIC)
            .segment(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [300, 0, 0], \"caliper_start_mm\": 20, \"caliper_end_mm\": 20")
            .proposal(
                "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\":"
                    + " [400, 0, -100000], \"tension_N\": 0.5, \"lever_mm\": 100}]")
            .request(folder);
    AidEffect effect = AidEffect.of(request).get(0);
    double bending = MOE * whole();
    double straight = 0.5 * Math.pow(LENGTH, 3) / (3 * bending);
    double levered = straight + 0.5 * 0.1 * LENGTH * LENGTH / (2 * bending);
    assertThat(effect.aid()).isEqualTo("lever");
    assertMoved(effect, straight, levered);
  }
}
