// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Selection;
import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.SwingUtilities;

/**
 * Takes a picture of every state of the window, to be looked at; no test runs it.
 *
 * <p>After {@code mvn test-compile}, on a display of at least 3840 x 2160 pixels: start it with the
 * class path of the tests in the folder {@code viewer}. It writes into {@code target/gallery}, once
 * at 100 % and once, in a process of its own, at 200 %. With a word such as {@code pull} it takes
 * only what has that word in its name.
 */
public final class Gallery {
  private static final List<String> PAGES =
      List.of("tree", "segments", "table", "wounds", "photos");

  private final Path folder;
  private final String scale;
  private final String only;
  private TestDesk test;

  private Gallery(Path folder, String scale, String only) {
    this.folder = folder;
    this.scale = scale;
    this.only = only;
  }

  /** Takes all pictures, or those whose name holds a word. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of("target", "gallery"));
    String only = args.length > 0 ? args[0] : "";
    boolean child = args.length > 1;
    Path home = Files.createTempDirectory("gallery");
    new Gallery(folder, child ? "200" : "100", only).take(home);
    if (!child) {
      List<String> options = List.of("-Dsun.java2d.uiScale=2");
      Child.start(home, options, Gallery.class, only, "child").lines();
    }
    System.exit(0);
  }

  private void take(Path home) throws IOException {
    for (Tone tone : Tone.values()) {
      TextSize usual = TextSize.USUAL;
      open(home, tone, usual);
      modes(tone, 1600, 1000, "");
      modes(tone, 1024, 640, "");
      chosen(tone);
      sheets(tone);
      tour(tone);
      WindowRobot.closeAll();
    }
    open(home, Tone.LIGHT, TextSize.LARGEST);
    modes(Tone.LIGHT, 1600, 1000, "-large-text");
    modes(Tone.LIGHT, 1024, 640, "-large-text");
    WindowRobot.closeAll();
  }

  private void open(Path home, Tone tone, TextSize size) {
    test = new TestDesk(home, new OwnParts(), settings -> settings.with(tone).with(size));
  }

  private void modes(Tone tone, int width, int height, String more) throws IOException {
    test.resize(width, height);
    String tag = "-" + word(tone) + "-" + width + more;
    WindowRobot.doOnEvents(() -> test.window.workspace().select(Selection.NONE));
    choose(0);
    if (wants("look")) {
      shoot("look" + tag);
    }
    WindowRobot.doOnEvents(() -> test.window.workspace().select(Selection.of("b1")));
    if (wants("look")) {
      shoot("look-picked" + tag);
    }
    if (wants("measure")) {
      choose(1);
      pages("measure", PAGES, tag);
      test.robot.click("measure.page.segments");
    }
    if (wants("choose")) {
      choose(2);
      pages("choose", List.of("front", "roots", "structure", "apex"), tag);
    }
    if (wants("pull")) {
      choose(3);
      shoot("pull-empty" + tag);
      pull();
      shoot("pull" + tag);
      test.robot.keys(KeyEvent.VK_ESCAPE);
    }
    if (wants("compare")) {
      choose(4);
      shoot("compare" + tag);
    }
    choose(0);
  }

  /** Whether pictures whose names begin so may be asked for. */
  private boolean wants(String mode) {
    return only.contains(mode) || mode.contains(only);
  }

  private void pages(String mode, List<String> pages, String tag) throws IOException {
    for (String page : pages) {
      test.robot.click(mode + ".page." + page);
      shoot(mode + "-" + page + tag);
    }
  }

  /** What the pages of choosing show once a person has worked on them. */
  private void chosen(Tone tone) throws IOException {
    String fronts = "choose-fronts-" + word(tone);
    String compared = "choose-compared-" + word(tone);
    String leaders = "choose-leaders-" + word(tone);
    String posed = "choose-leader-" + word(tone);
    if (!wants("choose")) {
      return;
    }
    test.resize(1600, 1000);
    WindowRobot.doOnEvents(() -> test.window.workspace().select(Selection.NONE));
    choose(2);
    WindowRobot robot = test.robot;
    robot.click("choose.page.front");
    robot.reachAndClick("choose.find");
    robot.patiently("fronts are found", () -> robot.isThere("choose.best-1"));
    robot.reachAndClick("choose.best-1");
    mark(1);
    robot.reachAndClick("choose.best-2");
    mark(2);
    robot.reachAndClick("choose.best-1");
    robot.patiently("all is drawn", () -> !robot.isThere("status.progress"));
    robot.reach("choose.best-2");
    shoot(fronts);
    robot.reachAndClick("choose.compare-f1");
    robot.reachAndClick("choose.compare-f2");
    robot.reach("choose.compared-score-f1");
    shoot(compared);
    robot.click("choose.page.apex");
    robot.click("choose.apex-find");
    robot.patiently("leaders are tried", () -> robot.isThere("choose.apex-keep-1"));
    shoot(leaders);
    robot.reachAndClick("choose.apex-show-1");
    pause();
    shoot(posed);
    WindowRobot.doOnEvents(test.window.workspace()::undo);
    WindowRobot.doOnEvents(test.window.workspace()::undo);
    choose(0);
  }

