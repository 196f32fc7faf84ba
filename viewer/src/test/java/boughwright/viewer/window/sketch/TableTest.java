// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Selection;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rows of the small tree are t1, b1, b1b, t2. */
@OnScreen
class TableTest {
  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path home;
  private SketchFrame frame;

  @BeforeAll
  static void theme() {
    WindowRobot.requireDisplay();
    WindowRobot.doOnEvents(() -> Theme.apply(Tone.LIGHT, TextSize.USUAL));
  }

  @AfterEach
  void close() {
    if (frame != null) {
      frame.close();
    }
  }

  private JTable open(Document document) {
    frame = SketchFrame.open(home, document);
    robot.keys(KeyEvent.VK_F4);
    JTable table = robot.find("measure.table", JTable.class);
    robot.waitFor("the table has the focus", table::isFocusOwner);
    return table;
  }

  private void pick(JTable table, int row, String heading) {
    pick(table, row, row, heading);
  }

  private void pick(JTable table, int first, int last, String heading) {
    WindowRobot.doOnEvents(
        () -> {
          int column = column(table, heading);
          table.setRowSelectionInterval(first, last);
          table.setColumnSelectionInterval(column, column);
        });
  }

  private static int column(JTable table, String heading) {
    for (int i = 0; i < table.getColumnCount(); i++) {
      String plain =
          table.getColumnName(i).replace("<br>", " ").replaceAll("<[^>]+>|&nbsp;", "").strip();
      if (plain.equals(heading)) {
        return i;
      }
    }
    throw new AssertionError("no column " + heading);
  }

  private Segment segment(String id) {
    return WindowRobot.onEvents(() -> Sketches.segment(frame.workspace, id));
  }

  private Document document() {
    return WindowRobot.onEvents(frame.workspace::document);
  }

  private void put(String text) {
    StringSelection held = new StringSelection(text);
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(held, held);
  }

  @Test
  void typing_overwritesAcell_andEnterGoesDown() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Length mm");

