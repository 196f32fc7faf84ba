// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

/** What a measure is a measure of. */
public enum Quantity {
  /** A share or a ratio [1]. */
  RATIO,
  /** An angle [rad]. */
  ANGLE,
  /** A length [m]. */
  LENGTH,
  /** A number of things. */
  COUNT
}
