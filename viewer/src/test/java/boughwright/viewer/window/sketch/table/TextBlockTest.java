// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextBlockTest {
  @Test
  void of_readsRowsAndCells_withAnyLineEnds() {
    List<List<String>> cells = List.of(List.of("1", "2"), List.of("3", ""));

    assertThat(TextBlock.of("1\t2\n3\t\n").rows()).isEqualTo(cells);
    assertThat(TextBlock.of("1\t2\r\n3\t\r\n").rows()).isEqualTo(cells);
    assertThat(TextBlock.of("1\t2\r3\t\n").rows()).isEqualTo(cells);
  }

  @Test
  void of_readsOneCell_withoutALineEnd() {
    assertThat(TextBlock.of("12").isOneCell()).isTrue();
  }

  @Test
  void text_isReadBack_withTabsLinesAndQuotesInCells() {
    TextBlock block =
        new TextBlock(List.of(List.of("a\tb", "say \"so\""), List.of("two\nlines", "plain")));

    assertThat(TextBlock.of(block.text())).isEqualTo(block);
  }
}
