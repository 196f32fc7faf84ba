// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.awt.Font;
import java.awt.Window;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;

/**
 * Colours, fonts and sizes of all windows, by tone and text size. The factor that the system scales
 * by is Java's own and comes on top. Belongs to the event thread.
 */
public final class Theme {
  /** Size of usual text at 100 % [user pixels]. */
  public static final int BASE = 16;

  private static Tone tone = Tone.LIGHT;
  private static TextSize size = TextSize.USUAL;

  private Theme() {}

  /** Dresses every window, those that are open and those to come. */
  public static void apply(Tone newTone, TextSize newSize) {
    tone = newTone;
    size = newSize;
    TextUnit.install();
    FlatInterFont.install();
    FlatLaf.registerCustomDefaultsSource(
        Theme.class.getPackageName(), Theme.class.getClassLoader());
    int points = Math.round(BASE * newSize.percent() / 100f);
    UIManager.put("defaultFont", new FontUIResource(FlatInterFont.FAMILY, Font.PLAIN, points));
    FlatLaf.setup(newTone == Tone.DARK ? new FlatDarkLaf() : new FlatLightLaf());
    for (Window window : Window.getWindows()) {
      // one that was closed is not seen again, but is listed until it is collected
      if (window.isDisplayable()) {
        SwingUtilities.updateComponentTreeUI(window);
      }
    }
  }

  public static Tone tone() {
    return tone;
  }

  public static TextSize textSize() {
    return size;
  }

  /** The colour for a purpose, as it is now; ask again after the theme has changed. */
  public static Color colour(Shade shade) {
    Color colour = UIManager.getColor(shade.key());
    if (colour == null) {
      throw new IllegalStateException("no theme was applied yet: " + shade);
    }
    return new Color(colour.getRGB());
  }

  /** Usual text. */
  public static Font text() {
    return UIManager.getFont("defaultFont");
  }

  /** Usual text that stands out. */
  public static Font strong() {
    return text().deriveFont(Font.BOLD);
  }

  /** Notes and units. */
  public static Font small() {
    return text().deriveFont(text().getSize2D() * 14 / BASE);
  }

  /** The title of a section. */
  public static Font heading() {
    return text().deriveFont(Font.BOLD, text().getSize2D() * 18 / BASE);
  }

  /** A number to be read from afar. */
  public static Font reading() {
    return text().deriveFont(Font.BOLD, text().getSize2D() * 26 / BASE);
  }

  /** A length at text size 100 % as user pixels at the size in use. */
  public static int px(int usual) {
    return Math.round(usual * size.percent() / 100f);
  }

  /**
   * The same for a layout, in words: it follows the text size while the window is open.
   *
   * @param usual length at text size 100 % [user pixels]
   */
  public static String length(int usual) {
    return TextUnit.of(usual);
  }
}
