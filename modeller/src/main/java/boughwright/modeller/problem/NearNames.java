// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Known names close to one a person typed, for the remedy of a fault. */
public final class NearNames {
  private static final int MOST_SHOWN = 3;
  private static final int LONGEST_TYPED = 100;

  private NearNames() {}

  private record Near(String name, int edits) {}

  /**
   * The known names that differ from a typed one by few letters, the closest first, at most three.
   * One edit (a letter added, dropped, changed or swapped with its neighbour) is allowed for every
   * three letters typed; upper and lower case count as the same.
   */
  public static List<String> of(String typed, Collection<String> known) {
    if (typed.length() > LONGEST_TYPED) {
      return List.of();
    }
    int allowed = Math.max(1, typed.length() / 3);
    String low = typed.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(name -> Math.abs(name.length() - typed.length()) <= allowed)
        .map(name -> new Near(name, edits(low, name.toLowerCase(Locale.ROOT))))
        .filter(near -> near.edits <= allowed)
        .sorted(Comparator.comparingInt(Near::edits).thenComparing(Near::name))
        .map(Near::name)
        .distinct()
        .limit(MOST_SHOWN)
        .toList();
  }

  /** Number of edits between two words (Damerau and Levenshtein, neighbours swapped once). */
  static int edits(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, i, j, cost);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int i, int j, int[][] cost) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
    best = Math.min(best, cost[i - 1][j - 1] + change);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }
}
