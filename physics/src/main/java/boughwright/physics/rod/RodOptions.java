// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * How a rod is solved.
 *
 * @param route how the pose is sought
 * @param positionError error of any point aimed at, as a fraction of the longest loaded path [1]
 * @param tensionError relative error of any tension aimed at [1]
 * @param strainError error of the added curvature aimed at, relative to its peak [1]
 * @param mostHalvings how often elements may be halved to reach that
 * @param doubt how much is done before a pose is said not to hold
 */
public record RodOptions(
    Route route,
    double positionError,
    double tensionError,
    double strainError,
    int mostHalvings,
    Doubt doubt) {

  /** How the pose is sought. */
  public enum Route {
    /** Load by load, so that a jump on the way is seen. */
    FOLLOWED,
    /** Straight down in energy from the rest shape; lines by length are followed all the same. */
    DIRECT
  }

  /** How much is done before a pose is said not to hold. */
  public enum Doubt {
    /** Three meshes in a row must fail, and the load that held is found closely. */
    THOROUGH(3, 1e-4),
    /** The first mesh that fails decides; for many draws, of which each counts little. */
    QUICK(1, 0.03);

    final int meshes;
    final double shortestStep;

    Doubt(int meshes, double shortestStep) {
      this.meshes = meshes;
      this.shortestStep = shortestStep;
    }
  }

  public static final RodOptions DEFAULT =
      new RodOptions(Route.FOLLOWED, 3e-6, 1e-5, 1e-3, 6, Doubt.THOROUGH);

  public RodOptions withRoute(Route other) {
    return new RodOptions(other, positionError, tensionError, strainError, mostHalvings, doubt);
  }

  public RodOptions {
    if (!(positionError > 0 && tensionError > 0 && strainError > 0) || mostHalvings < 1) {
      throw new IllegalArgumentException("errors are positive and elements halved at least once");
    }
  }
}
