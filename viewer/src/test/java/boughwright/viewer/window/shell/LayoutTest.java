// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.Layout;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole window with all its modes, at every size it is made for. */
class LayoutTest {
  private static final List<String> PAGES = List.of("tree", "draw", "table", "wounds", "photos");

  @TempDir Path folder;

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  @ParameterizedTest
  @CsvSource({
    "1024, 640, LIGHT, USUAL",
    "1280, 800, LIGHT, LARGE",
    "1920, 1080, DARK, LARGE",
    "3840, 2160, LIGHT, USUAL"
  })
  void nothing_isCutOffOrCovered(int width, int height, Tone tone, TextSize size) {
    Graphics.require();
    TestDesk test =
        new TestDesk(
            folder.resolve("home"), new OwnParts(), settings -> settings.with(tone).with(size));
    assertThat(faults(test, width, height)).isEmpty();
  }

  @Test
  void nothing_isCutOffOrCovered_atTwiceTheScale() throws Exception {
    Graphics.require();
    Child child =
        Child.start(
            folder.resolve("home"),
            List.of("-Dsun.java2d.uiScale=2"),
            LayoutTest.class,
            folder.toString());
    assertThat(child.lines()).containsExactly("scale 2.0", "faults []");
  }

  /** Lays the window out in this process and prints what is wrong. */
  public static void main(String[] args) {
    TestDesk test = new TestDesk(Path.of(args[0]).resolve("own"), new OwnParts());
    double scale = test.window.getGraphicsConfiguration().getDefaultTransform().getScaleX();
    System.out.println("scale " + scale);
    System.out.println("faults " + faults(test, 1024, 640));
    System.exit(0);
  }

  private static List<String> faults(TestDesk test, int width, int height) {
    test.resize(width, height);
    List<String> faults = new ArrayList<>();
    int modes = test.window.parts().panels().size();
    for (int mode = 0; mode < modes; mode++) {
      int n = mode;
      WindowRobot.doOnEvents(() -> test.window.choose(n));
      WindowRobot.doOnEvents(test.window::validate);
      WindowRobot.onEvents(() -> Layout.faults(test.window.getRootPane()))
          .forEach(fault -> faults.add("mode " + (n + 1) + ": " + fault));
      pages(test, faults);
    }
    return faults;
  }

  /** The pages of the mode that is shown, where it has some. */
  private static void pages(TestDesk test, List<String> faults) {
    for (String page : PAGES) {
      if (test.robot.isThere("measure.page." + page)) {
        WindowRobot.doOnEvents(
            () -> ((AbstractButton) test.robot.find("measure.page." + page)).doClick());
        WindowRobot.doOnEvents(test.window::validate);
        WindowRobot.onEvents(() -> Layout.faults(test.window.getRootPane()))
            .forEach(fault -> faults.add(page + ": " + fault));
      }
    }
  }
}
