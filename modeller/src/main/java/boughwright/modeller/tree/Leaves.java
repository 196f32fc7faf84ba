// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** Whether a tree stands bare in winter. */
public enum Leaves {
  DECIDUOUS,
  EVERGREEN
}
