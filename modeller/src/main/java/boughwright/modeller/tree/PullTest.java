// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Direction3;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A pull test: known forces on a branch and how far a point moved under each.
 *
 * @param id name within the tree
 * @param segment segment pulled
 * @param along where on it, as a fraction of its length: there it is pulled and the movement read
 *     [1]
 * @param direction direction of the pull, and of the movement that was read, in the tree frame
 * @param readings what was read, at least one
 * @param doneOn day of the test
 * @param extras fields of the file that this version does not know
 */
public record PullTest(
    String id,
    String segment,
    double along,
    Direction3 direction,
    List<Reading> readings,
    Optional<LocalDate> doneOn,
    Map<String, Object> extras) {

  /**
   * One load.
   *
   * @param force pull [N]
   * @param moved how far the point moved along the pull [m]
   * @param baseMoved how far the start of the branch moved along the pull, with trunk and container
   *     [m]
   * @param forceError one standard deviation of the force, as a fraction of it [1]
   * @param movedError one standard deviation of the movement [m]
   * @param extras fields of the file that this version does not know
   */
  public record Reading(
      double force,
      double moved,
      double baseMoved,
      double forceError,
      double movedError,
      Map<String, Object> extras) {
    /** Of the force, where nobody gave it [1]: a luggage or spring scale. Assumption. */
    public static final double USUAL_FORCE_ERROR = 0.02;

    /** Of the movement, where nobody gave it [m]: a ruler held by hand. Assumption. */
    public static final double USUAL_MOVED_ERROR = 0.5e-3;

    public Reading {
      if (!(force > 0 && moved > 0) || Double.isInfinite(force) || Double.isInfinite(moved)) {
        throw new IllegalArgumentException("a reading has a force and a movement");
      }
      if (!(Math.abs(baseMoved) < moved)) {
        throw new IllegalArgumentException("the base moved as far as the point: nothing bent");
      }
      if (!(forceError >= 0 && movedError > 0)) {
        throw new IllegalArgumentException("a reading has an error");
      }
      extras = Extras.copyOf(extras);
    }

    /** A reading of which nothing more is said. */
    public Reading(
        double force, double moved, double baseMoved, double forceError, double movedError) {
      this(force, moved, baseMoved, forceError, movedError, Map.of());
    }
  }

  public PullTest {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(segment, "segment");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along + ", 0 to 1 is expected");
    }
    Objects.requireNonNull(direction, "direction");
    readings = List.copyOf(readings);
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("a pull test has at least one reading");
    }
    Objects.requireNonNull(doneOn, "doneOn");
    extras = Extras.copyOf(extras);
  }
}
