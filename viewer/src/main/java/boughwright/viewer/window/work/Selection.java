// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.plan.Document;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The segments a person has picked, in the order of picking.
 *
 * @param segments ids, each once
 */
public record Selection(List<String> segments) {
  public static final Selection NONE = new Selection(List.of());

  public Selection {
    segments = List.copyOf(new LinkedHashSet<>(segments));
  }

  public static Selection of(String segment) {
    return new Selection(List.of(segment));
  }

  public boolean has(String segment) {
    return segments.contains(segment);
  }

  /** The one picked last. */
  public Optional<String> last() {
    return segments.isEmpty() ? Optional.empty() : Optional.of(segments.get(segments.size() - 1));
  }

  /** What of it a document still has. */
  Selection within(Document document) {
    Set<String> there =
        document.tree().segments().stream().map(s -> s.id()).collect(Collectors.toSet());
    return new Selection(segments.stream().filter(there::contains).toList());
  }
}
