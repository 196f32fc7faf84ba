// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SentencesTest {
  private static String fitted(String words, double width, int lines) {
    return Sentences.fitting(words, Lettering.Weight.REGULAR, 20, new Paragraph.Room(width, lines));
  }

  @Test
  void wholeSentences_stayAsLongAsTheyFit() {
    String words = "First one of 17.3 N. Then (see A. Bee) another. And a third.";
    assertThat(fitted(words, 5000, 1)).isEqualTo(words);
    assertThat(fitted(words, 460, 1)).isEqualTo("First one of 17.3 N. Then (see A. Bee) another.");
    assertThat(fitted(words, 230, 1)).isEqualTo("First one of 17.3 N.");
  }

  @Test
  void firstSentence_staysInAnyCase() {
    assertThat(fitted("A sentence that is far too long. Next.", 40, 1))
        .isEqualTo("A sentence that is far too long.");
  }
}
