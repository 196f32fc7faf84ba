// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known better than the species table about the wood of some segments.
 *
 * @param pattern a segment id, or the beginning of ids followed by {@code *}
 * @param moe true modulus of elasticity, used as it is [Pa]
 * @param moeSpread coefficient of variation of that modulus; empty when nobody gave it [1]
 * @param shearModulus modulus of rigidity G [Pa]
 * @param response how the wood answers strain
 * @param source where the values come from, in the person's words
 * @param extras fields of the file that this version does not know
 */
public record WoodOverride(
    String pattern,
    OptionalDouble moe,
    OptionalDouble moeSpread,
    OptionalDouble shearModulus,
    Optional<Response> response,
    Optional<String> source,
    Map<String, Object> extras) {
  public WoodOverride {
    Objects.requireNonNull(pattern, "pattern");
    requirePositive(moe, "moe");
    requirePositive(moeSpread, "moeSpread");
    requirePositive(shearModulus, "shearModulus");
    extras = Extras.copyOf(extras);
  }

  /** Values whose spread nobody gave. */
  public WoodOverride(
      String pattern,
      OptionalDouble moe,
      OptionalDouble shearModulus,
      Optional<Response> response,
      Optional<String> source,
      Map<String, Object> extras) {
    this(pattern, moe, OptionalDouble.empty(), shearModulus, response, source, extras);
  }

  private static void requirePositive(OptionalDouble value, String name) {
    if (value.isPresent()
        && (!(value.getAsDouble() > 0) || Double.isInfinite(value.getAsDouble()))) {
      throw new IllegalArgumentException(
          name + " is " + value.getAsDouble() + ", a positive number is expected");
    }
  }

  public boolean matches(String segmentId) {
    return pattern.endsWith("*")
        ? segmentId.startsWith(pattern.substring(0, pattern.length() - 1))
        : segmentId.equals(pattern);
  }

  /** How closely the pattern names a segment: a whole id beats every beginning of one. */
  int closeness() {
    return pattern.endsWith("*") ? pattern.length() - 1 : Integer.MAX_VALUE;
  }
}
