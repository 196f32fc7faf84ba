// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class GroundTest {
  private static final double CLOSE = 1e-9;

  private static Tree hornbeam;

  @BeforeAll
  static void read() throws Exception {
    Path file = Path.of("..", "examples", "hedge-hornbeam.tree.json");
    hornbeam = TreeFiles.read(file).document().tree();
  }

  private static Ground hornbeam() {
    return new Ground(
        new WoodLeft(new Skeleton(hornbeam)), hornbeam.setting().container(), RootCare.DECIDUOUS);
  }

  private static RootedTree cross() {
    RootedTree tree = RootedTree.cylinder(0.06);
    for (int n = 0; n < 4; n++) {
      tree.root("r" + n, Direction3.ofAzimuth(n * Math.PI / 2, -0.1), 0.15, 0.02, 0.02);
    }
    return tree;
  }

  /** A tree turned with its container looks the same from a front turned with it. */
  @Test
  void turnedTree_givesTheTurnedAnswer() {
    double turn = 0.9;
    Container box =
        new Container(
            new Container.Size(0.2, 0.15, 0.06),
            0.01,
            -0.005,
            0.3,
            0.002,
            OptionalDouble.of(5),
            true,
            Map.of());
    Rotation round = Rotation.about(Direction3.UP, -turn);
    Point3 middle = RootedTree.turned(new Point3(box.centreX(), box.centreY(), 0), round);
    Container turnedBox =
        new Container(
            box.size(),
            middle.x(),
            middle.y(),
            box.turn() + turn,
            box.rim(),
            box.mass(),
            box.tiedIn(),
            Map.of());
    Ground turned =
        new Ground(
            RootedTree.turned(new WoodLeft(new Skeleton(hornbeam)), round),
            Optional.of(turnedBox),
            RootCare.DECIDUOUS);
    Planting planting = new Planting(0.3, 1.1);
    Ground measured =
        new Ground(new WoodLeft(new Skeleton(hornbeam)), Optional.of(box), RootCare.DECIDUOUS);
    GroundAnswer asked = measured.at(FrontPose.of(0.4, planting));
    GroundAnswer found = turned.at(FrontPose.of(0.4 + turn, new Planting(0.3, 1.1 + turn)));
    assertThat(asked.roots().orElseThrow().loss().cuts()).isNotEmpty();
    requireSame(found, asked);
  }

  private static void requireSame(GroundAnswer found, GroundAnswer asked) {
    assertThat(found.unsaid()).isEqualTo(asked.unsaid());
    RootBase base = found.base().orElseThrow();
    RootBase other = asked.base().orElseThrow();
    assertThat(base.off().orElseThrow()).isCloseTo(other.off().orElseThrow(), within(1e-7));
    assertThat(base.extent().widest()).isCloseTo(other.extent().widest(), within(CLOSE));
    assertThat(base.extent().seen()).isCloseTo(other.extent().seen(), within(CLOSE));
    for (int n = 0; n < base.levels().size(); n++) {
      assertThat(base.levels().get(n).start().distance(other.levels().get(n).start()))
          .isLessThan(CLOSE);
    }
    assertThat(found.roots().orElseThrow().loss().share())
        .isCloseTo(asked.roots().orElseThrow().loss().share(), within(CLOSE));
    Balance balance = found.balance();
    assertThat(balance.whole().orElseThrow().centre())
        .matches(c -> c.distance(asked.balance().whole().orElseThrow().centre()) < CLOSE);
    assertThat(balance.margin().orElseThrow())
        .isCloseTo(asked.balance().margin().orElseThrow(), within(CLOSE));
    assertThat(found.ties().orElseThrow().rocksAt())
        .isCloseTo(asked.ties().orElseThrow().rocksAt(), within(1e-6));
  }

  /**
   * A trunk of 60 mm and 0.5 m weighs pi 0.03^2 0.5 1000 = 1.41372 kg with its middle 0.25 m up.
   * Tilted by 20 degrees its middle goes 0.25 sin 20 = 85.505 mm out.
   */
  @Test
  void trunk_weighsWhatItsVolumeDoes_andLeansOut() {
    Ground ground =
        new Ground(
            cross().wood(), Optional.of(RootedTree.container(0.3, 0.3, 0.1)), RootCare.OTHER);
    GroundAnswer answer = ground.at(FrontPose.of(0, new Planting(Math.toRadians(20), Math.PI)));
    Balance.Body above = answer.balance().above();
    assertThat(above.mass()).isCloseTo(1.41372, within(1e-5));
    assertThat(above.centre().distance(new Point3(0, 0.0855050, 0.2349232))).isLessThan(1e-6);
    assertThat(answer.balance().whole()).isEmpty();
    assertThat(answer.unsaid()).contains(Unsaid.NO_MASS);
    assertThat(answer.fit().orElseThrow().height())
        .isCloseTo(0.5 * Math.cos(Math.toRadians(20)), within(CLOSE));
  }

  /**
   * Upright in a box of 400 mm that weighs 10 kg with the tree: tree 1.41372 kg and 4 roots of 20
   * mm; the rest sits 50 mm down. The floor is 100 mm down, its edge 200 mm off.
   */
  @Test
  void weighedContainer_tipsWhereItsWeightPassesTheEdge() {
    Container box =
        new Container(
            new Container.Size(0.4, 0.4, 0.1),
            0.01,
            0,
            0,
            0,
            OptionalDouble.of(10),
            true,
            Map.of());
    Ground ground = new Ground(cross().wood(), Optional.of(box), RootCare.OTHER);
    Balance balance = ground.at(FrontPose.upright(0)).balance();
    double length = 0.15 - 0.03 / Math.cos(0.1);
    double roots = 4 * 1000 * Math.PI * 1e-4 * length;
    double rootsZ = -0.5 * (0.15 + 0.03 / Math.cos(0.1)) * Math.sin(0.1);
    double trunk = 1000 * Math.PI * 9e-4 * 0.5;
    double measured = trunk + 4 * 1000 * Math.PI * 1e-4 * 0.15;
    double soil = 10 - measured;
    double all = trunk + roots + soil;
    double x = 0.01 * soil / all;
    double z = (0.25 * trunk + rootsZ * roots - 0.05 * soil) / all;
    Point3 centre = balance.whole().orElseThrow().centre();
    assertThat(centre.distance(new Point3(x, 0, z))).isLessThan(CLOSE);
    double margin = 0.2 - (0.01 - x);
    assertThat(balance.margin().orElseThrow()).isCloseTo(margin, within(CLOSE));
    assertThat(balance.tips().orElseThrow())
        .isCloseTo(Math.atan(margin / (z + 0.1)), within(CLOSE));
  }

  @Test
  void massBelowThatOfTheWood_isSaid() {
    Container box =
        new Container(
            new Container.Size(0.3, 0.3, 0.1), 0, 0, 0, 0, OptionalDouble.of(1), true, Map.of());
    Ground ground = new Ground(cross().wood(), Optional.of(box), RootCare.OTHER);
    assertThat(ground.at(FrontPose.upright(0)).unsaid()).contains(Unsaid.MASS_TOO_SMALL);
  }

  @Test
  void hornbeam_standsLevelBest_whereItsPlaneSays() {
    Ground ground = hornbeam();
    Planting best = ground.plane().orElseThrow().levelling();
    RootBase upright = ground.at(FrontPose.upright(0.3)).base().orElseThrow();
    RootBase levelled = ground.at(FrontPose.of(0.3, best)).base().orElseThrow();
    assertThat(levelled.off().orElseThrow()).isLessThan(1e-7);
    assertThat(upright.off().orElseThrow()).isCloseTo(best.tilt(), within(1e-7));
    assertThat(upright.levels()).hasSize(8);
    assertThat(upright.levels()).allMatch(level -> level.rise() == 0);
  }
}
