// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** How the grain runs in a segment, as the bark shows it. */
public enum Grain {
  STRAIGHT,
  /** At a slant to the segment, or spiralling round it. */
  SLOPING
}
