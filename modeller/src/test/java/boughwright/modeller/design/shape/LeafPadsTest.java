// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PadRules;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LeafPadsTest {
  private static Tree hornbeam;

  @BeforeAll
  static void read() throws Exception {
    Path file = Path.of("..", "examples", "hedge-hornbeam.tree.json");
    hornbeam = TreeFiles.read(file).document().tree();
  }

  private static LeafPads of(Tree tree, Spot... cuts) {
    return LeafPads.of(new WoodLeft(new Cutting(new Skeleton(tree), List.of(cuts))));
  }

  private static List<String> segments(LeafPads pads) {
    return pads.pads().stream().map(Pad::segment).toList();
  }

  @Test
  void guess_clothesEveryTipOfTheTree_butNoRoot() {
    Skeleton skeleton = new Skeleton(hornbeam);
    LeafPads pads = of(hornbeam);
    assertThat(pads.guessed()).isTrue();
    List<String> ids = hornbeam.segments().stream().map(Segment::id).toList();
    assertThat(PadRules.findings(ids, pads.pads())).isEmpty();
    long tips =
        hornbeam.segments().stream()
            .filter(segment -> segment.kind() != Kind.ROOT)
            .filter(segment -> skeleton.children(skeleton.indexOf(segment.id())).isEmpty())
            .count();
    assertThat(pads.pads()).hasSize((int) tips);
    assertThat(pads.pads())
        .allMatch(
            pad ->
                skeleton.segment(skeleton.indexOf(pad.segment())).kind() != Kind.ROOT
                    && pad.length() >= pad.width());
  }

  @Test
  void limbThatIsCut_isBareAtTheCut() {
    LeafPads whole = of(hornbeam);
    LeafPads cut = of(hornbeam, new Spot("b1b", 0.95));
    assertThat(segments(whole)).contains("b1d", "b1s3");
    assertThat(segments(cut)).doesNotContain("b1b", "b1d", "b1s3").contains("b1s1b");
  }

  @Test
  void limbCutBetweenTwoSegments_isBareThere() {
    assertThat(segments(of(hornbeam, new Spot("b1b", 0)))).doesNotContain("b1", "b1b", "b1d");
  }

  @Test
  void givenPads_areWornInPlaceOfTheGuess_asFarAsTheyAreLeft() {
    Pad near = new Pad("f1", "b1", 0.5, 0.05, 0.04, 0.02, 0, Map.of());
    Pad far = new Pad("f2", "b1d", 0.5, 0.05, 0.04, 0.02, 0, Map.of());
    Foliage foliage = new Foliage(Optional.empty(), List.of(near, far), Map.of());
    Tree tree = hornbeam.withFoliage(foliage);
    assertThat(of(tree)).isEqualTo(new LeafPads(List.of(near, far), false));
    assertThat(of(tree, new Spot("b1c", 0.5)).pads()).containsExactly(near);
    assertThat(of(tree, new Spot("b1", 0.4)).pads()).isEmpty();
  }

  @Test
  void deadLimb_isBare() {
    List<Segment> segments =
        hornbeam.segments().stream()
            .map(segment -> segment.id().equals("d6") ? dead(segment) : segment)
            .toList();
    Tree tree = new TreeDraft(hornbeam).segments(segments).pullTests(List.of()).build();
    assertThat(segments(of(hornbeam))).contains("d6");
    assertThat(segments(of(tree))).doesNotContain("d6");
  }

  private static Segment dead(Segment segment) {
    return new Segment(
        segment.id(),
        segment.parent(),
        segment.along(),
        segment.joins(),
        segment.kind(),
        segment.start(),
        segment.end(),
        segment.caliperStart(),
        segment.caliperEnd(),
        segment.bark(),
        Optional.of(false),
        segment.extras());
  }
}
