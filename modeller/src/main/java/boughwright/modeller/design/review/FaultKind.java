// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

/** What can be amiss in the structure of a tree. */
public enum FaultKind {
  /** Two branches of one height on opposite sides of the trunk. */
  BAR_BRANCHES,
  /** Three or more branches from one height. */
  WHORL,
  /** The trunk is thicker where several branches leave it than below and above. */
  SWELLING,
  /** Two shoots touch, or nearly, at an angle. */
  CROSSING,
  /** Two branches run side by side the same way. */
  PARALLEL,
  /** A branch leaves the trunk on the inside of a curve. */
  INSIDE_CURVE,
  /** A stretch of trunk without movement. */
  STRAIGHT,
  /** Wood that is thicker further out. */
  REVERSE_TAPER,
  /** A branch too thick for what it sits on. */
  TOO_THICK,
  /** A branch too near the root base. */
  TOO_LOW,
  /** A second leader beside the first. */
  COMPETING_LEADER,
  /** A long stretch without branch or node. */
  BARE_STRETCH,
  /** A branch that points at the viewer low on the trunk. */
  BRANCH_AT_VIEWER,
  /** The apex leans away from the viewer. */
  APEX_AWAY
}
