// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.design.planted.PlantedFaults;
import boughwright.modeller.design.planted.PlantedKind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Faults planted by a generator that shares no code and no number with the review: three in each of
 * a hundred trees. The table of the page on theory is held to what is counted here.
 */
class PlantedReviewTest {
  /** Share of planted faults that must be found, and of those found that may be wrong. */
  private static final double FOUND = 0.98;

  private static final double WRONG = 0.02;

  private static final Path PAGE = Path.of("..", "docs", "theory", "review.md");
  private static final Pattern ROW =
      Pattern.compile("\\| ([a-z_]+) \\| ([0-9]+) \\| ([0-9]+) \\| ([0-9]+) \\|");

  private static final PlantedReview HUNDRED = new PlantedReview();

  @BeforeAll
  static void review() {
    PlantedFaults.hundred().forEach(HUNDRED::add);
  }

  @Test
  void plantedFaults_areFound_andHardlyAnyOther() {
    assertThat(HUNDRED.planted()).isEqualTo(300);
    assertThat((double) HUNDRED.found() / HUNDRED.planted())
        .as(String.join("\n", HUNDRED.notes()))
        .isGreaterThanOrEqualTo(FOUND);
    assertThat((double) HUNDRED.wrong() / (HUNDRED.found() + HUNDRED.wrong()))
        .as(String.join("\n", HUNDRED.notes()))
        .isLessThanOrEqualTo(WRONG);
  }

  @Test
  void soundTrees_haveHardlyAnyFault() {
    List<PlantedFaults> sound =
        LongStream.range(5000, 5060).mapToObj(PlantedFaults::sound).toList();
    assertThat(sound.stream().mapToInt(tree -> tree.document().tree().segments().size()).sum())
        .isGreaterThan(1000);
    List<String> wrong =
        sound.stream()
            .flatMap(
                tree ->
                    PlantedReview.review(tree.document()).faults().stream()
                        .map(fault -> tree.seed() + " " + fault.kind() + fault.measures()))
            .toList();
    assertThat(wrong).hasSizeLessThanOrEqualTo((int) (WRONG * sound.size()));
  }

  @Test
  void table_ofThePageOnTheory_tellsWhatWasCounted() throws Exception {
    Matcher rows = ROW.matcher(Files.readString(PAGE));
    int count = 0;
    while (rows.find()) {
      FaultKind kind = FaultKind.valueOf(rows.group(1).toUpperCase(Locale.ROOT));
      List<PlantedKind> planted =
          Arrays.stream(PlantedKind.values()).filter(p -> HUNDRED.name(p) == kind).toList();
      assertThat(planted).as(rows.group()).hasSize(1);
      assertThat(List.of(rows.group(2), rows.group(3), rows.group(4)))
          .as(rows.group())
          .containsExactly(
              String.valueOf(HUNDRED.planted(planted.get(0))),
              String.valueOf(HUNDRED.found(planted.get(0))),
              String.valueOf(HUNDRED.wrong(kind)));
      count++;
    }
    assertThat(count).isEqualTo(PlantedKind.values().length);
  }
}