  private void mark(int count) {
    test.robot.reachAndClick("choose.mark");
    test.robot.waitFor(
        count + " marked",
        () -> test.window.workspace().document().fronts().marked().size() == count);
  }

  private void choose(int mode) {
    WindowRobot.doOnEvents(() -> test.window.choose(mode));
    test.robot.settle();
    pause();
  }

  /** A picture for a person to look at may wait a moment for the still quality. */
  private static void pause() {
    try {
      Thread.sleep(500);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Takes hold of the end of the picked branch and draws it down. */
  private void pull() {
    Component view = test.robot.find("canvas.view");
    settled();
    Point end =
        WindowRobot.onEvents(
            () -> {
              var tree = test.window.workspace().document().tree();
              var tip =
                  tree.segments().stream()
                      .filter(s -> s.id().equals("b2"))
                      .findFirst()
                      .orElseThrow();
              var at = test.window.parts().canvas().project(tip.end());
              return new Point((int) Math.round(at.x()), (int) Math.round(at.y()));
            });
    test.robot.press(view, end);
    test.robot.dragTo(view, end, new Point(end.x + 20, end.y + view.getHeight() / 12));
    test.robot.release();
    settled();
  }

  private void sheets(Tone tone) throws IOException {
    test.resize(1600, 1000);
    String tag = "-" + word(tone);
    sheet("start", "start" + tag, () -> new StartSheet(test.window).show());
    sheet("new-tree", "new-tree" + tag, () -> test.window.commands().run("file.new"));
    sheet("keys", "keys" + tag, () -> test.window.commands().run("help.keys"));
    sheet("cautions", "cautions" + tag, () -> test.window.commands().run("help.cautions"));
    sheet("notices", "notices" + tag, () -> test.window.commands().run("help.notices"));
    sheet("about", "about" + tag, () -> test.window.commands().run("help.about"));
    sheet("trouble", "trouble" + tag, this::trouble);
    sheet("file.chooser", "chooser" + tag, () -> test.window.commands().run("file.open"));
    test.change("A tree with a name as long as a careful person gives it");
    sheet("question", "question" + tag, () -> test.desk.close(test.window));
    WindowRobot.doOnEvents(() -> test.window.workspace().undo());
  }

  private void trouble() {
    Problem one =
        Problem.fault(
            Place.of("bench/mine.tree.json", "segments[3].caliper_end_mm"),
            "not-positive",
            "-4 is no caliper",
            "Write the caliper in millimetres, more than 0");
    Trouble.tell(test.window, "mine.tree.json cannot be opened", List.of(one, one));
  }

  private void sheet(String name, String picture, Runnable show) throws IOException {
    if (!picture.contains(only)) {
      return;
    }
    SwingUtilities.invokeLater(show);
    test.robot.find(name);
    shoot("sheet-" + picture);
    test.robot.keys(KeyEvent.VK_ESCAPE);
    test.robot.waitFor(name + " is gone", () -> !test.robot.isThere(name));
  }

  private void tour(Tone tone) throws IOException {
    if (!wants("tour")) {
      return;
    }
    WindowRobot.doOnEvents(() -> Tour.start(test.window, test.desk));
    for (int step = 1; step <= TourStep.values().length; step++) {
      String count = step + " of 5";
      test.robot.waitFor(count, () -> test.robot.words("tour.count").equals(count));
      shoot("tour-" + step + "-" + word(tone));
      test.robot.click("tour.next");
    }
  }

  private static String word(Tone tone) {
    return tone.name().toLowerCase(Locale.ROOT);
  }

  /** Waits until the tree on the screen does not change any more; long work may go on. */
  private BufferedImage settled() {
    Component view = test.robot.find("canvas.view");
    BufferedImage last = WindowRobot.picture(view);
    for (int n = 0; n < 20; n++) {
      test.robot.settle();
      BufferedImage now = WindowRobot.picture(view);
      if (same(last, now) && n > 2) {
        break;
      }
      last = now;
    }
    return test.robot.onScreen(test.window.getRootPane());
  }

  private static boolean same(BufferedImage one, BufferedImage other) {
    int width = one.getWidth();
    int height = one.getHeight();
    return width == other.getWidth()
        && height == other.getHeight()
        && Arrays.equals(
            one.getRGB(0, 0, width, height, null, 0, width),
            other.getRGB(0, 0, width, height, null, 0, width));
  }

  private void shoot(String name) throws IOException {
    if (name.contains(only)) {
      WindowRobot.write(settled(), folder.resolve(name + "-" + scale + ".png"));
    }
  }
}
