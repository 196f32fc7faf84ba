// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import boughwright.modeller.plan.Document;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A tree that is sound but for the faults planted in it. What is sound is sound by a wide margin,
 * and what is planted is plainly there; between the two nothing is left in doubt. Common practice,
 * no source, but for the branch as thick as its trunk (aspect above 0.70, Dahle et al.).
 *
 * @param seed the seed it is grown from
 * @param document the tree, with one plan that names the front
 * @param faults what was planted
 */
public record PlantedFaults(long seed, Document document, List<PlantedFault> faults) {
  private static final int TREES = 100;

  /** No tree gets two kinds of one group, for they would be in each other's way. */
  private static final List<Set<PlantedKind>> GROUPS =
      List.of(
          EnumSet.of(
              PlantedKind.BAR_BRANCHES,
              PlantedKind.WHORL,
              PlantedKind.CROSSING,
              PlantedKind.PARALLEL),
          EnumSet.of(
              PlantedKind.INSIDE_OF_CURVE,
              PlantedKind.TOO_THICK,
              PlantedKind.LONG_INTERNODE,
              PlantedKind.AT_VIEWER),
          EnumSet.of(
              PlantedKind.STRAIGHT,
              PlantedKind.REVERSE_TAPER,
              PlantedKind.TOO_LOW,
              PlantedKind.COMPETING_LEADERS));

  public PlantedFaults {
    faults = List.copyOf(faults);
  }

  /** A hundred trees with three faults each, every kind in twenty-five of them. */
  public static List<PlantedFaults> hundred() {
    Random random = new Random(20260406);
    List<EnumSet<PlantedKind>> kinds = new ArrayList<>();
    for (int i = 0; i < TREES; i++) {
      kinds.add(EnumSet.noneOf(PlantedKind.class));
    }
    for (Set<PlantedKind> group : GROUPS) {
      List<PlantedKind> deck = new ArrayList<>();
      for (int i = 0; i < TREES / group.size(); i++) {
        deck.addAll(group);
      }
      Collections.shuffle(deck, random);
      for (int i = 0; i < TREES; i++) {
        kinds.get(i).add(deck.get(i));
      }
    }
    return IntStream.range(0, TREES).mapToObj(i -> grown(i + 1L, kinds.get(i))).toList();
  }

  /** A tree without any fault. */
  public static PlantedFaults sound(long seed) {
    return grown(seed, EnumSet.noneOf(PlantedKind.class));
  }

  /** A tree with faults of some kinds, not two of one group. */
  public static PlantedFaults grown(long seed, Set<PlantedKind> kinds) {
    return new FaultyTree(seed, kinds).grow();
  }
}
