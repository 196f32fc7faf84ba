// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.TreeStyle;
import boughwright.viewer.scene.FrontWords;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The style by which a tree is judged. */
final class StyleOption {
  @Option(
      names = "--style",
      paramLabel = "S",
      order = 3,
      description =
          "upright, slanting, cascade, broom, clump or twin-trunk. Without it the style in the"
              + " file, else upright.")
  private String style;

  /**
   * What was typed, else what the file wishes.
   *
   * @param saved what the file wishes, if it does
   */
  Optional<TreeStyle> read(Optional<TreeStyle> saved, Faults faults) {
    if (style == null) {
      return saved;
    }
    String word = style.strip().toLowerCase(Locale.ROOT).replace('_', '-');
    Optional<TreeStyle> typed =
        Arrays.stream(TreeStyle.values())
            .filter(one -> FrontWords.style(one).equals(word))
            .findFirst();
    if (typed.isEmpty()) {
      faults.add(
          UsageFaults.noneOf(
              "--style",
              "unknown-style",
              style,
              Arrays.stream(TreeStyle.values()).map(FrontWords::style).toList()));
    }
    return typed;
  }
}
