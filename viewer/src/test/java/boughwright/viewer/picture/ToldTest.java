// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.physics.trial.FailureMode;
import boughwright.viewer.scene.Mark;
import java.util.List;
import org.junit.jupiter.api.Test;

class ToldTest {
  private static final Mark KINK =
      new Mark.Failure(
          Point3.ORIGIN, new Vector3(0, 0, 1), FailureMode.KINK, List.of("kink", "where"));
  private static final Mark LINE = new Mark.Guy(Point3.ORIGIN, new Point3(0, 0, 1), List.of("g1"));
  private static final Mark DAY = new Mark.StageEnd(Point3.ORIGIN, List.of("day 14"));

  @Test
  void placeOfFailure_isNamedOnceInFull() {
    Told told = new Told(2);
    told.nextView();
    assertThat(told.isEnough(KINK, false)).isFalse();
    told.note(KINK, true, false);
    told.nextView();
    assertThat(told.isEnough(KINK, true)).as("here it is seen in full").isFalse();
    assertThat(told.isEnough(KINK, false)).isTrue();
    told.note(KINK, true, true);
    assertThat(told.isEnough(KINK, true)).isTrue();
  }

  @Test
  void mark_mayWaitForTheNextView_butNotAfterTheLast() {
    Told told = new Told(2);
    told.nextView();
    assertThat(told.isElsewhere(LINE)).isTrue();
    told.note(LINE, false, true);
    told.nextView();
    assertThat(told.isElsewhere(LINE)).isFalse();
    assertThat(told.missing()).isEqualTo(1);
    told.note(LINE, true, true);
    assertThat(told.missing()).isZero();
  }

  @Test
  void line_isNamedInEveryView_aDayOnlyOnce() {
    Told told = new Told(2);
    told.nextView();
    told.note(LINE, true, true);
    told.note(DAY, true, true);
    told.nextView();
    assertThat(told.isEnough(LINE, true)).isFalse();
    assertThat(told.isEnough(DAY, true)).isTrue();
  }

  /** The key tells of days as well, so one that finds no room is not missed. */
  @Test
  void day_thatFindsNoRoom_isNotMissing() {
    Told told = new Told(1);
    told.nextView();
    told.note(DAY, false, true);
    assertThat(told.missing()).isZero();
  }
}
