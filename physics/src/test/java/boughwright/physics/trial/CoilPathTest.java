// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoilPathTest {
  @TempDir Path folder;

  /** A trunk of two segments with a branch on each side of the first. */
  private TrialRequest tree() {
    return new TreeText(4, 0.25)
        .unions("surface")
        .segment(
            "\"id\": \"t1\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [0,0,100], \"caliper_start_mm\": 20, \"caliper_end_mm\": 18")
        .segment(
            "\"id\": \"t2\", \"parent\": \"t1\", \"kind\": \"trunk\", \"end_mm\": [0,0,200],"
                + " \"caliper_start_mm\": 18, \"caliper_end_mm\": 14")
        .segment(
            "\"id\": \"a\", \"parent\": \"t1\", \"along\": 0.4, \"kind\": \"branch\","
                + " \"end_mm\": [150,0,40], \"caliper_start_mm\": 8, \"caliper_end_mm\": 6")
        .segment(
            "\"id\": \"b\", \"parent\": \"t1\", \"along\": 0.8, \"kind\": \"branch\","
                + " \"end_mm\": [-150,0,80], \"caliper_start_mm\": 8, \"caliper_end_mm\": 6")
        .proposal("\"about\": \"a\"")
        .request(folder);
  }

  private CoilPath path(TrialRequest tree, Coil coil) {
    return CoilPath.of(new Skeleton(tree.tree()), coil);
  }

  private static Coil coil(Spot from, Spot to) {
    return Wired.coil(Material.ALUMINIUM, 2e-3, 1, from, to);
  }

  @Test
  void coilFromTrunkToBranch_goesUpTheTrunkAndOutAlongIt() {
    CoilPath path = path(tree(), coil(new Spot("t1", 0.1), new Spot("a", 0.9)));
    assertThat(path.stretches()).extracting(CoilPath.Stretch::segment).containsExactly(0, 2);
    assertThat(path.stretches().get(0).from()).isCloseTo(0.01, within(1e-12));
    assertThat(path.stretches().get(0).to()).isCloseTo(0.04, within(1e-12));
    assertThat(path.length()).isCloseTo(0.03 + 0.9 * 0.15, within(1e-12));
  }

  @Test
  void wireThatServesTwoBranches_crossesTheTrunkBetweenThem() {
    CoilPath path = path(tree(), coil(new Spot("a", 1), new Spot("b", 0.5)));
    assertThat(path.stretches()).extracting(CoilPath.Stretch::segment).containsExactly(2, 0, 3);
    assertThat(path.stretches().get(0).to()).isZero();
    assertThat(path.length()).isCloseTo(0.15 + 0.04 + 0.075, within(1e-12));
  }

  @Test
  void wireOnOneShoot_staysOnIt() {
    CoilPath path = path(tree(), coil(new Spot("t1", 0.9), new Spot("t2", 0.5)));
    assertThat(path.length()).isCloseTo(0.01 + 0.05, within(1e-12));
    assertThat(path(tree(), coil(new Spot("a", 0.3), new Spot("a", 0.3))).stretches()).isEmpty();
  }

  @Test
  void startOfACoil_isHeldByTurnsBeforeAFork() {
    Skeleton skeleton = new Skeleton(tree().tree());
    CoilAnchorage none =
        CoilAnchorage.of(skeleton, path(tree(), coil(new Spot("a", 0.1), new Spot("a", 0.9))));
    assertThat(none.isEnough()).isFalse();
    assertThat(none.words()).contains("nothing holds its start");
    CoilAnchorage low =
        CoilAnchorage.of(skeleton, path(tree(), coil(new Spot("t1", 0), new Spot("a", 0.9))));
    assertThat(low.fork()).isTrue();
    // 40 mm at 50 degrees on 20 mm: pitch pi 22 / tan 50 = 58 mm
    assertThat(low.turns()).isBetween(0.65, 0.75);
    CoilAnchorage other =
        CoilAnchorage.of(skeleton, path(tree(), coil(new Spot("b", 0.9), new Spot("a", 0.9))));
    assertThat(other.isEnough()).isTrue();
  }

  @Test
  void plan_isTold_whatIsWrongWithItsCoils() {
    TrialRequest tree = tree();
    TrialRequest nowhere =
        Wired.with(
            tree,
            List.of(
                coil(new Spot("a", 0.3), new Spot("a", 0.3)),
                Wired.coil(Material.ALUMINIUM, 6e-3, 5, new Spot("b", 0.9), new Spot("a", 1))),
            List.of());
    List<String> warnings = Trial.run(nowhere).warnings();
    assertThat(warnings).anyMatch(words -> words.contains("starts where it ends"));
    assertThat(warnings).anyMatch(words -> words.contains("do not fit"));
    assertThat(warnings).anyMatch(words -> words.contains("a coil only holds"));
  }

  /** A coil that ends in mid-branch stiffens the branch up to there only. */
  @Test
  void coil_actsWhereItLies() {
    TrialRequest tree = tree();
    double none = force(Wired.with(tree, List.of(), List.of(Wired.hand("a", 1, 0.01))));
    double half = force(wired(tree, 0.5));
    double whole = force(wired(tree, 1));
    double root = force(wired(tree, 1e-3));
    assertThat(root).isCloseTo(none, within(0.01 * none));
    assertThat(half).isGreaterThan(1.05 * none);
    assertThat(whole).isGreaterThan(half);
    assertThat(whole / half).isLessThan(1.1);
  }

  private static TrialRequest wired(TrialRequest tree, double to) {
    Coil coil = Wired.coil(Material.STEEL_SOFT, 2e-3, 1, new Spot("a", 0), new Spot("a", to));
    return Wired.with(tree, List.of(coil), List.of(Wired.hand("a", 1, 0.01)));
  }

  private static double force(TrialRequest request) {
    HeldTree tree = HeldTree.of(request, HeldTree.Grip.ALL);
    assertThat(tree.holds()).isTrue();
    return tree.handForce(0);
  }
}
