// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LetteringTest {
  private static final Lettering.Weight REGULAR = Lettering.Weight.REGULAR;

  @ParameterizedTest
  @ValueSource(doubles = {40, 90, 160, 1000})
  void fitted_isNeverWiderThanItsRoom(double room) {
    String fitted = Lettering.fitted("a hornbeam from the old hedge", REGULAR, 20, room);
    assertThat(Lettering.width(fitted, REGULAR, 20)).isLessThanOrEqualTo(room);
    assertThat(fitted).isNotEmpty();
  }

  @Test
  void fitted_withRoom_isUnchanged() {
    assertThat(Lettering.fitted("hedge", REGULAR, 20, 500)).isEqualTo("hedge");
  }

  @Test
  void fitted_neverSplitsAPairOfSurrogates() {
    String trees = "🌳🌳🌳🌳🌳🌳🌳🌳";
    for (double room = 20; room < 200; room += 3) {
      String fitted = Lettering.fitted(trees, REGULAR, 20, room);
      assertThat(fitted.codePoints().noneMatch(c -> Character.getType(c) == Character.SURROGATE))
          .isTrue();
    }
  }

  @Test
  void hebrew_isSetFromRightToLeft() {
    assertThat(Lettering.isRightToLeft("עץ (hedge)")).isTrue();
    assertThat(Lettering.isRightToLeft("hedge (עץ)")).isFalse();
    assertThat(Lettering.line("עץ", REGULAR, 20).isLeftToRight()).isFalse();
  }

  @Test
  void lettersOfNoTypeface_areNamed() {
    String unassignedPlane = new String(Character.toChars(0x10FFFD));
    assertThat(Lettering.undrawable("hedge " + unassignedPlane)).isEqualTo(unassignedPlane);
    assertThat(Lettering.undrawable("Hainbuche, charme, grab — gyertyán, ½ °")).isEmpty();
  }

  @Test
  void paragraph_breaksBetweenWordsAndShortensTheLastLine() {
    List<String> lines =
        Paragraph.lines(
            "the thinner of two leaders is drawn in over the root base",
            REGULAR,
            20,
            new Paragraph.Room(200, 2));
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).startsWith("the thinner").doesNotEndWith(" ");
    assertThat(lines.get(1)).endsWith("…");
    assertThat(lines)
        .allSatisfy(
            line -> assertThat(Lettering.width(line, REGULAR, 20)).isLessThanOrEqualTo(200));
  }

  @Test
  void paragraph_breaksAWordThatIsTooLong() {
    List<String> lines = Paragraph.lines("w".repeat(80), REGULAR, 20, new Paragraph.Room(200, 3));
    assertThat(lines).hasSize(3);
    assertThat(lines)
        .allSatisfy(
            line -> assertThat(Lettering.width(line, REGULAR, 20)).isLessThanOrEqualTo(200));
  }
}
