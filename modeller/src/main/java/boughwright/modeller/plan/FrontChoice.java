// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a person said about the fronts of a tree while they had not chosen yet.
 *
 * @param wishes by what the fronts are judged
 * @param marked the fronts to come back to, in the order they were marked
 */
public record FrontChoice(FrontWishes wishes, List<MarkedFront> marked) {
  /** Nothing is said. */
  public static final FrontChoice UNSAID = new FrontChoice(FrontWishes.UNSAID, List.of());

  /**
   * @throws IllegalArgumentException if two marked fronts share an id
   */
  public FrontChoice {
    Objects.requireNonNull(wishes, "wishes");
    marked = List.copyOf(marked);
    UniqueIds.require(marked.stream().map(MarkedFront::id), "marked front");
  }

  /** The same fronts judged by other wishes. */
  public FrontChoice withWishes(FrontWishes others) {
    return new FrontChoice(others, marked);
  }

  /** The same wishes with other fronts marked. */
  public FrontChoice withMarked(List<MarkedFront> others) {
    return new FrontChoice(wishes, others);
  }

  public Optional<MarkedFront> marked(String id) {
    return marked.stream().filter(front -> front.id().equals(id)).findFirst();
  }
}
