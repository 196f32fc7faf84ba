// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.ground.Ground;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.viewer.scene.GroundWords;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class GroundTextTest {
  private static final FrontPose STEEP =
      new FrontPose(Math.toRadians(20), Math.toRadians(20), Math.toRadians(-25));

  private static Tree tree;

  @BeforeAll
  static void read() throws Exception {
    tree = TreeFiles.read(Path.of("..", "examples", "hedge-hornbeam.tree.json")).document().tree();
  }

  private static Ground ground(Optional<Container> container) {
    return new Ground(new WoodLeft(new Skeleton(tree)), container, RootCare.DECIDUOUS);
  }

  private static Optional<Container> container(double length, double width, double depth) {
    Container.Size size = new Container.Size(length, width, depth);
    return Optional.of(new Container(size, 0, 0, 0, 0, OptionalDouble.empty(), false, Map.of()));
  }

  private static String told(Ground ground, FrontPose pose) {
    TextPage page = new TextPage();
    GroundText.write(page, ground, pose);
    assertThat(page.toString().lines()).allMatch(line -> line.length() < TextPage.WIDTH);
    return page.toString().replaceAll("\\s+", " ");
  }

  @Test
  void standingTree_isToldWhole() {
    String text = told(ground(tree.setting().container()), FrontPose.upright(0));
    assertThat(text)
        .contains("8 roots leave the trunk, which is 62 mm thick there")
        .contains("Not level: the starts lie within 6.3 mm")
        .contains("the trade allows 6.2 mm", "common practice, no source")
        .contains("All roots fit: nothing must be cut")
        .contains("The container is 330 x 250 x 110 mm inside.")
        .contains("two thirds of the height")
        .contains("Tree, soil and container weigh", "tips over at a slope of")
        .contains("tension of each")
        .doesNotContain("in steps", "turned by");
  }

  @Test
  void steepTilt_inASmallContainer_isToldInSteps() {
    Ground ground = ground(container(0.2, 0.15, 0.06));
    String text = told(ground, STEEP);
    assertThat(text)
        .contains("Buried by this tilt: r5")
        .contains("r1b 42 mm from the trunk")
        .contains("would dry: r1, r2, r3")
        .contains("2 repottings, 2 to 3 years apart")
        .contains("its length turned by 20 degrees against this front")
        .contains("The container is not weighed");
    assertThat(GroundWords.brief(ground.at(STEEP)))
        .isEqualTo(
            "roots uneven within 18 mm, 4 of 8 buried, cuts take 9 % of the root wood,"
                + " 3 roots lifted out of the soil, in 2 repottings");
  }

  @Test
  void treeWithoutRoots_orWithOne_saysWhatCannotBeSaid() {
    List<Spot> all =
        tree.segments().stream()
            .filter(s -> s.id().matches("r[1-8]"))
            .map(s -> new Spot(s.id(), 0))
            .toList();
    Skeleton skeleton = new Skeleton(tree);
    WoodLeft bare = new WoodLeft(new Cutting(skeleton, all));
    Ground none = new Ground(bare, Optional.empty(), RootCare.OTHER);
    assertThat(told(none, FrontPose.upright(0)))
        .contains("No root leaves the trunk in this file", "No container is given")
        .contains("Its centre of mass is")
        .doesNotContain("tension of each", "spreads");
    assertThat(GroundWords.brief(none.at(FrontPose.upright(0)))).isEqualTo("no roots in the file");
    WoodLeft single = new WoodLeft(new Cutting(skeleton, all.subList(1, all.size())));
    Ground one = new Ground(single, Optional.empty(), RootCare.OTHER);
    assertThat(told(one, FrontPose.upright(0)))
        .contains("One root leaves the trunk", "Fewer than three roots: no plane")
        .doesNotContain("Level:", "level:", "widest gap");
  }

  @Test
  void containerSmallerThanTheTrunk_isSaid() {
    Ground ground = ground(container(0.05, 0.05, 0.06));
    assertThat(told(ground, FrontPose.upright(0)))
        .contains("The trunk base does not stand inside this container")
        .doesNotContain("All roots fit", "tips over");
    assertThat(GroundWords.brief(ground.at(FrontPose.upright(0))))
        .contains("the trunk stands beyond the container");
  }

  @Test
  void json_hasUnits_andLeavesOutWhatIsNotKnown() {
    JsonNode node = GroundJson.of(ground(container(0.2, 0.15, 0.06)), STEEP);
    assertThat(node.at("/root_base/roots").asInt()).isEqualTo(8);
    assertThat(node.at("/root_base/level").asBoolean()).isFalse();
    assertThat(node.at("/root_base/levels/0/root").asText()).isEqualTo("r1");
    assertThat(node.at("/root_base/plane/levelled_by/tilt_deg").asDouble())
        .isCloseTo(0.65, within(0.01));
    assertThat(node.at("/root_mass/cuts/0/segment").asText()).isEqualTo("r1b");
    double shares = 0;
    for (JsonNode cut : node.at("/root_mass/cuts")) {
      shares += cut.get("share").asDouble();
    }
    assertThat(node.at("/root_mass/share_cut").asDouble()).isCloseTo(shares, within(1e-9));
    assertThat(node.at("/root_mass/repotting_tilts_deg")).hasSize(2);
    assertThat(node.at("/balance").has("with_soil_and_container")).isFalse();
    assertThat(node.at("/tie_down/ties")).hasSize(3);
    assertThat(node.at("/cannot_be_said/0").asText()).isEqualTo("no_mass");
  }
}
