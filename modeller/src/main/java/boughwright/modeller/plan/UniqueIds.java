// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;

/** Guard of the records that hold parts by id. */
final class UniqueIds {
  private UniqueIds() {}

  static void require(Stream<String> ids, String what) {
    Set<String> seen = new HashSet<>();
    ids.forEach(
        id -> {
          if (!seen.add(id)) {
            throw new IllegalArgumentException("two of the kind " + what + " have the id " + id);
          }
        });
  }
}
