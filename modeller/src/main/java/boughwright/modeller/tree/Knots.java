// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** How many knots and stubs of side branches a person sees on a segment. */
public enum Knots {
  NONE,
  SOME,
  MANY
}
