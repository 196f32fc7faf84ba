// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.ground.Ground;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Tree;
import boughwright.physics.grow.Repotting;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.picture.FrontsWords;
import boughwright.viewer.picture.PictureSize;
import boughwright.viewer.picture.PrintedPicture;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.scene.GroundWords;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The root base of the tree that fronts are chosen for. */
final class FrontsGround {
  private final Tree tree;
  private final WoodLeft wood;
  private final RootCare care;
  private final Optional<Container.Size> asked;

  FrontsGround(FrontsAnswer.Asked asked) {
    tree = asked.file().document().tree();
    wood = new WoodLeft(new Cutting(asked.tree().skeleton(), asked.tree().cuts()));
    care = Repotting.care(TrialSpecies.of(tree));
    this.asked = asked.container();
  }

  /**
   * For a front. The container of the file stays as it is placed there; one that is asked for
   * stands with its length across the front and the trunk in its middle.
   */
  Ground of(FrontPose pose) {
    Optional<Container> container =
        asked.isPresent()
            ? asked.map(size -> across(size, pose.azimuth()))
            : tree.setting().container();
    return new Ground(wood, container, care);
  }

  /**
   * Draws the root base of a front.
   *
   * @throws InputException if there is none, or if it cannot be drawn
   */
  static PrintedPicture draw(FrontsAnswer.Asked asked, FrontPose pose, PictureSize size)
      throws InputException {
    GroundAnswer answer = new FrontsGround(asked).of(pose).at(pose);
    if (answer.base().isEmpty()) {
      throw new InputException(
          Problem.fault(
              Place.of("--roots"),
              "no-roots",
              "no root leaves the trunk in this file",
              "Add the roots to the file, or leave it out"));
    }
    FrontsWords words =
        new FrontsWords(
            VisibleText.of(asked.file().document().tree().name()),
            VisibleText.of(FrontsWording.about(asked)),
            "Root base from above: "
                + FrontWords.pose(pose)
                + "; "
                + GroundWords.brief(answer)
                + ".",
            "Numbers: height of the middle of each root where it leaves the trunk, above the soil"
                + " line. Cross: centre of mass of the wood above the roots.",
            List.of());
    return PrintedPicture.rootBase(answer, words, size);
  }

  private static Container across(Container.Size size, double azimuth) {
    return new Container(size, 0, 0, azimuth, 0, OptionalDouble.empty(), false, Map.of());
  }
}
