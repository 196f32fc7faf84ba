// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import java.util.List;
import java.util.Objects;

/**
 * A rooted tree of rods, clamped at its base, inextensible and unshearable.
 *
 * @param base where the clamp is [m]
 * @param baseFrame turns section axes 1, 2, 3 of the clamp into space
 * @param spans every span after its parent
 * @param settledUnder dead loads under which the given shape is at rest; none when the shape is
 *     free of stress
 */
public record RodModel(
    Point3 base, Rotation baseFrame, List<RodSpan> spans, RodLoads settledUnder) {
  public RodModel {
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(baseFrame, "baseFrame");
    spans = List.copyOf(spans);
    if (!settledUnder.lines().isEmpty()) {
      throw new IllegalArgumentException("a shape settles under dead loads only");
    }
    if (spans.isEmpty()) {
      throw new IllegalArgumentException("a rod model has at least one span");
    }
    for (int i = 0; i < spans.size(); i++) {
      int parent = spans.get(i).parent();
      if (parent < RodSpan.CLAMP || parent >= i) {
        throw new IllegalArgumentException("span " + i + " comes before its parent " + parent);
      }
    }
  }

  /** A model whose given shape has settled under weights. */
  public RodModel(
      Point3 base, Rotation baseFrame, List<RodSpan> spans, List<SpanWeight> settledUnder) {
    this(base, baseFrame, spans, new RodLoads(List.of(), List.of(), settledUnder, List.of()));
  }

  /** A model whose given shape is free of stress. */
  public static RodModel of(Point3 base, Rotation baseFrame, List<RodSpan> spans) {
    return new RodModel(base, baseFrame, spans, RodLoads.NONE);
  }
}
