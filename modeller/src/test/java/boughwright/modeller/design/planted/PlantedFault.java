// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import java.util.List;

/**
 * A fault that was planted.
 *
 * @param kind what it is
 * @param segments ids of the segments it concerns: whoever finds the fault names one of them
 */
public record PlantedFault(PlantedKind kind, List<String> segments) {
  public PlantedFault {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a fault is somewhere");
    }
  }
}
