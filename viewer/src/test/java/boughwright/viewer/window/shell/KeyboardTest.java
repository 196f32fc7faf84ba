// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.Command;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.DefaultButtonModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole window by keyboard alone. */
@OnScreen
class KeyboardTest {
  private static final int MEASURE = 1;

  @TempDir Path folder;

  private TestDesk test;

  @BeforeEach
  void open() {
    Graphics.require();
    WindowRobot.requireDisplay();
    test = new TestDesk(folder.resolve("home"), new OwnParts());
    test.resize(1280, 800);
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private interface PerMode {
    void check(int mode);
  }

  /** Each mode, and each page of Measure with all that can be on it. */
  private void inEachMode(PerMode check) {
    WindowRobot.doOnEvents(() -> WorkedTree.fill(test.window.workspace()));
    for (int mode = 0; mode < test.window.parts().panels().size(); mode++) {
      int n = mode;
      WindowRobot.doOnEvents(() -> test.window.choose(n));
      for (String page : mode == MEASURE ? WorkedTree.PAGES : List.of("")) {
        if (!page.isEmpty()) {
          WindowRobot.doOnEvents(((AbstractButton) test.robot.find(page))::doClick);
        }
        WindowRobot.doOnEvents(test.window::validate);
        check.check(mode);
      }
    }
  }

  /** What a person can work and sees now, in the window's content. */
  private List<Component> controls() {
    return WindowRobot.onEvents(
        () ->
            Parts.all(test.window.getContentPane()).stream()
                .filter(Component::isShowing)
                .filter(Component::isEnabled)
                .filter(KeyboardTest::isControl)
                .toList());
  }

  private static boolean isControl(Component part) {
    boolean field = part instanceof JTextComponent text && text.isEditable();
    boolean inCombo = SwingUtilities.getAncestorOfClass(JComboBox.class, part) != null;
    boolean button = part instanceof AbstractButton && part.getName() != null;
    return !inCombo
        && (field
            || button
            || part instanceof JComboBox<?>
            || part instanceof JSlider
            || part instanceof JList<?>
            || part instanceof JTable);
  }

  @Test
  void everyControl_isReachedByTab() {
    inEachMode(
        mode ->
            // in one go: what work brings may show another control between two looks
            WindowRobot.doOnEvents(
                () -> {
                  Set<Component> reached = walk();
                  assertThat(controls()).isNotEmpty();
                  assertThat(controls())
                      .allSatisfy(
                          part ->
                              assertThat(reached)
                                  .as(part.getName())
                                  .containsAnyElementsOf(group(part)));
                }));
  }

  /** A control, or all of its group: arrow keys lead from one to the next. */
  private static List<? extends Component> group(Component part) {
    return part instanceof JToggleButton toggle
            && toggle.getModel() instanceof DefaultButtonModel model
            && model.getGroup() != null
        ? Collections.list(model.getGroup().getElements())
        : List.of(part);
  }

  @Test
  void arrowKeys_goFromTabToTab() {
    test.robot.click("tab.look");
    test.robot.keys(KeyEvent.VK_RIGHT);
    assertThat(WindowRobot.onEvents(test.window::mode)).isEqualTo(1);
    test.robot.keys(KeyEvent.VK_LEFT);
    assertThat(WindowRobot.onEvents(test.window::mode)).isZero();
  }

  /** Where Tab leads from where it begins, until it comes back. */
  private Set<Component> walk() {
    Set<Component> reached = new LinkedHashSet<>();
    Container root = test.window;
    Component next = root.getFocusTraversalPolicy().getFirstComponent(root);
    while (next != null && reached.add(next)) {
      next = root.getFocusTraversalPolicy().getComponentAfter(root, next);
    }
    return reached;
  }

  @Test
  void everyControl_hasANameToHear() {
    inEachMode(
        mode ->
            assertThat(controls())
                .allSatisfy(
                    part ->
                        assertThat(spoken(part))
                            .as(part.getClass() + " " + part.getName())
                            .isNotBlank()));
  }

  private static String spoken(Component part) {
    return WindowRobot.onEvents(
        () -> ((Accessible) part).getAccessibleContext().getAccessibleName());
  }

  @Test
  void f6_goesRoundTheWindow() {
    List<String> seen = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      test.robot.keys(KeyEvent.VK_F6);
      seen.add(WindowRobot.onEvents(this::area));
    }
    assertThat(seen).containsExactlyInAnyOrder("tabs", "canvas", "side", "status");
  }

  private String area() {
    Component part = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    for (Component up = part; up != null; up = up.getParent()) {
      if (up.getName() != null
          && Set.of("tabs", "canvas", "side", "status").contains(up.getName())) {
        return up.getName();
      }
    }
    return "nowhere";
  }

  @Test
  void everyCommand_isInAMenuOrHasAKey() {
    Set<String> inMenus = new HashSet<>();
    JMenuBar bar = test.window.getJMenuBar();
    for (int i = 0; i < bar.getMenuCount(); i++) {
      collect(bar.getMenu(i), inMenus);
    }
    List<String> lost =
        test.window.commands().all().stream()
            .map(Command::id)
            .filter(id -> !inMenus.contains("menu." + id))
            .toList();
    assertThat(lost).isEmpty();
  }

  private static void collect(JMenu menu, Set<String> names) {
    for (Component part : menu.getMenuComponents()) {
      names.add(part.getName());
      if (part instanceof JMenu inner) {
        collect(inner, names);
      }
    }
  }

  @Test
  void altWithALetter_meansOneThing() {
    inEachMode(
        mode -> {
          List<Character> letters = WindowRobot.onEvents(this::letters);
          assertThat(letters).doesNotHaveDuplicates().contains('F', 'E', 'V', 'H');
        });
  }

  private List<Character> letters() {
    List<Character> letters = new ArrayList<>();
    for (Component part : Parts.all(test.window.getRootPane())) {
      if (!part.isShowing()) {
        continue;
      }
      if (part instanceof JLabel label && label.getDisplayedMnemonic() != 0) {
        letters.add((char) label.getDisplayedMnemonic());
      } else if (part instanceof AbstractButton button && button.getMnemonic() != 0) {
        letters.add((char) button.getMnemonic());
      }
    }
    return letters;
  }

  @Test
  void itemsOfAMenu_haveLettersOfTheirOwn() {
    JMenuBar bar = test.window.getJMenuBar();
    for (int i = 0; i < bar.getMenuCount(); i++) {
      List<Integer> letters = new ArrayList<>();
      for (Component part : bar.getMenu(i).getMenuComponents()) {
        if (part instanceof JMenuItem item) {
          assertThat(item.getMnemonic()).as(item.getText()).isNotZero();
          letters.add(item.getMnemonic());
        }
      }
      assertThat(letters).as(bar.getMenu(i).getText()).doesNotHaveDuplicates();
    }
  }
}
