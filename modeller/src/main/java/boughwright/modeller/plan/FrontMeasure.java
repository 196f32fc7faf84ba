// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

/**
 * What is measured of a front and a planting angle, each by itself.
 *
 * <p>All are free of the size of the tree. Areas seen are projected square to the line of sight,
 * less what other wood or foliage hides, and given over the trunk's profile: the area of the trunk
 * line laid flat, its calipers times its length.
 */
public enum FrontMeasure {
  /**
   * How much of the trunk's movement is seen: how far the trunk line is seen beside its straight
   * chord from base to apex, root mean square over the parts not hidden, over the length of the
   * line; 0 or more [1].
   */
  TRUNK_MOVEMENT,
  /**
   * How much of the trunk's taper is seen: the caliper lost from base to apex where the trunk is
   * neither hidden nor foreshortened, over the caliper at the base; below 0 where the trunk is seen
   * to thicken upward [1].
   */
  TAPER,
  /**
   * How wide the root base looks: width of trunk base and roots above the soil line across the line
   * of sight, over the caliper at the base; 1 or more [1].
   */
  ROOT_BASE_WIDTH,
  /** How much of the wounds is seen: area seen over the trunk's profile; 0 or more [1]. */
  WOUNDS,
  /**
   * How much wood points straight at the viewer: the part of the branch wood below the crown that
   * does, plus the part of the trunk below the crown that branches hide; 0 to 2 [1].
   */
  BRANCHES_AT_VIEWER,
  /**
   * How far the straight line from base to apex leans out of the picture: above 0 toward the
   * viewer, below 0 away [rad].
   */
  APEX_LEAN,
  /**
   * Whether left and right weigh the same: moment of branches and foliage about the middle of the
   * trunk line, over the sum of all moments; above 0 to the viewer's right; -1 to 1 [1].
   */
  BALANCE_SIDES,
  /**
   * Whether the mass stands over the root base: level distance of the middle of mass of the wood
   * above the roots from the centre of the trunk base, over the size of the tree; 0 or more [1].
   */
  BALANCE_OVER_BASE,
  /**
   * Whether there are branches at the back: the part of branches and foliage farther from the
   * viewer than where they start on the trunk; 0 to 1 [1].
   */
  DEPTH,
  /** Where the first branch seen is: its height over the height of the tree [1]. */
  FIRST_BRANCH,
  /**
   * How much open space the outline holds: the part of the tightest outline without hollows round
   * the tree above its roots that neither wood nor foliage covers; 0 to 1 [1].
   */
  NEGATIVE_SPACE,
  /**
   * How far the trunk bulges at the viewer: how much nearer to the viewer the trunk line is than
   * its chord, mean over its length, over that length; above 0 at the viewer, below 0 away [1].
   */
  TRUNK_BULGE,
  /**
   * How much of the deadwood is seen: area seen over the trunk's profile; 0 or more, unsaid where
   * there is none [1].
   */
  DEADWOOD
}
