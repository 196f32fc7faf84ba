// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Standing;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.hold.WireMetal;
import boughwright.physics.hold.WireWound;
import boughwright.physics.rod.Measured;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoiledTrialTest {
  /** What was asked for of numeric checks. */
  private static final double NUMERIC = 0.01;

  private static final Measured MEASURED = new Measured(CoiledTrialTest.class);

  @TempDir Path folder;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private TrialRequest request(String wood, Material metal, double gauge, double move) {
    return Wired.with(
        Wired.branch(folder, wood, 6, 6),
        List.of(Wired.coil(metal, gauge, 2)),
        List.of(Wired.hand("t", 1, move)));
  }

  private static Point3 tip(HeldTree tree) {
    assertThat(tree.holds()).isTrue();
    return tree.point(0, Wired.LENGTH);
  }

  /** A force of fixed direction is a hung weight. */
  @Test
  void handBend_bringsItsPlaceSoFar_withTheForceOfAHungWeight() {
    TrialRequest bare = Wired.branch(folder, Wired.GREEN, 12, 9);
    TrialRequest pulled = Wired.with(bare, List.of(), List.of(Wired.hand("t", 0.8, 0.09)));
    HeldTree hand = HeldTree.of(pulled, HeldTree.Grip.ALL);
    assertThat(hand.point(0, 0.8 * Wired.LENGTH).z()).isCloseTo(-0.09, within(2e-5));
    double mass = hand.handForce(0) / Standing.GRAVITY;
    TrialRequest hung =
        bare.changing(
            p ->
                new Proposal(
                    p.id(),
                    p.about(),
                    List.of(),
                    List.of(new HungWeight(new Spot("t", 0.8), mass, Map.of())),
                    List.of(),
                    Map.of()));
    Point3 weighed = tip(HeldTree.of(hung, HeldTree.Grip.ALL));
    assertThat(weighed.distance(tip(hand))).isLessThan(1e-4);
    TrialResult result = hand.result();
    assertThat(result.lines()).isEmpty();
    assertThat(result.held()).isEqualTo("hand");
  }

  /**
   * A level cantilever of elastic wood with a coil from end to end, bent by its tip and let go: the
   * moment is force times arm, curvature follows from it place by place, the way back by Masing.
   * Planar shooting written here; only the line of the single strand is the program's.
   */
  @ParameterizedTest
  @CsvSource({
    "COPPER_ANNEALED, 0.002, 0.09",
    "COPPER_ANNEALED, 0.0026, 0.15",
    "ALUMINIUM, 0.003, 0.12",
    "STAINLESS, 0.0015, 0.15"
  })
  void branchWithCoil_bentAndLetGo_isWhereShootingFindsIt(
      Material metal, double gauge, double move) {
    HeldTree forced = HeldTree.of(request(Wired.ELASTIC, metal, gauge, move), HeldTree.Grip.ALL);
    HeldTree held = forced.then(0, HeldTree.Grip.HELD);
    WireWound wire =
        new WireWound(WireMetal.of(metal), new CoilShape(gauge, 2, Math.toRadians(50)), 6e-3);
    CoilShooting shooting = new CoilShooting(4e9 * Math.PI / 4 * Math.pow(3e-3, 4), wire, 2);
    double force = shooting.forceFor(move);
    MEASURED.check("force", forced.handForce(0) / force - 1, NUMERIC);
    double stays = shooting.dropAfter(force);
    MEASURED.check("held", (-tip(held).z() - stays) / move, NUMERIC);
    assertThat(-tip(held).z()).isBetween(0.01 * move, 0.95 * move);
    Point3 free = tip(held.then(0, HeldTree.Grip.NOTHING));
    assertThat(free.distance(new Point3(Wired.LENGTH, 0, 0))).isLessThan(1e-5);
  }

  @Test
  void coilTakenOff_leavesTheWoodWhatItRemembers() {
    HeldTree forced =
        HeldTree.of(request(Wired.GREEN, Material.ALUMINIUM, 3e-3, 0.1), HeldTree.Grip.ALL);
    Point3 afterHold = tip(forced.then(0, HeldTree.Grip.HELD).then(0, HeldTree.Grip.NOTHING));
    Point3 atOnce = tip(forced.then(0, HeldTree.Grip.NOTHING));
    assertThat(afterHold.distance(atOnce)).isLessThan(1e-3);
    assertThat(-atOnce.z()).isBetween(0.01, 0.09);
    assertThat(forced.result().held()).isEqualTo("hand+coil");
    LetGo letGo = LetGo.of(request(Wired.GREEN, Material.ALUMINIUM, 3e-3, 0.1)).orElseThrow();
    assertThat(letGo.stays()).isCloseTo(atOnce.distance(new Point3(0.3, 0, 0)), within(1e-9));
  }

  /** Coils are wound on the branch as it hangs: they do not lift it. */
  @Test
  void coilOnABranchThatHangsByItsOwnWeight_doesNotMoveIt() {
    TrialRequest wound =
        Wired.with(
            Wired.heavy(folder), List.of(Wired.coil(Material.STEEL_SOFT, 4e-3, 1)), List.of());
    TrialResult result = Trial.run(wound);
    assertThat(result.segments().get(0).end().distance(new Point3(0.3, 0, 0))).isLessThan(1e-6);
  }

  /**
   * What cracks and shears is the wood, with the moment that goes with its own strain: E I times
   * the curvature where it is elastic, however much the coil carries beside it.
   */
  @Test
  void momentsOfATrial_areThoseOfTheWood() {
    TrialResult result = Trial.run(request(Wired.ELASTIC, Material.STAINLESS, 3e-3, 0.01));
    Peak peak = result.peak().orElseThrow();
    double inertia = Math.PI / 4 * Math.pow(3e-3, 4);
    double ofWood = 4e9 * inertia * peak.bendingStrain() / 3e-3;
    assertThat(peak.moment()).isCloseTo(ofWood, within(1e-6 * ofWood));
  }

  /** A trial of a plan is the forced pose, and draws have the coils too. */
  @Test
  void riskOfACoiledBend_isThatOfTheForcedPose() {
    TrialRequest request = request(Wired.GREEN, Material.ALUMINIUM, 3e-3, 0.06);
    TrialResult result = RiskTrial.run(request, new RiskOptions(60, 1, part -> {}));
    assertThat(result.segments().get(0).end().z()).isCloseTo(-0.06, within(2e-5));
    double crack =
        result.risk().orElseThrow().failures().stream()
            .filter(failure -> failure.mode() == FailureMode.CRACK)
            .findFirst()
            .orElseThrow()
            .probability()
            .p();
    assertThat(crack).isBetween(0.0, 1.0);
    assertThat(result.held()).isEqualTo("hand+coil");
  }

  /** Nine in ten lie within the doubt of the metal: 1.6449 deviations to either side. */
  @Test
  void strengthOfWire_isDrawnAsItsMetalIsKnown() {
    TrialRequest plain = Wired.branch(folder, Wired.GREEN, 10, 8);
    assertThat(CoilDoubt.wireSpread(plain.proposals())).isZero();
    TrialRequest wired =
        Wired.with(plain, List.of(Wired.coil(Material.ALUMINIUM, 4e-3, 2)), List.of());
    double spread = CoilDoubt.wireSpread(wired.proposals());
    WireMetal.Doubt doubt = WireMetal.of(Material.ALUMINIUM).doubt();
    assertThat(Math.exp(2 * 1.6449 * spread)).isCloseTo(doubt.high() / doubt.low(), within(1e-3));
    assertThat(spread).isBetween(0.01, 0.5);
  }
}
