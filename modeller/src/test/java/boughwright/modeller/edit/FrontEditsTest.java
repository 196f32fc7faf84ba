// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontChoice;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.InputException;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FrontEditsTest {
  private final Document bare = document();

  private static Document document() {
    try {
      return NewTree.document("Hornbeam", "carpinus-betulus");
    } catch (InputException e) {
      throw new IllegalStateException(e);
    }
  }

  private static MarkedFront front(String id) {
    return new MarkedFront(id, 0.3, Optional.of(new Planting(0.1, 2)), Optional.of("  "), Map.of());
  }

  @Test
  void marks_areKeptInOrder_underFreeNames_andABlankNoteIsNone() throws Exception {
    assertThat(FrontEdits.nextId(bare)).isEqualTo("f1");
    Document one = FrontEdits.mark(front("f1")).of(bare);
    assertThat(FrontEdits.nextId(one)).isEqualTo("f2");
    Document two = FrontEdits.mark(front("f2")).of(one);
    assertThat(two.fronts().marked()).extracting(MarkedFront::id).containsExactly("f1", "f2");
    assertThat(two.fronts().marked("f2").orElseThrow().note()).isEmpty();
  }

  @Test
  void note_isWrittenAndTakenAway_andNothingElseChanges() throws Exception {
    Document one = FrontEdits.mark(front("f1")).of(bare);
    Document noted = FrontEdits.note("f1", "flare widest").of(one);
    assertThat(noted.fronts().marked().get(0).note()).contains("flare widest");
    assertThat(FrontEdits.note("f1", "").of(noted)).isEqualTo(one);
    assertThat(FrontEdits.remove("f1").of(noted)).isEqualTo(bare);
  }

  @Test
  void wishes_areSetAndTakenBack() throws Exception {
    Document wished =
        FrontEdits.weight(FrontMeasure.WOUNDS, OptionalDouble.of(3))
            .of(FrontEdits.style(Optional.of(TreeStyle.CASCADE)).of(bare));
    assertThat(wished.fronts().wishes().style()).contains(TreeStyle.CASCADE);
    assertThat(wished.fronts().wishes().weights()).isEqualTo(Map.of(FrontMeasure.WOUNDS, 3.0));
    assertThat(
            FrontEdits.weightsOfStyle().of(FrontEdits.style(Optional.empty()).of(wished)).fronts())
        .isEqualTo(FrontChoice.UNSAID);
    Document eye =
        FrontEdits.eyeDistance(OptionalDouble.of(0.9))
            .of(FrontEdits.eyeHeight(OptionalDouble.of(0.2)).of(bare));
    assertThat(eye.fronts().wishes().eyeHeight()).hasValue(0.2);
    assertThat(eye.fronts().wishes().eyeDistance()).hasValue(0.9);
  }

  @Test
  void planStandsAsThePoseSays_inOneStep() throws Exception {
    Document planned = PlanEdits.add(new PlanDraft("a").build()).of(bare);
    Document stands = PlanEdits.standing("a", 0.5, Optional.of(new Planting(0.1, 2))).of(planned);
    assertThat(stands.plan("a").orElseThrow().frontAzimuth()).hasValue(0.5);
    assertThat(stands.plan("a").orElseThrow().planting()).contains(new Planting(0.1, 2));
  }

  @Test
  void whatCannotBe_isRefusedWithAWayOut() {
    assertThatThrownBy(() -> FrontEdits.mark(front("f1")).of(FrontEdits.mark(front("f1")).of(bare)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("f2");
    assertThatThrownBy(() -> FrontEdits.remove("f7").of(bare)).hasMessageContaining("f7");
    assertThatThrownBy(() -> FrontEdits.weight(FrontMeasure.TAPER, OptionalDouble.of(-1)).of(bare))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("0 to 1000");
    assertThatThrownBy(() -> FrontEdits.eyeDistance(OptionalDouble.of(0)).of(bare))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("distance");
    assertThatThrownBy(
            () -> FrontEdits.note("f1", "x".repeat(2000)).of(FrontEdits.mark(front("f1")).of(bare)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("note");
  }
}
