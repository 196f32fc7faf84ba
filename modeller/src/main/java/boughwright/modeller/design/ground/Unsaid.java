// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

/** What cannot be said of a root base, and why. */
public enum Unsaid {
  /** No root is in the file, or none comes out of the trunk. */
  NO_ROOTS,
  /** All roots go down under the trunk. */
  ONLY_TAP_ROOTS,
  /** One root or two: no plane. */
  TOO_FEW_ROOTS,
  /** All roots leave the trunk along one line: no plane. */
  ROOTS_ON_A_LINE,
  /** No container is given: nothing about what fits. */
  NO_CONTAINER,
  /** The trunk base does not stand inside the container. */
  CONTAINER_UNDER_TRUNK,
  /** The container is not weighed: where it tips is told of the tree alone. */
  NO_MASS,
  /** The mass given for tree, soil and container is less than the tree's own wood. */
  MASS_TOO_SMALL,
  /** Fewer than three places in the soil bear the tree: no edge to rock over. */
  NOTHING_BEARS
}
