// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

/** The faults of structure that {@link PlantedFaults} plants, as the trade tells them. */
public enum PlantedKind {
  /** Two branches of the trunk that leave it at one height to opposite sides, like a bar. */
  BAR_BRANCHES,
  /** Three branches that leave the trunk at one height, all round. */
  WHORL,
  /** Two branches of which one grows across the other and touches it. */
  CROSSING,
  /** Two branches of the trunk close above one another that run the same way all along. */
  PARALLEL,
  /** A branch that leaves the trunk on the hollow side of a clear bend. */
  INSIDE_OF_CURVE,
  /** A long stretch of trunk that does not move. */
  STRAIGHT,
  /** A piece of trunk clearly thicker than the trunk below it. */
  REVERSE_TAPER,
  /** A level branch well up the trunk that is nearly as thick as the trunk where it leaves. */
  TOO_THICK,
  /** A thin branch near the soil, at the back or side. */
  TOO_LOW,
  /** A second leader, recorded as trunk, upright, as tall and nearly as thick as the first. */
  COMPETING_LEADERS,
  /** A branch bare over many times its caliper before its first side shoot, though it moves. */
  LONG_INTERNODE,
  /** The lowest branch of the trunk, and a strong one, points straight at the plan's viewer. */
  AT_VIEWER
}
