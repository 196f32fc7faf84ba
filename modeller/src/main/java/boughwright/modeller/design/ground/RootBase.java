// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The root base at a planting angle: the roots that leave the trunk level with the eye, not those
 * that go down under it.
 *
 * @param trunk diameter of the trunk base over bark [m]
 * @param levels the roots that count, in file order, at least one
 * @param plane the plane that best fits their starts; empty where it cannot be told
 * @param off angle between that plane and the soil at the planting angle [rad]; empty with it
 * @param extent how wide it is
 */
public record RootBase(
    double trunk,
    List<RootLevel> levels,
    Optional<RootPlane> plane,
    Optional<Double> off,
    Extent extent) {

  /**
   * How wide a root base is.
   *
   * @param widest widest distance across, over what roots show above the soil [m]
   * @param seen the same, as wide as the viewer sees it [m]
   * @param gap widest angle between two neighbouring roots, seen from above [rad]
   */
  public record Extent(double widest, double seen, double gap) {}

  /** Roots lie level within this part of the trunk's diameter [1]. Common practice, no source. */
  public static final double LEVEL = 0.1;

  /** So many roots make a root base. Common practice, no source. */
  public static final int ENOUGH = 5;

  /** Spread of the root base over the trunk's diameter [1]. Common practice, no source. */
  public static final double SPREAD = 2;

  public RootBase {
    levels = List.copyOf(levels);
    Objects.requireNonNull(plane, "plane");
    Objects.requireNonNull(off, "off");
    Objects.requireNonNull(extent, "extent");
    if (!(trunk > 0) || levels.isEmpty() || plane.isPresent() != off.isPresent()) {
      throw new IllegalArgumentException("a root base has a trunk and roots");
    }
  }

  /** Height of the starts on average, each counted by its caliper [m]. */
  public double middle() {
    double sum = 0;
    double all = 0;
    for (RootLevel level : levels) {
      sum += level.root().caliper() * level.then().axis();
      all += level.root().caliper();
    }
    return sum / all;
  }

  /** The root whose start is farthest from the height of all on average. */
  public RootLevel farthest() {
    double middle = middle();
    return levels.stream()
        .max(Comparator.comparingDouble(level -> Math.abs(level.then().axis() - middle)))
        .orElseThrow();
  }

  /** How far the start of the farthest root is from the height of all on average, 0 or more [m]. */
  public double unevenness() {
    return Math.abs(farthest().then().axis() - middle());
  }

  /** How uneven the trade lets them be [m]. */
  public double tolerance() {
    return LEVEL * trunk;
  }

  /** True if all starts lie level as the trade asks; never for a single root. */
  public boolean isLevel() {
    return levels.size() > 1 && unevenness() <= tolerance();
  }

  /** The root whose start is deepest. */
  public RootLevel deepest() {
    return levels.stream()
        .min(Comparator.comparingDouble(level -> level.then().axis()))
        .orElseThrow();
  }

  /** Roots of which the start is, and was, in these states. */
  public List<RootLevel> changed(Level.State state) {
    return levels.stream()
        .filter(level -> level.then().state() == state && level.now().state() != state)
        .toList();
  }

  /** How much the soil must rise so that no start has air beneath; 0 if none has [m]. */
  public double raiseToCover() {
    return levels.stream().mapToDouble(level -> level.then().clearBy()).max().orElseThrow();
  }

  /** How much the soil must fall so that no start is buried; 0 if none is [m]. */
  public double lowerToShow() {
    return levels.stream().mapToDouble(level -> level.then().buriedBy()).max().orElseThrow();
  }
}
