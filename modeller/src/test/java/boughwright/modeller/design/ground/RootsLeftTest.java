// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.tree.Container;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RootsLeftTest {
  private static final double CLOSE = 1e-9;

  private static RootLoss loss(WoodLeft wood, Container container, FrontPose pose) {
    return new Ground(wood, Optional.of(container), RootCare.DECIDUOUS)
        .at(pose)
        .roots()
        .orElseThrow()
        .loss();
  }

  /**
   * A level root of 20 mm all along to the right, 200 mm from the middle of a trunk of 60 mm, in a
   * box that ends 100 mm to the right: it fits to 90 mm, since it needs its radius for room. 110 mm
   * go of the 170 mm that are outside the trunk.
   */
  @Test
  void levelRoot_isCutWhereTheWallStandsInItsWay() {
    WoodLeft wood =
        RootedTree.cylinder(0.06).root("r", new Direction3(1, 0, 0), 0.2, 0.02, 0.02).wood();
    RootLoss loss = loss(wood, RootedTree.container(0.2, 0.3, 0.1), FrontPose.upright(0));
    RootCut cut = loss.cuts().get(0);
    assertThat(loss.cuts()).hasSize(1);
    assertThat(cut.along()).isCloseTo(0.45, within(CLOSE));
    assertThat(cut.caliper()).isCloseTo(0.02, within(CLOSE));
    assertThat(cut.length()).isCloseTo(0.11, within(CLOSE));
    assertThat(cut.volume()).isCloseTo(Math.PI * 1e-4 * 0.11, within(CLOSE));
    assertThat(loss.share()).isCloseTo(11.0 / 17, within(CLOSE));
    assertThat(cut.takesAll()).isFalse();
  }

  /** The container is turned by a quarter: now its short side is in the way, 150 mm off. */
  @Test
  void turnedContainer_turnsItsWalls() {
    WoodLeft wood =
        RootedTree.cylinder(0.06).root("r", new Direction3(1, 0, 0), 0.2, 0.02, 0.02).wood();
    Container turned =
        new Container(
            new Container.Size(0.2, 0.3, 0.1),
            0,
            0,
            Math.PI / 2,
            0,
            OptionalDouble.empty(),
            false,
            Map.of());
    for (double azimuth : new double[] {0, 1.3, -2}) {
      RootCut cut = loss(wood, turned, FrontPose.upright(azimuth)).cuts().get(0);
      assertThat(cut.along()).isCloseTo(0.7, within(CLOSE));
    }
  }

  /** What sits beyond the cut goes with it; what sits before it stays. */
  @Test
  void sideRootBeyondTheCut_goesWithIt() {
    WoodLeft wood =
        RootedTree.cylinder(0.06)
            .root("r", new Direction3(1, 0, 0), 0.2, 0.02, 0.02)
            .piece("far", "r", 0.8, new Point3(0.16, 0.05, 0), 0.01, 0.01)
            .piece("near", "r", 0.3, new Point3(0.06, 0.05, 0), 0.01, 0.01)
            .piece("on", "r", 1, new Point3(0.25, 0, 0), 0.02, 0.02)
            .wood();
    RootLoss loss = loss(wood, RootedTree.container(0.2, 0.3, 0.1), FrontPose.upright(0));
    assertThat(loss.cuts()).hasSize(1);
    assertThat(loss.cuts().get(0).length()).isCloseTo(0.11 + 0.05 + 0.05, within(CLOSE));
    assertThat(loss.cut()).isCloseTo(Math.PI * (1e-4 * 0.16 + 0.25e-4 * 0.05), within(CLOSE));
  }

  /** Tilted by 30 degrees toward the left, the right root rises out of the soil whole. */
  @Test
  void rootWhoseEndsRiseOutOfTheSoil_driesUp() {
    RootedTree tree = RootedTree.cylinder(0.06);
    for (int n = 0; n < 4; n++) {
      tree.root("r" + n, Direction3.ofAzimuth(n * Math.PI / 2, -0.1), 0.2, 0.02, 0.01);
    }
    FrontPose left = FrontPose.of(0, new Planting(Math.toRadians(30), Math.PI / 2));
    RootLoss loss =
        new Ground(tree.wood(), Optional.empty(), RootCare.OTHER)
            .at(left)
            .roots()
            .orElseThrow()
            .loss();
    assertThat(loss.cuts()).isEmpty();
    assertThat(loss.lifted()).extracting(Root::id).containsExactly("r3");
    assertThat(loss.share()).isCloseTo(0.25, within(CLOSE));
  }

  @Test
  void containerUnderTheTrunk_isSaid_andNothingIsCut() {
    WoodLeft wood =
        RootedTree.cylinder(0.06).root("r", new Direction3(1, 0, 0), 0.2, 0.02, 0.02).wood();
    GroundAnswer answer =
        new Ground(wood, Optional.of(RootedTree.container(0.05, 0.3, 0.1)), RootCare.OTHER)
            .at(FrontPose.upright(0));
    assertThat(answer.unsaid()).contains(Unsaid.CONTAINER_UNDER_TRUNK);
    assertThat(answer.roots().orElseThrow().loss().cuts()).isEmpty();
    assertThat(answer.balance().margin()).isEmpty();
    assertThat(answer.fit().orElseThrow().holdsTrunk()).isFalse();
  }

  /** Random roots in random boxes: walks along each piece in steps and looks at every place. */
  @Test
  void cuts_areWhereWalkingAlongTheRootsSays() {
    Random random = new Random(3);
    int cut = 0;
    for (int trial = 0; trial < 60; trial++) {
      RootedTree tree = RootedTree.cylinder(0.05);
      for (int n = 0; n < 5; n++) {
        Direction3 way = Direction3.ofAzimuth(n * 1.2 + random.nextDouble(), -0.3);
        tree.root("r" + n, way, 0.08 + 0.1 * random.nextDouble(), 0.02, 0.012);
      }
      Container box =
          new Container(
              new Container.Size(
                  0.15 + 0.1 * random.nextDouble(), 0.14 + 0.1 * random.nextDouble(), 0.08),
              0.01 * random.nextGaussian(),
              0.01 * random.nextGaussian(),
              random.nextDouble() * 6,
              0.003,
              OptionalDouble.empty(),
              false,
              Map.of());
      Planting planting = new Planting(0.4 * random.nextDouble(), random.nextDouble() * 6);
      FrontPose pose = FrontPose.of(random.nextDouble() * 6, planting);
      WoodLeft wood = tree.wood();
      GroundAnswer answer = new Ground(wood, Optional.of(box), RootCare.OTHER).at(pose);
      RootLoss loss = answer.roots().orElseThrow().loss();
      for (Root root : new Ground(wood, Optional.of(box), RootCare.OTHER).roots()) {
        double walked = walked(root.pieces().get(0).wood(), box, Standing.turn(planting));
        double found =
            loss.cuts().stream()
                .filter(one -> one.root().equals(root))
                .mapToDouble(RootCut::at)
                .findFirst()
                .orElse(1);
        assertThat(found).isCloseTo(walked, within(2e-3));
        cut += found < 1 ? 1 : 0;
      }
    }
    assertThat(cut).isBetween(50, 290);
  }

  /** In the frame of the container as the file gives it, without any front. */
  private static double walked(Frustum wood, Container box, Rotation tilt) {
    double cos = Math.cos(box.turn());
    double sin = Math.sin(box.turn());
    for (double t = 0; t < 1; t += 1e-3) {
      Point3 at = RootedTree.turned(wood.start().toward(wood.end(), t), tilt);
      Vector3 off = at.minus(new Point3(box.centreX(), box.centreY(), 0));
      double radius = wood.startRadius() + t * (wood.endRadius() - wood.startRadius());
      boolean in =
          Math.abs(off.x() * cos - off.y() * sin) + radius <= box.size().length() / 2
              && Math.abs(off.x() * sin + off.y() * cos) + radius <= box.size().width() / 2
              && at.z() - radius >= box.rim() - box.size().depth();
      if (!in) {
        return t;
      }
    }
    return 1;
  }

  /** A root of 170 mm outside the trunk: what goes is known for each tilt, and so are the steps. */
  @Test
  void steps_keepEachRepottingWithinTheRule() {
    RootedTree tree = RootedTree.cylinder(0.06);
    for (int n = 0; n < 8; n++) {
      tree.root("r" + n, Direction3.ofAzimuth(n * Math.PI / 4, -0.2), 0.25, 0.03, 0.03);
    }
    Ground ground =
        new Ground(
            tree.wood(), Optional.of(RootedTree.container(0.6, 0.6, 0.11)), RootCare.CONIFER);
    FrontPose pose = FrontPose.of(0, new Planting(Math.toRadians(40), 0.3));
    RootMass mass = ground.at(pose).roots().orElseThrow();
    List<Double> tilts = mass.steps().tilts();
    assertThat(mass.loss().share()).isGreaterThan(RootCare.CONIFER.careful());
    assertThat(tilts).hasSizeGreaterThan(1).isSorted().last().isEqualTo(pose.tilt());
    double kept = 1;
    for (double tilt : tilts) {
      kept *= 0.75;
      FrontPose step = FrontPose.of(0, new Planting(tilt, 0.3));
      double share = ground.at(step).roots().orElseThrow().loss().share();
      assertThat(share).isLessThanOrEqualTo(1 - kept + CLOSE);
    }
    double fewest = Math.log(1 - mass.loss().share()) / Math.log(0.75);
    assertThat(tilts).hasSize((int) Math.ceil(fewest));
    TiltSteps.Follow follow = mass.steps().follow().orElseThrow();
    assertThat(follow.tooThick()).isTrue();
    double length = 0.25 - 0.03 / Math.cos(0.2);
    assertThat(follow.strain()).isCloseTo(0.015 * follow.angle() / length, within(CLOSE));
    assertThat(follow.steps()).isEqualTo((int) Math.ceil(follow.strain() / 0.01));
  }

  @Test
  void smallTilt_isMadeAtOnce() {
    RootedTree tree = RootedTree.cylinder(0.06);
    for (int n = 0; n < 8; n++) {
      tree.root("r" + n, Direction3.ofAzimuth(n * Math.PI / 4, -0.2), 0.2, 0.03, 0.01);
    }
    Ground ground =
        new Ground(
            tree.wood(), Optional.of(RootedTree.container(0.6, 0.6, 0.2)), RootCare.DECIDUOUS);
    TiltSteps steps =
        ground.at(FrontPose.of(0, new Planting(0.05, 0))).roots().orElseThrow().steps();
    assertThat(steps.atOnce()).isTrue();
    assertThat(steps.tilts()).containsExactly(0.05);
    assertThat(steps.follow()).isEmpty();
  }
}
