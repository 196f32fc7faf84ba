// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.shell.TestDesk;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A field that takes lengths, worked by keyboard. */
@OnScreen
class QuantityFieldTest {
  private static final double MILLIMETRE = 0.001;

  private final List<Double> committed = new ArrayList<>();
  private WindowRobot robot;
  private QuantityField field;
  private Reading reading;

  @BeforeEach
  void open() {
    robot = new WindowRobot();
    WindowRobot.doOnEvents(this::show);
    robot.waitFor("the window has the focus", () -> WindowRobot.focused().isPresent());
  }

  private void show() {
    Theme.apply(Tone.LIGHT, TextSize.USUAL);
    field =
        new QuantityField(
            new QuantityField.Asked("t.length", "Length", Measure.LENGTH, 0, 2),
            DisplayUnits.USUAL);
    field.setValue(0.012);
    field.onCommit(committed::add);
    reading = new Reading("t.pull", "Tension");
    reading.show("25 N", "at the pad", new Explanation("The pull.", "Within 2 N.", "Computed."));
    JPanel panel = new JPanel(new MigLayout("wrap 1", "[300!,fill]"));
    panel.add(field);
    panel.add(reading);
    JFrame frame = new JFrame();
    frame.setContentPane(panel);
    frame.setSize(400, 300);
    frame.setVisible(true);
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  @Test
  void enter_commitsInMillimetres() {
    robot.fill("t.length", "34.5");
    assertThat(committed).singleElement().isEqualTo(34.5 * MILLIMETRE);
  }

  @Test
  void aLengthWithItsUnit_countsInThatUnit() {
    robot.fill("t.length", "3,5 cm");
    assertThat(committed).singleElement().isEqualTo(0.035);
  }

  @Test
  void escape_bringsTheOldTextBack() {
    robot.write("t.length", "99");
    robot.keys(KeyEvent.VK_ESCAPE);
    assertThat(robot.words("t.length")).isEqualTo("12");
    assertThat(committed).isEmpty();
  }

  @Test
  void anArrow_addsAMillimetre() {
    robot.click("t.length");
    robot.keys(KeyEvent.VK_UP);
    assertThat(committed)
        .singleElement()
        .satisfies(m -> assertThat(m).isCloseTo(0.013, within(1e-12)));
  }

  @Test
  void aWrongText_isToldBeneathAndNotCommitted() {
    robot.fill("t.length", "abc");
    assertThat(robot.words("t.length.fault"))
        .startsWith("Length: ")
        .doesNotContain("\n")
        .contains("abc");
    assertThat(committed).isEmpty();
    assertThat(field.value()).hasValue(0.012);
  }

  @Test
  void tooMuch_isToldWithTheMost() {
    robot.fill("t.length", "2500");
    assertThat(robot.words("t.length.fault")).contains("2500 mm").contains("2000 mm");
    assertThat(committed).isEmpty();
  }

  @Test
  void otherUnits_showTheSameLength() {
    WindowRobot.doOnEvents(
        () -> {
          field.setValue(0.0254);
          field.use(new DisplayUnits(LengthUnit.INCH, ForceUnit.POUND_FORCE));
        });
    assertThat(robot.words("t.length")).isEqualTo("1");
  }

  @Test
  void f1OnAReading_opensItsExplanation_andEscapeClosesIt() {
    robot.click(reading);
    robot.keys(KeyEvent.VK_F1);
    assertThat(robot.find("explanation").isShowing()).isTrue();
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("it is closed", () -> !robot.isThere("explanation"));
  }

  @Test
  void aReading_speaksItsExplanation() {
    assertThat(reading.getAccessibleContext().getAccessibleName()).isEqualTo("Tension: 25 N");
    assertThat(reading.getAccessibleContext().getAccessibleDescription())
        .contains("The pull.")
        .contains("Within 2 N.")
        .contains("Computed.");
  }
}
