// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** What a segment is to the tree. */
public enum Kind {
  TRUNK,
  BRANCH,
  ROOT,
  /** Kept only to thicken the wood below it or to heal a wound, and removed later. */
  SACRIFICE,
  DEADWOOD
}
