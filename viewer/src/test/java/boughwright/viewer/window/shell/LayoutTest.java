// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.FrontEdits;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.Layout;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.sketch.Sketches;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Window;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole window at every size it is made for and every size of text: all modes and pages, on a
 * tree with long names, with a branch pulled, and on a tree that is hardly begun.
 */
@OnScreen
class LayoutTest {
  private static final List<String> PAGES =
      List.of(
          "measure.page.tree",
          "measure.page.segments",
          "measure.page.table",
          "measure.page.wounds",
          "measure.page.photos",
          "choose.page.front",
          "choose.page.roots",
          "choose.page.structure",
          "choose.page.apex");
  private static final int PULL = 3;
  private static final List<Dimension> SIZES =
      List.of(
          new Dimension(1024, 640),
          new Dimension(1280, 800),
          new Dimension(1920, 1080),
          new Dimension(3840, 2160));

  /** A branch that the plan does not bend, so that it is where it was measured. */
  private static final String BRANCH = "b2b";

  private static final String LONG_NAME = "second-branch-on-the-left-outer-end";

  /** The longest words each number of a bend can have. */
  private static final Map<String, String> LONG =
      Map.of(
          "pull.tension", "12345.6 N",
          "pull.shortening", "1234.5 mm",
          "pull.turns", "123.4",
          "pull.miss", "1234.5 mm",
          "pull.strain", "more than it can take",
          "pull.breaking", "about 1 in 2, could be almost certain",
          "pull.kink", "less than 1 in 1000, could be almost certain");

  @TempDir Path folder;

  @AfterEach
  void close() {
    WindowRobot.doOnEvents(() -> RepaintManager.setCurrentManager(null));
    TestDesk.closeAll();
  }

  @Test
  void nothing_isCutOffOrCovered_atAnySizeOfWindowAndText() {
    Graphics.require();
    assertThat(faults(begin(folder.resolve("home")), SIZES)).isEmpty();
  }

  @Test
  void nothing_isCutOffOrCovered_whileABranchIsPulled() {
    Graphics.require();
    TestDesk test = new TestDesk(folder.resolve("home"), new OwnParts());
    WindowRobot.doOnEvents(test.window.jobs()::hold);
    lengthenNames(test.window.workspace());
    test.resize(1600, 1000);
    pull(test);
    WindowRobot.doOnEvents(() -> RepaintManager.setCurrentManager(new Unpainted()));
    Map<String, String> faults = new LinkedHashMap<>();
    each(test, List.of(SIZES.get(0), SIZES.get(3)), where -> add(faults, where, look(test)));
    assertThat(faults.values()).isEmpty();
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
    assertThat(child.lines()).containsExactly("scale 2.0", "faults 0");
  }

