// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.physics.rod.Measured;
import boughwright.physics.wood.Creep;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Trees that are held for a time. */
class HeldTreeTest {
  private static final Measured MEASURED = new Measured(HeldTreeTest.class);
  private static final double DAY = 86_400;

  /** A light pull, so that no fibre flows. */
  private static final String BY_LENGTH =
      "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\": [150, 60, -150],"
          + " \"shorten_mm\": 10}]";

  private static final String FAR =
      "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\": [150, 60, -150],"
          + " \"shorten_mm\": 40}]";

  private static final String WEIGHT =
      "\"hung_weights\": [{\"segment\": \"t\", \"along\": 1, \"mass_kg\": 0.15}]";

  /** Solver and the torsion that is carried apart. */
  private static final double UNIFORM = 2e-3;

  /** What cutting a wait again may still change. */
  private static final double WALKED = 1e-2;

  @TempDir Path folder;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private HeldTree tree(String proposal) {
    TreeText text =
        new TreeText("{\"name\": \"test wood\", \"moe_GPa\": 6, \"response\": \"fibre\"}")
            .segment(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [300, 0, 0], \"caliper_start_mm\": 11, \"caliper_end_mm\": 8")
            .proposal(proposal);
    return HeldTree.of(text.request(folder), HeldTree.Grip.ALL);
  }

  private static double tension(HeldTree tree) {
    return tree.result().lines().get(0).tension();
  }

  private static Point3 tip(HeldTree tree) {
    return tree.result().segments().get(0).end();
  }

  @Test
  void heldByLength_relaxesAllOverAlike_andStaysWhereItIs() {
    HeldTree first = tree(BY_LENGTH);
    for (double days : new double[] {0.1, 7, 100}) {
      HeldTree held = first.waited(days * DAY, 0);
      double left = tension(held) / tension(first);
      MEASURED.check("by length, pull", left - Creep.MIDDLE.left(days * DAY), UNIFORM);
      MEASURED.check("by length, place / L", tip(held).distance(tip(first)) / 0.3, 1e-4);
    }
  }

  /** One wait, or the same in three with a look between. */
  @Test
  void waitInParts_isTheSameWait() {
    HeldTree bent = tree(FAR);
    HeldTree once = bent.waited(40 * DAY, 0.0004);
    HeldTree thrice =
        bent.waited(10 * DAY, 0.0001).waited(10 * DAY, 0.0001).waited(20 * DAY, 0.0002);
    MEASURED.check("wait in parts, pull", tension(thrice) / tension(once) - 1, WALKED);
    double way = tip(bent).distance(new Point3(0.3, 0, 0));
    MEASURED.check(
        "wait in parts, freed", tip(thrice.freed()).distance(tip(once.freed())) / way, WALKED);
  }

  /** Creep of a light weight: 1 + 0.08 for each element's share + 0.10 of what sets. */
  @Test
  void weight_sinksAsItsWoodCreeps_andComesBackButForWhatSet() {
    HeldTree first = tree(WEIGHT);
    double sag = -tip(first).z();
    double days = 30;
    double crept = 0;
    for (double minutes : new double[] {10, 100, 1e3, 1e4, 1e5}) {
      crept += 0.08 * (1 - Math.exp(-days * 1440 / minutes));
    }
    double set = 0.10;
    HeldTree held = first.waited(days * DAY, 0);
    MEASURED.check("weight, creep", -tip(held).z() / sag - 1 - crept - set, WALKED);
    MEASURED.check("weight, what set", -tip(held.freed()).z() / sag - set, WALKED);
  }

  /** Let go and left alone, it walks to where {@code freed} puts it at once. */
  @Test
  void letGo_creepsBackToItsRest() {
    HeldTree held = tree(FAR).waited(20 * DAY, 0);
    double way = tip(held).distance(new Point3(0.3, 0, 0));
    HeldTree free = held.gripped(HeldTree.Grip.NOTHING);
    HeldTree later = free.waited(3 * 365 * DAY, 0);
    assertThat(tip(free).distance(tip(later))).isGreaterThan(0.02 * way);
    MEASURED.check("let go, rest", tip(later).distance(tip(held.freed())) / way, WALKED);
  }

  @Test
  void newWood_holdsTheBend() {
    HeldTree bent = tree(FAR);
    double way = tip(bent).distance(new Point3(0.3, 0, 0));
    double bare = tip(bent.waited(100 * DAY, 0).freed()).distance(new Point3(0.3, 0, 0));
    double grown = tip(bent.waited(100 * DAY, 0.002).freed()).distance(new Point3(0.3, 0, 0));
    assertThat(bare).isLessThan(0.7 * way);
    assertThat(grown).isBetween(1.2 * bare, way);
  }
}
