// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.List;

/**
 * Meshes that are drawn alike.
 *
 * @param role how they are drawn
 * @param meshes closed meshes
 */
public record Body(Role role, List<Mesh> meshes) {
  /** How a body is drawn. */
  public enum Role {
    /** Wood that stands, solid. */
    SOLID,
    /** The measured pose beside a bent one, translucent. */
    GHOST,
    /** A pose on the way to the bend, translucent; one body for each, in order of time. */
    STAGE,
    /** Wood that stands but is not looked at now, faint. */
    DIMMED,
    /** Wood that the plan cuts away, translucent and hatched. */
    REMOVED,
    /** Lines, coils, pads, anchors, weights, solid. */
    FITTING,
    /** Pads of leaves that a person gave, matt, and so that the wood is seen through them. */
    FOLIAGE,
    /** Pads of leaves that are only a guess, fainter. */
    GUESSED_FOLIAGE,
    /** What the tree stands in, clear. */
    CONTAINER
  }

  public Body {
    meshes = List.copyOf(meshes);
  }
}