  /** Lays the window out in this process and prints what is wrong. */
  public static void main(String[] args) {
    // a window that is open would keep the process alive
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, error) -> {
          System.out.println("failed " + error);
          Runtime.getRuntime().halt(1);
        });
    TestDesk test = new TestDesk(Path.of(args[0]).resolve("probe"), new OwnParts());
    double scale = test.window.getGraphicsConfiguration().getDefaultTransform().getScaleX();
    System.out.println("scale " + scale);
    TestDesk.closeAll();
    List<Dimension> sizes = List.of(SIZES.get(0), SIZES.get(2));
    TestDesk own = begin(Path.of(args[0]).resolve("own"));
    Collection<String> faults = faults(own, sizes);
    faults.forEach(System.out::println);
    System.out.println("faults " + faults.size());
    System.exit(0);
  }

  /** A window on a tree with long names, in which nothing is worked out any more. */
  private static TestDesk begin(Path home) {
    TestDesk test = new TestDesk(home, new OwnParts());
    // what is worked out takes time and comes to no longer words than are put in its place
    WindowRobot.doOnEvents(test.window.jobs()::hold);
    lengthenNames(test.window.workspace());
    // where things stand is asked, not how they look
    WindowRobot.doOnEvents(() -> RepaintManager.setCurrentManager(new Unpainted()));
    return test;
  }

  /** Lays out as ever, and paints nothing. */
  private static final class Unpainted extends RepaintManager {
    @Override
    public void addDirtyRegion(JComponent part, int x, int y, int width, int height) {
      // it stays as it is
    }

    @Override
    public void addDirtyRegion(Window window, int x, int y, int width, int height) {
      // it stays as it is
    }
  }

  private static Collection<String> faults(TestDesk test, List<Dimension> sizes) {
    Map<String, String> faults = new LinkedHashMap<>();
    each(test, sizes, where -> modes(test, where, faults));
    WindowRobot.doOnEvents(
        () -> test.window.workspace().open(History.unsaved(Sketches.fresh()), Optional.empty()));
    WindowRobot.doOnEvents(() -> test.window.choose(1));
    each(test, sizes.subList(0, 1), where -> modes(test, where + ", begun", faults));
    return new TreeSet<>(faults.values());
  }

  private static void lengthenNames(Workspace work) {
    WindowRobot.doOnEvents(
        () -> {
          work.edit(SegmentEdits.rename(BRANCH, LONG_NAME));
          work.edit(PlanEdits.rename("a", "the-plan-for-the-next-three-seasons"));
          for (String id : List.of("from-the-left-of-the-old-scar", "from-the-side-of-the-hedge")) {
            work.edit(FrontEdits.mark(marked(id)));
          }
          work.choosePlan("the-plan-for-the-next-three-seasons");
        });
  }

  private static MarkedFront marked(String id) {
    return new MarkedFront(
        id,
        -1.2,
        Optional.of(new Planting(0.3, 2)),
        Optional.of("the flare is widest here, and the old scar is hidden"),
        Map.of());
  }

  /** Drags a branch near its end. */
  private static void pull(TestDesk test) {
    WindowRobot.doOnEvents(() -> test.window.choose(PULL));
    test.robot.settle();
    Component view = test.robot.find("canvas.view");
    Skeleton tree = new Skeleton(test.window.workspace().document().tree());
    Point3 end = tree.point(tree.indexOf(LONG_NAME), 0.9);
    var canvas = test.window.parts().canvas();
    test.robot.waitFor(
        "the wood is drawn",
        () -> canvas.hit(canvas.project(end).x(), canvas.project(end).y()).isPresent());
    Point at =
        WindowRobot.onEvents(
            () ->
                new Point(
                    (int) Math.round(canvas.project(end).x()),
                    (int) Math.round(canvas.project(end).y())));
    test.robot.drag(view, at, new Point(at.x - 10, at.y + 30));
    AbstractButton add = test.robot.find("pull.add", AbstractButton.class);
    test.robot.waitFor("the pull has settled", add::isEnabled);
  }

  /** Lets every number that is seen have the longest words it can. */
  private static void lengthenNumbers(TestDesk test) {
    Explanation what = new Explanation("a", "b", "c");
    for (Component part : Parts.all(test.window)) {
      if (part instanceof Reading reading && part.isShowing()) {
        String name = String.valueOf(reading.getName());
        if (LONG.containsKey(name)) {
          reading.show(LONG.get(name), "guessed, is being worked out", what);
        } else if (name.startsWith("compare.")) {
          reading.tell(LONG.get("pull.kink"), what);
        }
      }
    }
  }

  private interface Looking {
    void at(String where);
  }

  /** Looks at sizes of the window with every size of text. */
  private static void each(TestDesk test, List<Dimension> sizes, Looking looking) {
    for (TextSize text : TextSize.values()) {
      Tone tone = text == TextSize.LARGER ? Tone.DARK : Tone.LIGHT;
      WindowRobot.doOnEvents(() -> test.desk.change(old -> old.with(text).with(tone)));
      for (Dimension size : sizesFor(text, sizes)) {
        WindowRobot.doOnEvents(() -> test.window.setBounds(0, 0, size.width, size.height));
        looking.at(size.width + " x " + size.height + " at " + text.percent() + " %");
      }
    }
  }

  /** The least and the greatest window with every text; those between with one each. */
  private static List<Dimension> sizesFor(TextSize text, List<Dimension> sizes) {
    int between = text.ordinal();
    return IntStream.range(0, sizes.size())
        .filter(n -> n == 0 || n == sizes.size() - 1 || n == between)
        .mapToObj(sizes::get)
        .toList();
  }

  /** Lays out until nothing moves: once for the widths, then for the lines that break to them. */
  private static List<String> look(TestDesk test) {
    WindowRobot.doOnEvents(() -> lengthenNumbers(test));
    for (int pass = 0; pass < 4; pass++) {
      WindowRobot.doOnEvents(test.window::validate);
    }
    return WindowRobot.onEvents(() -> Layout.faults(test.window.getRootPane()));
  }

  private static void add(Map<String, String> faults, String where, List<String> found) {
    // each fault once, with the first place it was seen at
    found.forEach(fault -> faults.putIfAbsent(fault, where + ": " + fault));
  }

  private static void modes(TestDesk test, String where, Map<String, String> faults) {
    for (int mode = 0; mode < test.window.parts().panels().size(); mode++) {
      int n = mode;
      WindowRobot.doOnEvents(() -> test.window.choose(n));
      List<String> pages = pages(test);
      if (pages.isEmpty()) {
        add(faults, where + ", mode " + (n + 1), look(test));
      }
      for (String page : pages) {
        if (page.equals("choose.page.roots")) {
          compareFronts(test);
          add(faults, where + ", fronts compared", look(test));
        }
        WindowRobot.doOnEvents(() -> ((AbstractButton) test.robot.find(page)).doClick(0));
        add(faults, where + ", " + page, look(test));
      }
    }
  }

  /** Compares the marked fronts, where there are some. */
  private static void compareFronts(TestDesk test) {
    for (Component part : Parts.all(test.window)) {
      boolean box = String.valueOf(part.getName()).startsWith("choose.compare-");
      if (box && part instanceof AbstractButton button && !button.isSelected()) {
        WindowRobot.doOnEvents(() -> button.doClick(0));
      }
    }
  }

  /** The pages of the mode that is shown, where it has some. */
  private static List<String> pages(TestDesk test) {
    return WindowRobot.onEvents(
        () -> {
          Set<String> shown =
              Parts.all(test.window).stream()
                  .filter(Component::isShowing)
                  .map(part -> String.valueOf(part.getName()))
                  .collect(Collectors.toSet());
          return PAGES.stream().filter(shown::contains).toList();
        });
  }
}
