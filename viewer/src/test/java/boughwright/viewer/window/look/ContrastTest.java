// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.shell.TestDesk;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Text against what is behind it, read off painted pixels. The ratio is the contrast ratio of WCAG
 * 2.1 (W3C Recommendation, 5 June 2018), its definitions "contrast ratio" and "relative luminance";
 * 4.5 is its success criterion 1.4.3, level AA. The formula was written from memory.
 */
@OnScreen
class ContrastTest {
  private static final double ENOUGH = 4.5;

  @AfterEach
  void close() {
    TestDesk.closeAll();
    WindowRobot.doOnEvents(() -> Theme.apply(Tone.LIGHT, TextSize.USUAL));
  }

  @Test
  void theFormula_givesTheKnownRatios() {
    assertThat(ratio(0xFFFFFF, 0x000000)).isEqualTo(21);
    // #767676 is the lightest grey said to pass on white
    assertThat(ratio(0x767676, 0xFFFFFF)).isBetween(4.5, 4.6);
  }

  @ParameterizedTest
  @EnumSource(Tone.class)
  void everyText_standsOutEnough(Tone tone) {
    WindowRobot.requireDisplay();
    JPanel panel = WindowRobot.onEvents(() -> samples(tone));
    new WindowRobot().waitFor("it is shown", panel::isShowing);
    Map<String, Double> ratios = WindowRobot.onEvents(() -> ratios(panel));
    assertThat(ratios).hasSizeGreaterThan(10);
    assertThat(ratios)
        .allSatisfy((what, ratio) -> assertThat(ratio).as(what).isGreaterThanOrEqualTo(ENOUGH));
  }

  /** Painted and read in one go, so that nothing moves meanwhile. */
  private static Map<String, Double> ratios(JPanel panel) {
    // once for the widths, once for the lines that break to them
    for (int pass = 0; pass < 2; pass++) {
      Parts.all(panel).forEach(Component::invalidate);
      SwingUtilities.getRoot(panel).validate();
    }
    BufferedImage picture = WindowRobot.picture(panel);
    double scale = (double) picture.getWidth() / panel.getWidth();
    Map<String, Double> ratios = new HashMap<>();
    texts(panel).forEach(text -> ratios.put(what(text), ratioOf(text, panel, picture, scale)));
    return ratios;
  }

  private static JPanel samples(Tone tone) {
    Theme.apply(tone, TextSize.USUAL);
    JPanel column = Controls.column();
    Reading reading = new Reading("c.reading", "Tension");
    reading.show("25 N", "at the pad", new Explanation("a", "b", "c"));
    QuantityField field =
        new QuantityField(
            new QuantityField.Asked("c.length", "Length", Measure.LENGTH, 0, 1),
            DisplayUnits.USUAL);
    field.setValue(0.4);
    QuantityField wrong =
        new QuantityField(
            new QuantityField.Asked("c.wrong", "Caliper", Measure.LENGTH, 0, 1),
            DisplayUnits.USUAL);
    wrong.field().setText("many");
    wrong.commit();
    BarReading bar = new BarReading("c.bar", "Taper", false);
    bar.show("62 %", 0.7, new Explanation("a", "b", "c"));
    JToggleButton on = Controls.toggle("Chosen");
    on.setSelected(true);
    List<JComponent> parts =
        List.of(
            reading,
            bar,
            field,
            wrong,
            on,
            Controls.toggle("Not chosen"),
            Controls.button("Do it"),
            Controls.note("A note"),
            Controls.label("A label"),
            Controls.prose("Some prose"),
            new Prose("Something failed", Shade.FAULT),
            new CautionLine(Caution.FLYING));
    column.add(Controls.section("A heading", parts.toArray(JComponent[]::new)));
    JFrame frame = new JFrame();
    column.setOpaque(true);
    frame.setContentPane(column);
    frame.setSize(500, 900);
    frame.setVisible(true);
    frame.validate();
    return column;
  }

  private static List<JComponent> texts(Container in) {
    List<JComponent> texts = new ArrayList<>();
    for (Component part : Parts.all(in)) {
      boolean text =
          part instanceof JLabel
              || part instanceof AbstractButton
              || part instanceof JTextComponent;
      if (text && part.isShowing() && !what((JComponent) part).isBlank()) {
        texts.add((JComponent) part);
      }
    }
    return texts;
  }

  private static String what(JComponent part) {
    String words =
        part instanceof JLabel label
            ? label.getText()
            : part instanceof AbstractButton button
                ? button.getText()
                : ((JTextComponent) part).getText();
    return words.isBlank() ? "" : words + " (" + part.getClass().getSimpleName() + ")";
  }

  /** The usual colour of the box against the one that differs from it most. */
  private static double ratioOf(
      JComponent text, JPanel panel, BufferedImage picture, double scale) {
    Point at = SwingUtilities.convertPoint(text, 4, 4, panel);
    Rectangle box =
        new Rectangle(
            (int) (at.x * scale),
            (int) (at.y * scale),
            (int) ((text.getWidth() - 8) * scale),
            (int) ((text.getHeight() - 8) * scale));
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = box.y; y < box.y + box.height; y++) {
      for (int x = box.x; x < box.x + box.width; x++) {
        counts.merge(picture.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
      }
    }
    int behind =
        counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    return counts.keySet().stream().mapToDouble(rgb -> ratio(rgb, behind)).max().orElseThrow();
  }

  private static double ratio(int one, int other) {
    double a = luminance(new Color(one));
    double b = luminance(new Color(other));
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int part) {
    double c = part / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
