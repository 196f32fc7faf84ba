// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.grow.GrowthCalendar;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.trial.Aging;
import java.util.List;

/**
 * What is taken for true of one tree in time.
 *
 * @param aging how its wood creeps and how stiff new wood is
 * @param ring new wood it lays on in a year, one side [m]
 * @param calendar when it does
 */
record Scenario(Aging aging, double ring, GrowthCalendar calendar) {
  /** Where all goes slowly, best guess, where all goes fast. */
  static List<Scenario> all(YearlyRing ring, GrowthCalendar calendar) {
    return List.of(
        new Scenario(Aging.LOW, ring.low(), calendar),
        new Scenario(Aging.MIDDLE, ring.middle(), calendar),
        new Scenario(Aging.HIGH, ring.high(), calendar));
  }

  /** New wood laid between two times [m]. */
  double grown(double from, double to) {
    return ring * (calendar.laidBy(to) - calendar.laidBy(from));
  }
}
