// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Limit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The list of limits on the page for users is the one the program has. */
class ReviewPageTest {
  private static final Pattern ROW =
      Pattern.compile("\\| `([a-z-]+)` \\| ([0-9.]+) \\| (.+) \\| (trade|ours|published) \\|");

  @Test
  void page_listsEveryLimitWithItsUsualValueAndOrigin() throws Exception {
    Matcher rows = ROW.matcher(Files.readString(Path.of("..", "docs", "user", "review.md")));
    Map<String, Double> values = new TreeMap<>();
    while (rows.find()) {
      values.put(rows.group(1), Double.parseDouble(rows.group(2)));
      Limit limit = LimitNames.named(rows.group(1)).orElseThrow();
      assertThat(rows.group(3)).as(rows.group(1)).isEqualTo(limit.note());
      assertThat(rows.group(4))
          .isEqualTo(
              switch (limit.origin()) {
                case TRADE -> "trade";
                case CHOSEN -> "ours";
                case PUBLISHED -> "published";
              });
    }
    assertThat(values.keySet()).containsExactlyInAnyOrderElementsOf(LimitNames.all());
    for (Limit limit : Limit.values()) {
      assertThat(values.get(LimitNames.option(limit)))
          .as(limit.name())
          .isCloseTo(LimitNames.shown(limit, limit.usual()), within(5e-4));
    }
  }
}
