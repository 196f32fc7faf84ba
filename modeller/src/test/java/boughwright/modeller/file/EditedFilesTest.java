// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.RandomDocuments;
import boughwright.modeller.edit.RandomEdits;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What edits leave can be saved and is the same when it is read. */
class EditedFilesTest {
  private static final int DOCUMENTS = 200;
  private static final int EDITS = 50;

  @Test
  void editedDocument_isTheSame_afterWritingAndReading() throws Exception {
    Random random = new Random(21);
    RandomDocuments documents = new RandomDocuments(random);
    RandomEdits edits = new RandomEdits(random);
    int[] made = new int[RandomEdits.KINDS];
    for (int k = 0; k < DOCUMENTS; k++) {
      Document document = documents.next();
      for (int kind = 0; kind < RandomEdits.KINDS; kind++) {
        try {
          Document edited = edits.next(document, kind).of(document);
          made[kind]++;
          Document read = TreeFiles.read("edited", TreeJson.bytes(edited)).document();
          assertThat(read).isEqualTo(edited);
          document = random.nextInt(4) == 0 ? edited : document;
        } catch (InputException e) {
          assertThat(e.problems()).allSatisfy(one -> assertThat(one.remedy()).isNotBlank());
          assertThat(e.problems().get(0).place().source()).isEqualTo("the tree");
        }
      }
    }
    assertThat(Arrays.stream(made).min().orElse(0))
        .as(Arrays.toString(made))
        .isGreaterThan(DOCUMENTS / 8);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void file_isTheSameByteForByte_afterUndoingAll_andAfterRedoingAll(long seed) throws Exception {
    Random random = new Random(seed);
    RandomEdits edits = new RandomEdits(random);
    History history = History.opened(new RandomDocuments(random).next());
    byte[] start = TreeJson.bytes(history.document());
    List<byte[]> all = new ArrayList<>(List.of(start));
    while (all.size() <= EDITS) {
      try {
        History next = history.after(edits.next(history.document()));
        if (next != history) {
          assertThat(next.isSaved()).isEqualTo(next.document().equals(next.saved().get()));
          all.add(TreeJson.bytes(next.document()));
          history = next;
        }
      } catch (InputException e) {
        continue;
      }
    }
    History end = history.asSaved();
    History at = end;
    for (int k = EDITS; k > 0; k--) {
      assertThat(at.isSaved()).isEqualTo(k == EDITS || at.document().equals(end.document()));
      assertThat(TreeJson.bytes(at.document())).isEqualTo(all.get(k));
      at = at.undone();
    }
    assertThat(TreeJson.bytes(at.document())).isEqualTo(start);
    assertThat(at.undoName()).isEmpty();
    assertThat(at.isSaved()).isFalse();
    while (at.redoName().isPresent()) {
      at = at.redone();
    }
    assertThat(TreeJson.bytes(at.document())).isEqualTo(all.get(EDITS));
    assertThat(at.isSaved()).isTrue();
  }
}
