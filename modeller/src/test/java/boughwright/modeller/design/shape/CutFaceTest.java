// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Sticks;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Faces of cuts by hand, and against the section of a cylinder by a plane. */
class CutFaceTest {
  private static final double EXACT = 1e-12;

  /** An upright trunk of 40 to 30 mm that goes on, a level branch, what sits on it, deadwood. */
  private static Skeleton tree() {
    return new Skeleton(
        Sticks.tree(
            Sticks.trunk("t"),
            Sticks.on("t", 1, "u", Kind.TRUNK, new Point3(0, 0, 0.3)),
            Sticks.on("t", 0.5, "b", Kind.BRANCH, new Point3(0.2, 0, 0.05)),
            Sticks.on("b", 0.5, "s", Kind.BRANCH, new Point3(0.1, 0.1, 0.05)),
            Sticks.on("t", 0.25, "d", Kind.DEADWOOD, new Point3(0, -0.1, 0.025))));
  }

  private static List<CutFace> faces(Spot... cuts) {
    return CutFace.all(new Cutting(tree(), List.of(cuts)));
  }

  @Test
  void woodCutAcross_showsItsWholeSection_squareToItsLength() {
    List<CutFace> faces = faces(new Spot("t", 0.6));
    assertThat(faces).hasSize(1);
    CutFace face = faces.get(0);
    assertThat(face.across()).isTrue();
    assertThat(face.cut()).isEqualTo(new Spot("t", 0.6)).isEqualTo(face.on());
    assertThat(face.middle().distance(new Point3(0, 0, 0.06))).isLessThan(EXACT);
    assertThat(face.normal().angleTo(Direction3.UP)).isLessThan(EXACT);
    assertThat(face.width()).isCloseTo(0.034, within(EXACT)).isEqualTo(face.height());
    assertThat(face.area()).isCloseTo(Math.PI * 0.017 * 0.017, within(EXACT));
  }

  @Test
  void levelBranchTakenWhole_leavesARoundFaceOnTheBark() {
    List<CutFace> faces = faces(new Spot("b", 0));
    assertThat(faces).hasSize(1);
    CutFace face = faces.get(0);
    assertThat(face.across()).isFalse();
    assertThat(face.cut()).isEqualTo(new Spot("b", 0));
    assertThat(face.on()).isEqualTo(new Spot("t", 0.5));
    assertThat(face.middle().distance(new Point3(0.0175, 0, 0.05))).isLessThan(EXACT);
    assertThat(face.normal().angleTo(Direction3.of(1, 0, 0))).isLessThan(EXACT);
    assertThat(face.lengthwise().angleTo(Direction3.UP)).isLessThan(EXACT);
    assertThat(face.width()).isCloseTo(0.01, within(EXACT));
    assertThat(face.height()).isCloseTo(0.01, within(EXACT));
  }

  @Test
  void woodThatGoesOn_takenWhole_isCutAcrossWhereItStarts() {
    CutFace face = faces(new Spot("u", 0)).get(0);
    assertThat(face.across()).isTrue();
    assertThat(face.on()).isEqualTo(new Spot("t", 1));
    assertThat(face.middle().distance(new Point3(0, 0, 0.1))).isLessThan(EXACT);
    assertThat(face.width()).isCloseTo(0.01, within(EXACT));
  }

  @Test
  void whatGoesWithACut_leavesNoFaceOfItsOwn_norDoesDeadwood() {
    assertThat(faces(new Spot("t", 0.4)))
        .extracting(face -> face.cut().segment())
        .containsExactly("t");
    assertThat(faces(new Spot("b", 0), new Spot("s", 0))).hasSize(1);
    assertThat(faces(new Spot("b", 0.8), new Spot("s", 0.5))).hasSize(2);
    assertThat(faces(new Spot("d", 0))).isEmpty();
    assertThat(faces(new Spot("d", 0.5))).isEmpty();
    assertThat(faces(new Spot("t", 0))).isEmpty();
    assertThat(faces()).isEmpty();
  }

  /**
   * A plane cuts a cylinder in an ellipse whose shadow along the cylinder is the cylinder's own
   * section (geometry of school books): area times the cosine between normal and axis.
   */
  @ParameterizedTest
  @ValueSource(doubles = {90, 75, 60, 45, 30, 20})
  void faceOfASlantingBranch_isTheSectionOfACylinderByAPlane(double degrees) {
    double angle = Math.toRadians(degrees);
    Direction3 way = Direction3.of(Math.sin(angle), 0, Math.cos(angle));
    Rotation turn = Rotation.about(Direction3.of(1, 2, 0.5), 0.7);
    Point3 start = new Point3(0, 0, 0.1);
    Skeleton skeleton =
        new Skeleton(
            Sticks.tree(
                Sticks.trunk("t"),
                Sticks.on(
                    "t", 1, "p", Kind.BRANCH, start.plus(turn.turn(Direction3.UP.times(0.3)))),
                Sticks.on(
                    "p",
                    0.5,
                    "b",
                    Kind.BRANCH,
                    start.plus(turn.turn(Direction3.UP.times(0.15).plus(way.times(0.2)))))));
    CutFace face = CutFace.ofWhole(skeleton, 2);
    double shadow = face.area() * face.normal().dot(skeleton.direction(2));
    assertThat(shadow).isCloseTo(Math.PI * 0.005 * 0.005, within(1e-9));
    assertThat(face.lengthwise().angleTo(skeleton.direction(1))).isLessThan(1e-9);
  }

  @Test
  void branchThatLeansAlongItsParent_hasAFaceOfThreeWidthsAtMost() {
    Skeleton skeleton =
        new Skeleton(
            Sticks.tree(
                Sticks.trunk("t"),
                Sticks.on("t", 0.5, "b", Kind.BRANCH, new Point3(0.01, 0, 0.15))));
    CutFace face = CutFace.ofWhole(skeleton, 1);
    assertThat(face.height()).isCloseTo(0.03, within(EXACT));
    assertThatIllegalArgumentException().isThrownBy(() -> CutFace.ofWhole(skeleton, 0));
  }
}
