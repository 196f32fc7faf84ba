// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.ReachRequest;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What lines may be tied to, as {@code --anchors} says it. */
final class AnchorOption {
  private AnchorOption() {}

  /** The sorts that are named, all where nothing is; what is none is noted as a fault. */
  static Set<AnchorSort> read(String words, Faults faults) {
    if (words == null) {
      return ReachRequest.Wishes.USUAL.anchors();
    }
    Set<AnchorSort> sorts = EnumSet.noneOf(AnchorSort.class);
    for (String word : words.strip().split("\\s*,\\s*", -1)) {
      Optional<AnchorSort> sort =
          Arrays.stream(AnchorSort.values())
              .filter(one -> one.word().equals(word.toLowerCase(Locale.ROOT)))
              .findFirst();
      sort.ifPresent(sorts::add);
      if (sort.isEmpty()) {
        faults.add(
            "--anchors",
            "unknown-anchor",
            UsageFaults.quoted(word) + " is nothing to tie a line to",
            "Choose from "
                + Arrays.stream(AnchorSort.values())
                    .map(AnchorSort::word)
                    .collect(Collectors.joining(",")));
      }
    }
    return sorts;
  }
}
