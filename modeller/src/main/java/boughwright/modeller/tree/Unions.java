// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** Where a branch starts to bend. */
public enum Unions {
  /** At the surface of its parent; the part inside the parent is rigid. */
  SURFACE,
  /** At the axis of its parent, as in plain rod theory. */
  AXIS
}