    robot.type("90");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(segment("b1").end().x()).isCloseTo(0.09, within(1e-6));
    assertThat(segment("b1b").end().x()).isCloseTo(0.15, within(1e-6));
    assertThat(WindowRobot.onEvents(table::getSelectedRow)).isEqualTo(2);
  }

  @Test
  void f2AndTab_changeAcellAndGoRight() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Caliper start mm");

    robot.keys(KeyEvent.VK_F2);
    robot.keys(KeyEvent.VK_END);
    robot.keys(KeyEvent.VK_BACK_SPACE);
    robot.type("5");
    robot.keys(KeyEvent.VK_TAB);
    robot.type("7,5");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(segment("b1").caliperStart()).isCloseTo(0.0105, within(1e-12));
    assertThat(segment("b1").caliperEnd()).isCloseTo(0.0075, within(1e-12));
  }

  @Test
  void aWrongCell_keepsTheOldValue_andSaysWhyInOneLine() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Length mm");

    robot.type("thick");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(document()).isEqualTo(Sketches.small());
    assertThat(robot.words("measure.table.told")).startsWith("b1, length: ").doesNotContain("\n");
  }

  @Test
  void pasteOf3By2Cells_isOneStepToUndo() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Caliper start mm");
    put("11\t10\n9,5\t9\n0.9 in\t22\n");

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_V);

    assertThat(segment("b1").caliperStart()).isEqualTo(0.011);
    assertThat(segment("b1b").caliperStart()).isEqualTo(0.0095);
    assertThat(segment("t2").caliperStart()).isCloseTo(0.02286, within(1e-12));
    assertThat(segment("t2").caliperEnd()).isEqualTo(0.022);
    assertThat(WindowRobot.onEvents(() -> frame.workspace.history().undoName()))
        .contains("Paste 3 by 2 cells");

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);

    assertThat(document()).isEqualTo(Sketches.small());
  }

  @Test
  void paste_changesNothing_whenOneCellIsWrong() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Caliper start mm");
    put("11\t10\n-3\t9\n");

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_V);

    assertThat(document()).isEqualTo(Sketches.small());
    assertThat(robot.words("measure.table.told")).contains("b1b").contains("-3");
  }

  @Test
  void paste_isRefused_whenItDoesNotFit() {
    JTable table = open(Sketches.small());
    pick(table, 3, "Caliper start mm");
    put("11\n12\n13\n");

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_V);

    robot.waitFor(
        "it is told", () -> robot.words("measure.table.told").startsWith("Nothing was pasted"));
    assertThat(document()).isEqualTo(Sketches.small());
  }

  @Test
  void copy_givesCellsParted_byTabs() throws Exception {
    JTable table = open(Sketches.small());
    WindowRobot.doOnEvents(
        () -> {
          table.setRowSelectionInterval(1, 2);
          int column = column(table, "Caliper start mm");
          table.setColumnSelectionInterval(column, column + 1);
        });

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_C);

    Object text = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
    assertThat(text).isEqualTo("10.0\t8.0\n8.0\t6.0\n");
  }

  @Test
  void fillDown_putsTheFirstCellIntoTheOthers() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Kind");
    robot.type("sacrifice");
    robot.keys(KeyEvent.VK_ENTER);
    pick(table, 1, 2, "Kind");

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_D);

    assertThat(segment("b1b").kind()).isEqualTo(Kind.SACRIFICE);
  }

  @Test
  void rows_andPickedSegments_followEachOther() {
    JTable table = open(Sketches.small());

    WindowRobot.doOnEvents(() -> frame.workspace.select(Selection.of("b1b")));
    assertThat(WindowRobot.onEvents(table::getSelectedRow)).isEqualTo(2);

    pick(table, 0, 1, "Segment");
    assertThat(WindowRobot.onEvents(() -> frame.workspace.selection().segments()))
        .isEqualTo(List.of("t1", "b1"));
  }

  @Test
  void pickedRows_stayPicked_afterAchange() {
    JTable table = open(Sketches.small());
    pick(table, 2, "Elevation \u00B0");

    robot.type("10");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(WindowRobot.onEvents(table::getSelectedRow)).isEqualTo(3);
    assertThat(WindowRobot.onEvents(() -> frame.workspace.selection().segments()))
        .isEqualTo(List.of("t2"));
  }

  @Test
  void cells_areShownAndRead_inInches() {
    JTable table = open(Sketches.small());
    WindowRobot.doOnEvents(
        () -> frame.workspace.use(new DisplayUnits(LengthUnit.INCH, ForceUnit.NEWTON)));
    pick(table, 1, "Length in");
    assertThat(WindowRobot.onEvents(() -> table.getValueAt(1, column(table, "Length in"))))
        .isEqualTo("3.15");

    robot.type("4");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(segment("b1").end().x()).isCloseTo(0.1016, within(1e-6));
  }

  @Test
  void growsOn_movesAbranch_withWhatItCarries() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Grows on");

    robot.type("t2");
    robot.keys(KeyEvent.VK_ENTER);

    Skeleton skeleton = new Skeleton(document().tree());
    Point3 start = skeleton.start(skeleton.indexOf("b1"));
    assertThat(start.z()).isCloseTo(0.15, within(1e-9));
    assertThat(segment("b1b").end().z()).isCloseTo(0.17, within(1e-9));
  }

  @Test
  void everyColumn_isSeenAt1280Wide_withoutScrollingAside() {
    JTable table = open(Sketches.small());

    List<Integer> widths =
        WindowRobot.onEvents(
            () -> List.of(table.getWidth(), table.getParent().getWidth(), frame.frame.getWidth()));
    assertThat(widths.get(2)).isEqualTo(1280);
    assertThat(widths.get(0)).isEqualTo(widths.get(1));
    for (int i = 0; i < table.getColumnCount(); i++) {
      int column = i;
      assertThat(WindowRobot.<Boolean>onEvents(() -> fits(table, column)))
          .as("what stands in column %s has room", table.getColumnName(i))
          .isTrue();
    }
  }

  private static boolean fits(JTable table, int column) {
    int width = table.getColumnModel().getColumn(column).getWidth();
    Component head =
        table
            .getTableHeader()
            .getDefaultRenderer()
            .getTableCellRendererComponent(
                table, table.getColumnName(column), false, false, -1, column);
    int most = head.getPreferredSize().width;
    for (int row = 0; row < table.getRowCount(); row++) {
      Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
      most = Math.max(most, cell.getPreferredSize().width);
    }
    return most <= width;
  }

  @Test
  void aNewName_isTakenEverywhere() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Segment");

    robot.type("left1");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(segment("b1b").parent()).contains("left1");
    assertThat(WindowRobot.onEvents(() -> frame.workspace.history().undoName()))
        .contains("Set segment of b1");
  }

  @Test
  void aBlockWithDecimalCommas_asSpreadsheetsCopyIt_isUnderstood() {
    JTable table = open(Sketches.small());
    pick(table, 1, "Azimuth \u00B0");
    put("270,0\t12,5\t81,5\t10,2\t8,1\r\n");

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_V);

    Segment b1 = segment("b1");
    assertThat(b1.caliperStart()).isCloseTo(0.0102, within(1e-12));
    assertThat(b1.caliperEnd()).isCloseTo(0.0081, within(1e-12));
    // 81.5 mm at 12.5 degrees from (0, 0, 50 mm): 79.568 to the right, 17.640 up.
    assertThat(b1.end().x()).isCloseTo(0.079568, within(2e-6));
    assertThat(b1.end().z()).isCloseTo(0.067640, within(2e-6));
  }

  @Test
  void everyCell_isPastedIntoAtreeOf2000Segments_inOneStep() {
    JTable table = open(Sketches.large(2000));
    pick(table, 1500, "Live");
    put("yes\n".repeat(200));

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
    robot.waitFor(
        "it is pasted",
        () ->
            frame.workspace.document().tree().segments().stream()
                    .filter(one -> one.live().isPresent())
                    .count()
                == 200);

    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(document()).isEqualTo(Sketches.large(2000));
  }
}
