// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FoliageEditsTest {
  private static Pad pad(String id, String segment) {
    return new Pad(id, segment, 0.5, 0.06, 0.04, 0.02, 0.005, Map.of());
  }

  /** A random tree without pads. */
  private static Document bare() {
    Document document = new RandomDocuments(new Random(3)).next();
    var foliage = document.tree().foliage().withPads(List.of());
    return document.withTree(document.tree().withFoliage(foliage));
  }

  private static List<Pad> pads(Document document) {
    return document.tree().foliage().pads();
  }

  @Test
  void pad_isAddedChangedAndTakenOut() throws Exception {
    Document bare = bare();
    Document one = FoliageEdits.add(pad("f1", "t1")).of(bare);
    assertThat(pads(one)).containsExactly(pad("f1", "t1"));
    assertThat(FoliageEdits.nextId(one)).isEqualTo("f2");
    Document other = FoliageEdits.change("f1", pad("crown", "t1")).of(one);
    assertThat(pads(other)).containsExactly(pad("crown", "t1"));
    assertThat(FoliageEdits.delete("crown").of(other)).isEqualTo(bare);
  }

  @Test
  void severalPads_areAddedAtOnce() throws Exception {
    List<Pad> both = List.of(pad("f1", "t1"), pad("f2", "t1"));
    assertThat(pads(FoliageEdits.addAll(both).of(bare()))).isEqualTo(both);
    assertThatThrownBy(() -> FoliageEdits.addAll(List.of(both.get(0), both.get(0))).of(bare()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("f1");
  }

  @Test
  void padOnUnknownSegment_isRefused() {
    assertThatThrownBy(() -> FoliageEdits.add(pad("f1", "zz")).of(bare()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("zz");
    assertThatThrownBy(() -> FoliageEdits.delete("f9").of(bare()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("f9");
  }

  @Test
  void leaves_areSaid() throws Exception {
    Document said = FoliageEdits.leaves(Optional.of(Leaves.EVERGREEN)).of(bare());
    assertThat(said.tree().foliage().leaves()).contains(Leaves.EVERGREEN);
  }

  @Test
  void copyOfABranch_isInLeafAsItsOriginal() throws Exception {
    Document bare = bare();
    String branch =
        bare.tree().segments().stream()
            .filter(segment -> segment.parent().isPresent())
            .findFirst()
            .orElseThrow()
            .id();
    Document before = FoliageEdits.add(pad("f1", branch)).of(bare);
    Document after = BranchEdits.mirror(branch, 1).of(before);
    assertThat(pads(after)).hasSize(2).contains(pad("f1", branch));
    Pad copy = pads(after).get(1);
    assertThat(copy.segment()).isNotEqualTo(branch);
    assertThat(copy.at(branch, 0.5).called("f1")).isEqualTo(pad("f1", branch));
    assertThat(pads(BranchEdits.delete(after, branch).of(after))).containsExactly(copy);
  }
}
