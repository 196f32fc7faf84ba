// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {

  /** Counted by hand; kitten to sitting is the textbook pair (Levenshtein 1966, from memory). */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "hornbeam, hornbeam, 0",
    "hornbeam, hornbaem, 1",
    "larch, lach, 1",
    "larch, larrch, 1",
    "larch, lurch, 1",
    "'', oak, 3",
    "oak, '', 3"
  })
  void edits_countLetters(String a, String b, int edits) {
    assertThat(NearNames.edits(a, b)).isEqualTo(edits);
    assertThat(NearNames.edits(b, a)).isEqualTo(edits);
  }

  @Test
  void closestName_comesFirst_farOnesNotAtAll() {
    assertThat(NearNames.of("Lrach", List.of("birch", "larch", "beech", "willow")))
        .startsWith("larch")
        .doesNotContain("willow");
  }

  @Test
  void veryLongText_hasNoNearName() {
    assertThat(NearNames.of("x".repeat(5_000), List.of("x".repeat(5_000)))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.058, 58 mm",
    "0.0125, 12.5 mm",
    "1e6, 1000000000 mm",
    "0.000012345678, 0.012346 mm",
    "1e-15, 1E-12 mm",
    "-0.02, -20 mm",
    "0, 0 mm"
  })
  void millimetres_areShown_withFiveDigits(double metres, String words) {
    assertThat(Amount.millimetres(metres)).isEqualTo(words);
  }
}
