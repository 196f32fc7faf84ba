// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers of docs/user/verdicts.md, from both sides of each. */
class VerdictBoundsTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, TAKES_IT",
    "0.02, 0.1, 0.2, TAKES_IT",
    "0.0201, 0.1, 0.2, IN_STAGES",
    "0.02, 0.1001, 0.2, IN_STAGES",
    "0.02, 0.1, 0.2001, IN_STAGES",
    "0.0666, 0.5, 0.5, IN_STAGES",
    "0.0668, 0.5, 0.5, WITH_PROTECTION",
    "0.0666, 0.5001, 0.5, WITH_PROTECTION",
    "0.0666, 0.5, 0.5001, WITH_PROTECTION",
    "0.2, 1, 1, WITH_PROTECTION",
    "0.2001, 0.5, 0, NO",
    "1, 1, 1, NO"
  })
  void level_isTheBestThatTheRiskKeepsWithin(
      double breaking, double high, double kink, Verdict.Level level) {
    assertThat(VerdictBounds.level(new RiskSum(breaking, high, kink))).isEqualTo(level);
  }

  @Test
  void docs_nameTheSameNumbers() throws IOException {
    String page = Files.readString(Path.of("../docs/user/verdicts.md"));
    for (VerdictBounds bounds : VerdictBounds.LEVELS) {
      assertThat(page)
          .contains(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %s | %s |",
                  bounds.level().words(),
                  odds(bounds.breaking()),
                  odds(bounds.breakingHigh()),
                  odds(bounds.kink())));
    }
  }

  private static String odds(double most) {
    return most == 1 ? "any" : "1 in " + Math.round(1 / most);
  }

  @Test
  void waysOfBreaking_addUp() {
    Risk risk =
        new Risk(
            List.of(
                failure(FailureMode.KINK, 0.4, 0.6),
                failure(FailureMode.CRACK, 0.1, 0.2),
                failure(FailureMode.SHEAR, 0.05, 0.1),
                failure(FailureMode.TEAR, 0.02, 0.05)),
            Map.of(),
            0,
            List.of(),
            List.of(),
            1000,
            1);
    RiskSum sum = RiskSum.of(risk);
    assertThat(sum.breaking()).isCloseTo(1 - 0.9 * 0.95 * 0.98, within(1e-12));
    assertThat(sum.breakingHigh()).isCloseTo(1 - 0.8 * 0.9 * 0.95, within(1e-12));
    assertThat(sum.kink()).isEqualTo(0.4);
  }

  private static FailureRisk failure(FailureMode mode, double p, double high) {
    return new FailureRisk(
        mode, new Probability(p, 0, high), Optional.empty(), 1, new Range(1, 2, 3));
  }
}
