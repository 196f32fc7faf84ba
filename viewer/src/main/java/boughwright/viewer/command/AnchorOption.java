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
import picocli.CommandLine.Option;

/** What lines may be tied to. */
final class AnchorOption {
  @Option(
      names = "--anchors",
      paramLabel = "SORT,SORT",
      order = 12,
      description = {
        "What lines may be tied to: root, trunk, branch (stiff ones), point (the file's",
        "\"anchors\"), rim (of the file's \"container\"). All that is there by default."
      })
  private String anchors;

  /** The sorts that are named, all where nothing is; what is none is noted as a fault. */
  Set<AnchorSort> read(Faults faults) {
    if (anchors == null) {
      return ReachRequest.Wishes.USUAL.anchors();
    }
    Set<AnchorSort> sorts = EnumSet.noneOf(AnchorSort.class);
    for (String word : anchors.strip().split("\\s*,\\s*", -1)) {
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
