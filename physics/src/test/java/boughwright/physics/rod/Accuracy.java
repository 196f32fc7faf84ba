// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** What is asked of the solver at its default settings. */
final class Accuracy {
  /** Position, as a fraction of the length of the limb. */
  static final double POSITION = 1e-4;

  /** Tension, relative. */
  static final double TENSION = 2e-3;

  /**
   * Bending strain, relative to its largest; also how far the true strain at the place reported.
   */
  static final double STRAIN = 5e-3;

  /** Direction [rad] and moment, relative: no worse than strain. */
  static final double DIRECTION = 1e-3;

  static final double MOMENT = 2e-3;

  /** Shooting against the printed tables, as a fraction of the length: digits printed there. */
  static final double PRINTED = 1e-7;

  private Accuracy() {}
}
