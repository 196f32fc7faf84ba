// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

/** How long wood takes to grow to a caliper. Bark is taken to keep its thickness. */
public final class Thickening {
  private Thickening() {}

  /**
   * From one caliper to another; no time where it is reached already.
   *
   * @param from caliper now [m]
   * @param to caliper wanted [m]
   */
  public static Years between(double from, double to, YearlyRing ring) {
    requireCaliper(from);
    requireCaliper(to);
    return byRing((to - from) / 2, ring);
  }

  /**
   * Until a shoot has a part of the caliper of the wood below it, where nothing else grows above.
   * What the shoot lays on in cross-section, the wood below lays on too (Pressler's law of stem
   * formation, 1865, from memory), so the rings of the thin shoot are the wider ones.
   *
   * @param shoot caliper of the shoot now, 0 for a bud [m]
   * @param below caliper of the wood below it now [m]
   * @param part the part wanted, less than 1 [1]
   * @param ring of the wood below
   */
  public static Years toPart(double shoot, double below, double part, YearlyRing ring) {
    requireCaliper(below);
    if (!(shoot >= 0 && Double.isFinite(shoot))) {
      throw new IllegalArgumentException("a shoot of caliper " + shoot);
    }
    if (!(part > 0 && part < 1)) {
      throw new IllegalArgumentException("a part of " + part + " of the caliper below");
    }
    if (shoot >= part * below) {
      return Years.NONE;
    }
    double then = Math.sqrt((below * below - shoot * shoot) / (1 - part * part));
    return byRing((then - below) / 2, ring);
  }

  private static Years byRing(double wood, YearlyRing ring) {
    return wood <= 0
        ? Years.NONE
        : new Years(wood / ring.high(), wood / ring.middle(), wood / ring.low());
  }

  private static void requireCaliper(double caliper) {
    if (!(caliper > 0 && Double.isFinite(caliper))) {
      throw new IllegalArgumentException("a caliper of " + caliper);
    }
  }
}
