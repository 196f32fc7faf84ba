// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.KeyStroke;

/** Keys, and what they are called. */
public final class Keys {
  private static final Map<Integer, String> WORDS =
      Map.ofEntries(
          Map.entry(KeyEvent.VK_ESCAPE, "Esc"),
          Map.entry(KeyEvent.VK_ENTER, "Enter"),
          Map.entry(KeyEvent.VK_SPACE, "Space"),
          Map.entry(KeyEvent.VK_TAB, "Tab"),
          Map.entry(KeyEvent.VK_DELETE, "Delete"),
          Map.entry(KeyEvent.VK_BACK_SPACE, "Backspace"),
          Map.entry(KeyEvent.VK_INSERT, "Insert"),
          Map.entry(KeyEvent.VK_HOME, "Home"),
          Map.entry(KeyEvent.VK_END, "End"),
          Map.entry(KeyEvent.VK_PAGE_UP, "Page up"),
          Map.entry(KeyEvent.VK_PAGE_DOWN, "Page down"),
          Map.entry(KeyEvent.VK_LEFT, "Left"),
          Map.entry(KeyEvent.VK_RIGHT, "Right"),
          Map.entry(KeyEvent.VK_UP, "Up"),
          Map.entry(KeyEvent.VK_DOWN, "Down"),
          Map.entry(KeyEvent.VK_PLUS, "+"),
          Map.entry(KeyEvent.VK_EQUALS, "="),
          Map.entry(KeyEvent.VK_MINUS, "-"),
          Map.entry(KeyEvent.VK_COMMA, ","),
          Map.entry(KeyEvent.VK_PERIOD, "."),
          Map.entry(KeyEvent.VK_OPEN_BRACKET, "["),
          Map.entry(KeyEvent.VK_CLOSE_BRACKET, "]"));

  private Keys() {}

  /** A key with the one that menus go by: Ctrl, or Cmd on macOS. */
  public static KeyStroke menu(int key) {
    return KeyStroke.getKeyStroke(key, menuMask());
  }

  /** A key with the one that menus go by, and Shift. */
  public static KeyStroke menuShift(int key) {
    return KeyStroke.getKeyStroke(key, menuMask() | InputEvent.SHIFT_DOWN_MASK);
  }

  /** A key with Alt. */
  public static KeyStroke alt(int key) {
    return KeyStroke.getKeyStroke(key, InputEvent.ALT_DOWN_MASK);
  }

  /** A key by itself. */
  public static KeyStroke plain(int key) {
    return KeyStroke.getKeyStroke(key, 0);
  }

  private static int menuMask() {
    return GraphicsEnvironment.isHeadless()
        ? InputEvent.CTRL_DOWN_MASK
        : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
  }

  /** A key as people call it, such as {@code Ctrl+Shift+Z}. */
  public static String words(KeyStroke stroke) {
    List<String> parts = new ArrayList<>();
    int held = stroke.getModifiers();
    addIf(parts, held, InputEvent.CTRL_DOWN_MASK, "Ctrl");
    addIf(parts, held, InputEvent.META_DOWN_MASK, "Cmd");
    addIf(parts, held, InputEvent.ALT_DOWN_MASK, "Alt");
    addIf(parts, held, InputEvent.SHIFT_DOWN_MASK, "Shift");
    int code = stroke.getKeyCode();
    parts.add(WORDS.getOrDefault(code, name(code)));
    return String.join("+", parts);
  }

  private static void addIf(List<String> parts, int held, int mask, String word) {
    if ((held & mask) != 0) {
      parts.add(word);
    }
  }

  private static String name(int code) {
    if (code >= KeyEvent.VK_F1 && code <= KeyEvent.VK_F12) {
      return "F" + (code - KeyEvent.VK_F1 + 1);
    }
    return code >= KeyEvent.VK_0 && code <= KeyEvent.VK_Z
        ? String.valueOf((char) code)
        : KeyEvent.getKeyText(code);
  }

  /** Whether a key writes a character when it is pressed by itself. */
  static boolean writes(KeyStroke stroke) {
    int held = InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
    int code = stroke.getKeyCode();
    boolean function = code >= KeyEvent.VK_F1 && code <= KeyEvent.VK_F12;
    return (stroke.getModifiers() & held) == 0 && !function;
  }
}
