// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

/** How much time a picture may take. */
public enum Quality {
  /** As quick as can be, while something moves. */
  MOVING,
  /** Smooth edges and soft shadows, and what hides what is known. */
  STILL
}
