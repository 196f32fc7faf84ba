// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoilHoldTest {
  /** Overbends are sought to a hundredth, and poses are rough there. */
  private static final double CLOSE = 0.012;

  @TempDir Path folder;

  private TrialRequest request(double gauge, double move) {
    return Wired.with(
        Wired.branch(folder, Wired.GREEN, 10, 8),
        List.of(Wired.coil(Material.ALUMINIUM, gauge, 2)),
        List.of(Wired.hand("t", 1, move)));
  }

  private static CoilHold only(TrialRequest request) {
    List<CoilHold> all = CoilHold.of(request);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  /** The movements are those of the held tree step by step. */
  @Test
  void coilHold_saysWhereTheBranchIsWhenForcedHeldAndFree() {
    TrialRequest request = request(4e-3, 0.1);
    CoilHold hold = only(request);
    HeldTree forced = HeldTree.of(request, HeldTree.Grip.ALL);
    HeldTree held = forced.then(0, HeldTree.Grip.HELD);
    assertThat(hold.segment()).isEqualTo("t");
    assertThat(hold.forced()).isCloseTo(moved(forced), within(1e-4));
    assertThat(hold.held()).isCloseTo(moved(held), within(1e-4));
    double free = moved(forced.then(0, HeldTree.Grip.NOTHING));
    assertThat(hold.unwired()).isCloseTo(free, within(2e-4));
    assertThat(hold.kept().low()).isLessThan(hold.kept().high());
    assertThat(hold.holds()).isEqualTo(hold.strength() >= 1);
    assertThat(hold.kept().high()).isGreaterThan(1.2 * hold.kept().middle());
    assertThat(hold.hands().get(0).force()).isCloseTo(forced.handForce(0), within(0.1));
    assertThat(hold.strength()).isBetween(0.2, 3.0);
  }

  private static double moved(HeldTree tree) {
    return tree.point(0, 0.3).distance(new boughwright.modeller.geometry.Point3(0.3, 0, 0));
  }

  /** The overbend is tried once more, and comes to rest where the plan wanted it. */
  @Test
  void overbend_comesToRestWhereThePlanWantsIt() {
    double move = 0.05;
    CoilHold hold = only(request(4e-3, move));
    CoilHold.Overbend over = hold.overbend().orElseThrow();
    assertThat(over.factor()).isBetween(1.1, 3.0);
    assertThat(over.hands().get(0).move()).isCloseTo(over.factor() * move, within(1e-12));
    HeldTree rest =
        HeldTree.of(request(4e-3, over.factor() * move), HeldTree.Grip.ALL)
            .then(0, HeldTree.Grip.HELD);
    assertThat(-rest.point(0, 0.3).z()).isCloseTo(move, within(CLOSE * move));
    assertThat(over.strain()).isGreaterThan(1);
  }

  /** 300 mm at 50 degrees, two turns of 10 mm to anchor it, 50 mm to hold it by. */
  @Test
  void wireToCut_isTheHelixAndItsAnchorage() {
    CoilWork work = only(request(4e-3, 0.05)).coils().get(0);
    double angle = Math.toRadians(50);
    double expected = 0.3 / Math.cos(angle) + 2 * Math.PI * 0.014 / Math.sin(angle) + 0.05;
    assertThat(work.cut()).isCloseTo(expected, within(1e-9));
    assertThat(work.pitch().atStart()).isCloseTo(Math.PI * 0.014 / Math.tan(angle), within(1e-9));
    assertThat(work.turns()).isCloseTo(0.3 * Math.tan(angle) / (Math.PI * 0.013), within(0.02));
    assertThat(work.anchored()).isFalse();
    assertThat(work.tightens()).as("nothing twists it").isEmpty();
    FailurePlace outside = work.outside().orElseThrow();
    assertThat(outside.side()).isEqualTo("top");
    assertThat(outside.along()).isLessThan(0.15);
  }

  /**
   * A trunk along x with a branch along y that is pulled down: the moment about the trunk, from its
   * start to its end, is y times -z, which is -x, so the trunk is twisted left-handed.
   */
  @Test
  void handOfWinding_isTheOneThatTheTwistTightens() {
    TrialRequest tree =
        new TreeText(4, 0.25)
            .segment(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [200, 0, 0], \"caliper_start_mm\": 10, \"caliper_end_mm\": 10")
            .segment(
                "\"id\": \"b\", \"parent\": \"t\", \"kind\": \"branch\", \"end_mm\": [200,120,0],"
                    + " \"caliper_start_mm\": 9, \"caliper_end_mm\": 8")
            .proposal("\"about\": \"t\"")
            .request(folder);
    CoilWork right = twisted(tree, Direction3.UP.opposite());
    assertThat(right.twist()).isNegative();
    assertThat(right.tightens()).contains(Hand.LEFT);
    assertThat(right.isWrongHand()).isTrue();
    CoilWork lifted = twisted(tree, Direction3.UP);
    assertThat(lifted.tightens()).contains(Hand.RIGHT);
    assertThat(lifted.isWrongHand()).isFalse();
  }

  private static CoilWork twisted(TrialRequest tree, Direction3 way) {
    Coil coil = Wired.coil(Material.ALUMINIUM, 3e-3, 1, new Spot("t", 0.05), new Spot("t", 0.95));
    HandBend hand = new HandBend("h", new Spot("b", 1), way, 0.05, Map.of());
    return only(Wired.with(tree, List.of(coil), List.of(hand))).coils().get(0);
  }

  @Test
  void planWithoutCoils_orWithNothingThatBends_holdsNothing() {
    TrialRequest bare = Wired.branch(folder, Wired.GREEN, 10, 8);
    assertThat(CoilHold.of(bare)).isEmpty();
    assertThat(
            CoilHold.of(
                Wired.with(bare, List.of(Wired.coil(Material.ALUMINIUM, 3e-3, 1)), List.of())))
        .isEmpty();
  }
}
