// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/** A way in which a bend can go wrong in the wood. */
public enum FailureMode {
  /** The inside wrinkles: compression beyond the slight yielding of every working bend. */
  KINK,
  /** The outside cracks. */
  CRACK,
  /** A curved limb that is straightened splits along its middle. */
  SPLIT,
  /** Fibres slide along each other. */
  SHEAR,
  /** The union tears, or gives at its weakness. */
  TEAR
}
