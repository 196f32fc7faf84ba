// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.TreeStand;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialSpecies;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What bending on and letting go achieves, against a plain scan of the hand's way: every step is
 * bent, let go and looked at, with nothing of the search.
 */
class OverbendTest {
  /** What breaking may risk as guessed. */
  private static final double ALLOWED = 0.05;

  /** Steps of the scan, as parts of the way to the target [1]. */
  private static final double STEP = 0.04;

  /** The scan comes no nearer than this part of the way beyond the search [1]. */
  private static final double AS_GOOD = 0.02;

  private static final double FARTHEST = 5;

  /** The same proposal, the same solver with the same options [m]. */
  private static final double SAME_PLACE = 1e-9;

  private static final String SHOOT =
      "src/test/resources/boughwright/physics/reach/young-shoot.tree.json";

  private static Tree tree(String file) throws InputException {
    return TreeFiles.read(Path.of(file)).document().tree();
  }

  private static ReachRequest request(Tree tree, String limb, Vector3 by) {
    Skeleton skeleton = new Skeleton(tree);
    Point3 target = skeleton.point(skeleton.indexOf(limb), 1).plus(by);
    Plan plan = RandomBranch.stick().plan();
    return new ReachRequest(
        tree,
        plan,
        List.of(),
        TrialSpecies.of(tree),
        new Target.Point(new Spot(limb, 1), target),
        new ReachRequest.Wishes(
            Set.of(AnchorSort.values()), ALLOWED, 1, Set.of(Material.COPPER_ANNEALED)));
  }

  private static TrialRequest bent(ReachRequest request, HandBend hand, Coil coil) {
    Proposal proposal =
        new Proposal("p1", Optional.empty(), List.of(), List.of(), List.of(coil), Map.of())
            .withHandBends(List.of(hand));
    return new TrialRequest(
        request.tree(),
        request.plan().withProposals(List.of(proposal)),
        List.of(proposal),
        request.species(),
        Reach.SEARCHING);
  }

  /** The least that is missing of all steps along a way whose guessed risk is allowed [m]. */
  private static double scanned(ReachRequest request, Winding winding) {
    TreeStand stand =
        new TreeStand(request.tree(), request.plan(), request.species(), Reach.SEARCHING);
    Point3 target = ((Target.Point) request.target()).point();
    Spot spot = request.target().spot();
    double way = stand.with(List.of()).point(spot).distance(target);
    double least = way;
    for (double move = STEP * way; move < FARTHEST * way; move += STEP * way) {
      HandBend hand =
          new HandBend("h1", winding.place().spot(), winding.by().direction(), move, Map.of());
      TrialRequest trial = bent(request, hand, winding.coil());
      TreeStand.Stood stood = stand.with(trial.proposals());
      HeldTree forced = HeldTree.of(trial, HeldTree.Grip.ALL);
      if (!stood.holds() || !forced.holds() || stood.risk().breaking() > ALLOWED) {
        break;
      }
      HeldTree held = forced.gripped(HeldTree.Grip.HELD);
      if (held.holds()) {
        least = Math.min(least, held.point(spot).distance(target));
      }
    }
    return least;
  }

  private static Candidate nearest(ReachRequest request) {
    Probe probe =
        new Probe(
            new TreeStand(request.tree(), request.plan(), request.species(), Reach.SEARCHING),
            request.target(),
            List.of());
    Tried start = probe.alone().orElseThrow();
    LimbPath path = new LimbPath(probe.stand(), request.target().spot());
    WishFinder finder = new WishFinder(probe, start);
    List<Wish> wishes = path.places().stream().map(finder::at).flatMap(Optional::stream).toList();
    return new CoilSearch(request, probe, path, start)
        .candidates(wishes, List.of()).stream()
            .min(Comparator.comparingDouble(Candidate::miss))
            .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    SHOOT + ", b1, -4, 0, 11",
    "../examples/larch.tree.json, b2c, 0, 0, -8",
    "../examples/hedge-hornbeam.tree.json, b1s1b, 0, 0, -5"
  })
  void bentOnAndLetGo_comesAsNearAsAPlainScanOfTheHandsWay(
      String file, String limb, double x, double y, double z) throws InputException {
    Vector3 by = new Vector3(x, y, z).times(1e-3);
    ReachRequest request = request(tree(file), limb, by);
    Candidate found = nearest(request);
    double scan = scanned(request, found.winding().orElseThrow());
    assertThat(found.risk().breaking()).isLessThanOrEqualTo(ALLOWED);
    assertThat(found.miss()).isLessThanOrEqualTo(scan + AS_GOOD * by.norm());
    assertThat(scan).as("the hand had to go far").isLessThan(0.85 * by.norm());
  }

  private static HoldingCoils holding(String file, String limb, Vector3 by) throws InputException {
    Tree tree = tree(file);
    Skeleton skeleton = new Skeleton(tree);
    Grab grab =
        Grab.anew(tree, RandomBranch.stick().plan(), TrialSpecies.of(tree), new Spot(limb, 1));
    return HoldingCoils.of(
        grab,
        skeleton.point(skeleton.indexOf(limb), 1).plus(by),
        new HoldingCoils.Allowed(Set.of(Material.ALUMINIUM, Material.COPPER_ANNEALED), ALLOWED),
        done -> {});
  }

  @Test
  void thinShoot_isHeldByWireThatAddsToWhatTheWoodKeeps() throws InputException {
    HoldingCoils found = holding(SHOOT, "b1", new Vector3(-0.005, 0, 0.014));
    Choice choice = found.useful().orElseThrow();
    TrialRequest trial = TrialRequest.of(tree(SHOOT), choice.plan(), TrialSpecies.of(tree(SHOOT)));
    HeldTree forced = HeldTree.of(trial, HeldTree.Grip.ALL);
    Point3 wanted = new Point3(0.105, 0, 0.144);
    Spot tip = new Spot("b1", 1);
    double held = forced.gripped(HeldTree.Grip.HELD).point(tip).distance(wanted);
    double free = forced.gripped(HeldTree.Grip.NOTHING).point(tip).distance(wanted);
    assertThat(held).isCloseTo(choice.miss(), within(SAME_PLACE));
    assertThat(held).isLessThan(found.way() / 2);
    assertThat(free - held).isGreaterThan(0.19 * found.way());
    assertThat(RiskTrial.run(trial, new RiskOptions(500, 1, part -> {})).risk().orElseThrow())
        .satisfies(risk -> assertThat(risk.breaking().p()).isLessThanOrEqualTo(ALLOWED));
  }

  @Test
  void stoutBranch_isNotOfferedWireThatAddsNothing() throws InputException {
    HoldingCoils found = holding("../examples/larch.tree.json", "b2c", new Vector3(0, 0, -0.015));
    HoldingCoils.Best best = found.best().orElseThrow();
    assertThat(found.useful()).isEmpty();
    assertThat(best.brings()).isBetween(0.0, found.way() / 2);
    assertThat(best.brings()).isCloseTo(found.way() - best.choice().miss(), within(SAME_PLACE));
  }
}
