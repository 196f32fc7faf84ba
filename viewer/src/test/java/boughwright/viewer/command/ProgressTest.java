// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private static final long LONGER_THAN_A_SECOND = 1500;

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private String shown(boolean watched, boolean json) throws InterruptedException {
    Console console = new Console(Ran.stream(err), Ran.stream(err), watched, false);
    try (Progress progress = Progress.of(console, json)) {
      progress.now("Trying plan \u202Ea");
      TimeUnit.MILLISECONDS.sleep(LONGER_THAN_A_SECOND);
    }
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void longWork_isNamed_andTakenAway() throws InterruptedException {
    assertThat(shown(true, false)).contains("\rTrying plan <U+202E>a, 1 s").endsWith(" \r");
  }

  @Test
  void partDone_isSaid_andForgottenWithTheNextWork() throws InterruptedException {
    Console console = new Console(Ran.stream(err), Ran.stream(err), true, false);
    try (Progress progress = Progress.of(console, false)) {
      progress.now("Drawing 10000 times");
      progress.part(0.43);
      TimeUnit.MILLISECONDS.sleep(LONGER_THAN_A_SECOND);
      progress.now("Judging");
      TimeUnit.MILLISECONDS.sleep(LONGER_THAN_A_SECOND);
    }
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("\rDrawing 10000 times, 43 %, 1 s")
        .containsPattern("\rJudging, [0-9]+ s");
  }

  @Test
  void nobodyWatching_isToldNothing() throws InterruptedException {
    assertThat(shown(false, false)).isEmpty();
  }

  @Test
  void programs_areToldNothing() throws InterruptedException {
    assertThat(shown(true, true)).isEmpty();
  }

  @Test
  void shortWork_isNotNamed() {
    Console console = new Console(Ran.stream(err), Ran.stream(err), true, false);
    try (Progress progress = Progress.of(console, false)) {
      progress.now("Quick");
    }
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
  }
}
