// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * What is missing or dead in a round section. Angles turn from section axis 1 to axis 2.
 *
 * @param radius radius of the wood under bark [m]
 * @param hollow radius of the hollow in the middle; 0 for none [m]
 * @param dead the dead face; {@link Face#NONE} for none
 * @param slot the slot; {@link Groove#NONE} for none
 */
public record SectionShape(double radius, double hollow, Face dead, Groove slot) {
  /** Part of the radius that is left at least between a hollow and the bark [1]. */
  public static final double THINNEST = 0.02;

  /**
   * A dead face: it carries stress like the rest, but dry wood is stronger when crushed and does
   * not flow.
   *
   * @param middle angle of its middle [rad]
   * @param width angle it takes up [rad]
   * @param depth depth from the surface of the wood [m]
   */
  public record Face(double middle, double width, double depth) {
    public static final Face NONE = new Face(0, 0, 0);

    boolean exists() {
      return width > 0 && depth > 0;
    }

    /** Whether an angle lies in it. */
    boolean covers(double angle) {
      double away = Math.abs(Math.IEEEremainder(angle - middle, 2 * Math.PI));
      return exists() && away <= width / 2;
    }
  }

  /**
   * A slot with parallel sides, whose wood is gone.
   *
   * @param middle angle of its middle [rad]
   * @param width width across [m]
   * @param depth depth from the surface of the wood [m]
   */
  public record Groove(double middle, double width, double depth) {
    public static final Groove NONE = new Groove(0, 0, 0);

    boolean exists() {
      return width > 0 && depth > 0;
    }
  }

  public SectionShape {
    if (!(radius > 0) || !(hollow >= 0) || hollow > (1 - THINNEST) * radius) {
      throw new IllegalArgumentException(
          "no wood is left round a hollow of radius " + hollow + " m in one of " + radius + " m");
    }
  }

  /** A whole disc. */
  static SectionShape disc(double radius) {
    return new SectionShape(radius, 0, Face.NONE, Groove.NONE);
  }

  /** True if nothing is missing or dead. */
  boolean isWhole() {
    return hollow == 0 && !dead.exists() && !slot.exists();
  }

  /** Whether a place of the section is in the slot. */
  boolean isCut(double p1, double p2) {
    if (!slot.exists()) {
      return false;
    }
    double cos = Math.cos(slot.middle());
    double sin = Math.sin(slot.middle());
    double up = p1 * cos + p2 * sin;
    double aside = p2 * cos - p1 * sin;
    return up > radius - slot.depth() && Math.abs(aside) < slot.width() / 2;
  }

  /** Whether a place of the section is dead. */
  boolean isDead(double p1, double p2) {
    return Math.hypot(p1, p2) > radius - dead.depth() && dead.covers(Math.atan2(p2, p1));
  }
}
