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
   * Until a shoot has a part of the caliper of the wood below it. That wood lays on the same ring,
   * so it runs ahead, and the shoot takes longer than to its caliper of today.
   *
   * @param shoot caliper of the shoot now [m]
   * @param below caliper of the wood below it now [m]
   * @param part the part wanted, less than 1 [1]
   */
  public static Years toPart(double shoot, double below, double part, YearlyRing ring) {
    requireCaliper(shoot);
    requireCaliper(below);
    if (!(part > 0 && part < 1)) {
      throw new IllegalArgumentException("a part of " + part + " of the caliper below");
    }
    return byRing((part * below - shoot) / (2 * (1 - part)), ring);
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
