// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** Which half of the year is the growing season. */
public enum Hemisphere {
  NORTH,
  SOUTH
}
