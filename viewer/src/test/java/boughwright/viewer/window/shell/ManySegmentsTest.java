// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Segment;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.sketch.Sketches;
import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tree of 20,000 segments in the window. */
@OnScreen
class ManySegmentsTest {
  private static final int BRANCHES = 999;
  private static final int EACH = 20;

  @TempDir Path folder;
  private TestDesk test;
  private WindowRobot robot;
  private final ScheduledExecutorService heart = Executors.newSingleThreadScheduledExecutor();
  private final AtomicLong longest = new AtomicLong();
  private final AtomicLong busiest = new AtomicLong();
  private long worked;

  @BeforeEach
  void open() {
    Graphics.require();
    test = TestDesk.whole(folder.resolve("home"));
    robot = test.robot;
    test.resize(1280, 860);
    heart.scheduleWithFixedDelay(this::beat, 0, 5, TimeUnit.MILLISECONDS);
  }

  @AfterEach
  void close() {
    heart.shutdownNow();
    TestDesk.closeAll();
  }

  /** Sees how long the event thread takes to answer. */
  private void beat() {
    long asked = System.nanoTime();
    try {
      EventQueue.invokeAndWait(this::count);
      longest.accumulateAndGet(System.nanoTime() - asked, Math::max);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (java.lang.reflect.InvocationTargetException e) {
      throw new AssertionError(e);
    }
  }

  /** How long the event thread itself worked since the last beat; other programs do not count. */
  private void count() {
    long now = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    busiest.accumulateAndGet(now - worked, Math::max);
    worked = now;
  }

  private void print(String what) {
    System.out.printf(
        "20,000 segments, %s: answers after %.2f s at most, %.2f s of them its own work%n",
        what, longest.getAndSet(0) / 1e9, busiest.getAndSet(0) / 1e9);
  }

  private Document document() {
    return WindowRobot.onEvents(() -> test.window.workspace().document());
  }

  @Test
  void whileItIsRead_theWindowAnswers_andStopLeavesWhatWasOpen() {
    Document before = document();
    CountDownLatch go = new CountDownLatch(1);
    EventQueue.invokeLater(
        () ->
            test.window
                .files()
                .open(
                    "slow.tree.json",
                    () -> {
                      await(go);
                      return Opened.fresh("Slow", "unknown");
                    }));
    robot.find("waiting.progress");
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_S);
    robot.waitFor("it is stopped", () -> !robot.isThere("waiting"));
    go.countDown();
    test.change("Still mine");
    assertThat(document().tree().segments()).isEqualTo(before.tree().segments());
    assertThat(WindowRobot.onEvents(() -> test.window.files().isBusy())).isFalse();
  }

  private static void await(CountDownLatch go) {
    try {
      go.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void itIsOpened_andEditedInTheTable() throws Exception {
    Path file = folder.resolve("many.tree.json");
    Document many = Sketches.bushy(BRANCHES, EACH);
    assertThat(many.tree().segments()).hasSize(20_000);
    TreeFiles.write(many, file);
    longest.set(0);
    busiest.set(0);
    EventQueue.invokeLater(() -> FileCommands.openFile(test.window, file));
    robot.waitFor("it is open", () -> test.window.getTitle().contains("many.tree.json"));
    robot.waitFor("it is drawn", () -> test.window.jobs().running().isEmpty());
    print("opening");
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_2);
    robot.keys(KeyEvent.VK_F4);
    JTable table = robot.find("measure.table", JTable.class);
    print("going to the table");
    assertThat(table.getRowCount()).isEqualTo(20_000);
    Segment last = many.tree().segments().get(19_999);
    int column = column(table);
    int row = row(table, last.id());
    WindowRobot.doOnEvents(() -> table.changeSelection(row, column, false, false));
    WindowRobot.doOnEvents(table::requestFocusInWindow);
    robot.waitFor("the table has the keyboard", table::isFocusOwner);
    robot.type("2.5\n");
    robot.waitFor("the caliper is taken", () -> caliper() == 0.0025);
    print("typing a caliper");
    Segment changed = document().tree().segments().get(19_999);
    assertThat(changed.id()).isEqualTo(last.id());
    assertThat(changed.caliperStart()).isEqualTo(0.0025);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.waitFor("it is taken back", () -> document().equals(many));
    print("taking it back");
  }

  private double caliper() {
    return document().tree().segments().get(19_999).caliperStart();
  }

  private static int row(JTable table, String id) {
    return WindowRobot.onEvents(
        () -> {
          int row = 0;
          while (!id.equals(table.getValueAt(row, 0))) {
            row++;
          }
          return row;
        });
  }

  private static int column(JTable table) {
    for (int n = 0; n < table.getColumnCount(); n++) {
      if (table.getColumnName(n).toLowerCase(java.util.Locale.ROOT).contains("caliper")) {
        return n;
      }
    }
    throw new AssertionError("no column of calipers");
  }
}
