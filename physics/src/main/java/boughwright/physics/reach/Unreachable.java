// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.Objects;

/**
 * Why nothing brings the target nearer.
 *
 * @param kind short stable name for machines
 * @param found what is wrong
 * @param remedy the nearest thing that works
 */
public record Unreachable(String kind, String found, String remedy) {
  public Unreachable {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(remedy, "remedy");
  }
}
