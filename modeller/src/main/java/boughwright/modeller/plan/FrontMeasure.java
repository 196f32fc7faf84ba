// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

/** What is measured of a front and a planting angle, each by itself. */
public enum FrontMeasure {
  /** How much of the trunk's movement is seen. */
  TRUNK_MOVEMENT,
  /** How much of the trunk's taper is seen. */
  TAPER,
  /** How wide the root base looks. */
  ROOT_BASE_WIDTH,
  /** How much of the wounds is seen. */
  WOUNDS,
  /** How much wood points straight at the viewer. */
  BRANCHES_AT_VIEWER,
  /** Whether the apex leans toward the viewer or away. */
  APEX_LEAN,
  /** Whether left and right weigh the same. */
  BALANCE_SIDES,
  /** Whether the mass stands over the root base. */
  BALANCE_OVER_BASE,
  /** Whether there are branches at the back. */
  DEPTH,
  /** Where the first branch seen is. */
  FIRST_BRANCH,
  /** How much open space the outline holds. */
  NEGATIVE_SPACE,
  /** How far the trunk bulges at the viewer. */
  TRUNK_BULGE,
  /** How much of the deadwood is seen. */
  DEADWOOD
}
