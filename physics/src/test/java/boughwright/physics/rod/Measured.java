// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;

/**
 * Holds differences to their tolerances and remembers the largest of each kind. Run the tests with
 * {@code -Dboughwright.measured=true} to print them; docs/theory/rods.md shows them.
 */
public final class Measured {
  private final String name;
  private final Map<String, Double> largest = new TreeMap<>();

  /** Remembers for one test class. */
  public Measured(Class<?> test) {
    name = test.getSimpleName();
  }

  /** Fails when a difference is larger than allowed or not a number. */
  public void check(String kind, double difference, double allowed) {
    largest.merge(kind, Math.abs(difference), Math::max);
    assertThat(Math.abs(difference)).as(kind).isLessThanOrEqualTo(allowed);
  }

  /** Prints what was remembered, if asked to. */
  public void report() {
    if (Boolean.getBoolean("boughwright.measured")) {
      largest.forEach(
          (kind, difference) -> System.out.printf("%s: %s %.2e%n", name, kind, difference));
    }
  }
}
