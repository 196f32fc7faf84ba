// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.edit.BranchEdits;
import boughwright.modeller.edit.NewTree;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private static Document document() throws InputException {
    return NewTree.document("Invented hornbeam", "carpinus-betulus");
  }

  @Test
  void undoneChange_hasAName() throws Exception {
    History history = History.opened(document()).after(SegmentEdits.setCalipers("t1", 0.04, 0.03));
    assertThat(history.undoName()).contains("Set the calipers of t1");
    assertThat(history.redoName()).isEmpty();
    assertThat(history.undone().redoName()).contains("Set the calipers of t1");
    assertThat(history.undone().document()).isEqualTo(document());
    assertThat(history.undone().redone()).isEqualTo(history);
  }

  @Test
  void mark_isRight_whenASavedDocumentIsUndoneAndRedone() throws Exception {
    History saved = History.unsaved(document()).after(TreeEdits.name("One")).asSaved();
    assertThat(History.unsaved(document()).isSaved()).isFalse();
    assertThat(saved.isSaved()).isTrue();
    assertThat(saved.undone().isSaved()).isFalse();
    assertThat(saved.undone().redone().isSaved()).isTrue();
    assertThat(saved.after(TreeEdits.name("Two")).isSaved()).isFalse();
    assertThat(saved.after(TreeEdits.name("Two")).after(TreeEdits.name("One")).isSaved()).isTrue();
  }

  @Test
  void nothingHappens_whenAnEditChangesNothing() throws Exception {
    History history = History.opened(document());
    assertThat(history.after(SegmentEdits.setCalipers("t1", 0.03, 0.025))).isSameAs(history);
    assertThat(history.undone()).isSameAs(history);
    assertThat(history.redone()).isSameAs(history);
  }

  @Test
  void nothingHappens_whenAnEditIsRefused() throws Exception {
    History history = History.opened(document());
    assertThatThrownBy(() -> history.after(BranchEdits.move("t1", "t1", 1)))
        .isInstanceOf(InputException.class);
    assertThat(history.isSaved()).isTrue();
  }

  @Test
  void redo_isGone_afterAnotherChange() throws Exception {
    History history = History.opened(document()).after(TreeEdits.name("One")).undone();
    assertThat(history.after(TreeEdits.name("Two")).redoName()).isEmpty();
  }
}
