// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** What a point is that a line can be tied to, other than the tree itself. */
public enum AnchorKind {
  /** A screw in the wood of the container. */
  SCREW,
  /** The rim, a foot or a hole of the container. */
  RIM,
  /** A peg in the soil or the ground. */
  PEG,
  /** A board, frame or bench that the container stands on. */
  FRAME
}
