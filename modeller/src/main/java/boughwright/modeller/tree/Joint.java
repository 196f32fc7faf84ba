// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** How a segment joins its parent. */
public enum Joint {
  /** The same shoot goes on. */
  CONTINUES,
  /** A branch on a parent. */
  UNION
}
