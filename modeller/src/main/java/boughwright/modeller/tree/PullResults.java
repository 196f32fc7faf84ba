// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What pull tests gave, as values under {@code wood}: how they are told from values a person gave,
 * taken out again, and written without losing anything that was there.
 */
public final class PullResults {
  private static final String ONE = "pull test ";
  private static final String SEVERAL = "pull tests ";
  private static final String BEFORE = "; before: ";

  private PullResults() {}

  /**
   * A modulus that pull tests gave.
   *
   * @param segments ids of the segments of the limb
   * @param moe median modulus [Pa]
   * @param spread coefficient of variation [1]
   * @param tests the tests on that limb, at least one
   */
  public record Result(List<String> segments, double moe, double spread, List<PullTest> tests) {
    public Result {
      segments = List.copyOf(segments);
      tests = List.copyOf(tests);
      if (tests.isEmpty()) {
        throw new IllegalArgumentException("a result comes from a test");
      }
    }

    /** Where the modulus comes from: ids of the tests, and the day of the last. */
    public String source() {
      String ids = tests.stream().map(PullTest::id).collect(Collectors.joining(", "));
      return (tests.size() == 1 ? ONE : SEVERAL)
          + ids
          + tests.stream()
              .flatMap(test -> test.doneOn().stream())
              .max(LocalDate::compareTo)
              .map(day -> " " + day)
              .orElse("");
    }
  }

  /** True if a modulus came from one of a tree's own pull tests, and not from a person's hand. */
  public static boolean isResult(WoodOverride override, List<PullTest> tests) {
    String source = override.source().orElse("");
    return override.moe().isPresent()
        && tests.stream()
            .anyMatch(test -> names(source, ONE, test.id()) || names(source, SEVERAL, test.id()));
  }

  private static boolean names(String source, String words, String id) {
    String start = words + id;
    return source.startsWith(start)
        && (source.length() == start.length() || " ,;".indexOf(source.charAt(start.length())) >= 0);
  }

  /** The tree as it was before its pull tests told anything; the tests stay. */
  public static Tree without(Tree tree) {
    List<WoodOverride> kept = new ArrayList<>();
    for (WoodOverride override : tree.overrides()) {
      if (!isResult(override, tree.pullTests())) {
        kept.add(override);
      } else if (override.shearModulus().isPresent() || override.response().isPresent()) {
        kept.add(withoutMoe(override.pattern(), override));
      }
    }
    return tree.withOverrides(kept);
  }

  /** The tree with no modulus said for some segments but the species'. */
  public static Tree released(Tree tree, List<String> segments) {
    List<WoodOverride> all = new ArrayList<>(tree.overrides());
    for (String id : segments) {
      Optional<WoodOverride> now = tree.overrideFor(id).filter(one -> one.moe().isPresent());
      now.ifPresent(one -> put(all, withoutMoe(id, one)));
    }
    return tree.withOverrides(all);
  }

  private static WoodOverride withoutMoe(String pattern, WoodOverride from) {
    return new WoodOverride(
        pattern,
        OptionalDouble.empty(),
        from.shearModulus(),
        from.response(),
        Optional.empty(),
        from.extras());
  }

  /** Moduli that a person gave and that count for some segments now, each once. */
  public static List<WoodOverride> byHand(Tree tree, List<String> segments) {
    return segments.stream()
        .flatMap(id -> tree.overrideFor(id).stream())
        .filter(one -> one.moe().isPresent() && !isResult(one, tree.pullTests()))
        .distinct()
        .toList();
  }

  /**
   * The tree with a result written for every segment of its limb. What else was said of a segment
   * stays; a modulus given by hand is told in the source.
   */
  public static Tree with(Tree tree, Result result) {
    List<WoodOverride> all = new ArrayList<>(tree.overrides());
    for (String id : result.segments()) {
      Optional<WoodOverride> now = tree.overrideFor(id);
      Map<String, Object> extras =
          now.filter(one -> one.pattern().equals(id)).map(WoodOverride::extras).orElse(Map.of());
      put(
          all,
          new WoodOverride(
              id,
              OptionalDouble.of(result.moe()),
              OptionalDouble.of(result.spread()),
              now.map(WoodOverride::shearModulus).orElse(OptionalDouble.empty()),
              now.flatMap(WoodOverride::response),
              Optional.of(result.source() + now.map(one -> before(tree, one)).orElse("")),
              extras));
    }
    return tree.withOverrides(all);
  }

  private static void put(List<WoodOverride> all, WoodOverride one) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).pattern().equals(one.pattern())) {
        all.set(i, one);
        return;
      }
    }
    all.add(one);
  }

  /** What a person had said, kept from result to result. */
  private static String before(Tree tree, WoodOverride old) {
    String source = old.source().orElse("");
    if (isResult(old, tree.pullTests())) {
      int at = source.indexOf(BEFORE);
      return at < 0 ? "" : source.substring(at);
    }
    List<String> said = new ArrayList<>();
    old.moe().ifPresent(moe -> said.add(plain(moe / 1e9) + " GPa"));
    old.moeSpread().ifPresent(spread -> said.add("spread " + plain(spread)));
    if (!source.isBlank()) {
      said.add(source);
    }
    return said.isEmpty() ? "" : BEFORE + String.join(", ", said);
  }

  private static String plain(double value) {
    return new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString();
  }
}
