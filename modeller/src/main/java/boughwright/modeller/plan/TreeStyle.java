// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

/** The style a tree is to have; it decides what of a front counts how much. */
public enum TreeStyle {
  UPRIGHT,
  SLANTING,
  CASCADE,
  BROOM,
  CLUMP,
  TWIN_TRUNK
}
