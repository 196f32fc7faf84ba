// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.MouseInfo;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Works real windows as a person does, by mouse and keyboard. Waits for what it needs to be there,
 * never for a time.
 */
public final class WindowRobot {
  /** How long anything may take before a test gives up, on a busy machine [ms]. */
  private static final long PATIENCE = 30_000;

  private static final long LONG_PATIENCE = 180_000;

  /** Between two looks at what a window works out [ms]. */
  private static final long PAUSE = 20;

  /** Between two looks at what arrives [ms]. */
  private static final long SHORT_PAUSE = 5;

  private static final int CLICKS = 10;

  private static final String SHIFTED = "~!@#$%^&*()_+{}|:\"<>?";
  private static final String UNSHIFTED = "`1234567890-=[]\\;',./";

  /** How long keys and buttons may take that always arrive where a window has the keyboard [ms]. */
  private static final long SURE_ARRIVAL = 5_000;

  /**
   * The same for a move of the mouse to where no window is, and a key up where none is left [ms].
   */
  private static final long ARRIVAL = 400;

  /** So many looks in a row see nothing new before it counts as worked off. */
  private static final int QUIET = 4;

  private final Robot robot;
  private final Arrivals arrivals = Arrivals.ofProcess();

  /** What had come before it touched anything since it last settled. */
  private Arrivals.Tally before = arrivals.tally();

  /** Keys and buttons gone down, and buttons gone up, since it last settled. */
  private int sure;

  /** Keys gone up since it last settled. */
  private int keysUp;

  /** Where the mouse was sent since it last settled. */
  private Optional<Point> sent = Optional.empty();

  /** A robot for the display of this process; where there is none, see {@link #requireDisplay}. */
  public WindowRobot() {
    requireDisplay();
    try {
      robot = new Robot();
    } catch (AWTException e) {
      throw new IllegalStateException(e);
    }
    robot.setAutoDelay(2);
  }

  /**
   * Skips the test where there is no display, or fails it where the environment variable
   * BOUGHWRIGHT_REQUIRE_GRAPHICS is 1.
   */
  public static void requireDisplay() {
    if (GraphicsEnvironment.isHeadless()) {
      if ("1".equals(System.getenv("BOUGHWRIGHT_REQUIRE_GRAPHICS"))) {
        Assertions.fail("this test needs a display");
      }
      Assumptions.abort("there is no display");
    }
  }

  /** Does something on the event thread and gives what came of it. */
  public static <T> T onEvents(Callable<T> call) {
    if (SwingUtilities.isEventDispatchThread()) {
      return called(call);
    }
    AtomicReference<T> result = new AtomicReference<>();
    try {
      SwingUtilities.invokeAndWait(() -> result.set(called(call)));
    } catch (InvocationTargetException e) {
      throw new AssertionError(e.getCause());
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
    return result.get();
  }

  /** Does something on the event thread. */
  public static void doOnEvents(Runnable run) {
    onEvents(
        () -> {
          run.run();
          return null;
        });
  }

  private static <T> T called(Callable<T> call) {
    try {
      return call.call();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  /** Waits until something holds, asking on the event thread. */
  public void waitFor(String what, Callable<Boolean> holds) {
    await(what, PATIENCE, holds);
  }

  /**
   * The same for what takes a busy machine minutes: thousands of draws, whole courses, searches.
   */
  public void patiently(String what, Callable<Boolean> holds) {
    await(what, LONG_PATIENCE, holds);
  }

  private static void await(String what, long milliseconds, Callable<Boolean> holds) {
    if (!holdsWithin(milliseconds, holds)) {
      throw new AssertionError("waited in vain: " + what + "; there is " + onEvents(Parts::names));
    }
  }

  private static boolean holdsWithin(long milliseconds, Callable<Boolean> holds) {
    long end = System.nanoTime() + milliseconds * 1_000_000;
    while (!onEvents(holds)) {
      if (System.nanoTime() > end) {
        return false;
      }
      pause(PAUSE);
    }
    return true;
  }

  private static void pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** What is on the screen under a name, in any window, dialog or menu; waits for it. */
  public Component find(String name) {
    return find("a component called " + name, part -> name.equals(part.getName()));
  }

  /** What is on the screen and is so; waits for it. */
  public Component find(String what, Predicate<Component> wanted) {
    waitFor(what, () -> Parts.shown(wanted).isPresent());
    return onEvents(() -> Parts.shown(wanted).orElseThrow());
  }

  /** What is on the screen under a name, cast; waits for it. */
  public <T extends Component> T find(String name, Class<T> type) {
    return type.cast(find(name));
  }

  /** Whether something of that name is on the screen now. */
  public boolean isThere(String name) {
    return onEvents(() -> Parts.shown(part -> name.equals(part.getName())).isPresent());
  }

  /** The words a component shows. */
  public String words(String name) {
    Component part = find(name);
    return onEvents(
        () -> {
          if (part instanceof JTextComponent text) {
            return text.getText();
          }
          if (part instanceof JLabel label) {
            return label.getText();
          }
          return part instanceof AbstractButton button ? button.getText() : "";
        });
  }

  /** Clicks the middle of what is called so. */
  public void click(String name) {
    Component part = find(name);
    waitFor(name + " can be used", part::isEnabled);
    click(part);
  }

  /** Scrolls until all of what is called so is in view. */
  public void reach(String name) {
    JComponent part = find(name, JComponent.class);
    waitFor(
        name + " is in view",
        () -> {
          // a text field itself would only scroll its own text
          ((JComponent) part.getParent()).scrollRectToVisible(part.getBounds());
          return part.getHeight() > 0 && part.getVisibleRect().height == part.getHeight();
        });
  }

  /** Scrolls to what is called so and clicks its middle, again where it moved away on the way. */
  public void reachAndClick(String name) {
    Component part = find(name);
    waitFor(name + " can be used", part::isEnabled);
    for (int n = 0; n < CLICKS; n++) {
      reach(name);
      moveTo(part, part.getWidth() / 2, part.getHeight() / 2);
      if (onEvents(() -> isUnderMouse((JComponent) part))) {
        buttonDown();
        buttonUp();
        settle();
        return;
      }
    }
    throw new AssertionError(name + " moves away from the mouse");
  }

  private static boolean isUnderMouse(JComponent part) {
    Point mouse = MouseInfo.getPointerInfo().getLocation();
    SwingUtilities.convertPointFromScreen(mouse, part);
    return part.getVisibleRect().contains(mouse);
  }

  /** Scrolls to a field, replaces what is in it and presses Enter. */
  public void reachAndFill(String name, String text) {
    enter(name, () -> reachAndClick(name));
    replace(text);
    keys(KeyEvent.VK_ENTER);
  }

  /** Clicks the middle of a component. */
  public void click(Component part) {
    click(part, part.getWidth() / 2, part.getHeight() / 2);
  }

  /** Clicks a place in a component [user pixels from its upper left]. */
  public void click(Component part, int x, int y) {
    moveTo(part, x, y);
    buttonDown();
    buttonUp();
    settle();
  }

  /** Moves the mouse to a place in a component [user pixels from its upper left]. */
  public void moveTo(Component part, int x, int y) {
    waitFor("it is on the screen", part::isShowing);
    Point at = onEvents(part::getLocationOnScreen);
    at.translate(x, y);
    robot.mouseMove(at.x, at.y);
    sent = Optional.of(at);
    settle();
  }

  /** Drags with the main button inside a component [user pixels from its upper left]. */
  public void drag(Component part, Point from, Point to) {
    press(part, from);
    dragTo(part, from, to);
    release();
  }

  /** Presses the main button at a place in a component. */
  public void press(Component part, Point at) {
    moveTo(part, at.x, at.y);
    buttonDown();
    settle();
  }

  /** Moves in small steps, as a hand does. */
  public void dragTo(Component part, Point from, Point to) {
    int steps = 10;
    for (int i = 1; i <= steps; i++) {
      moveTo(part, from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps);
    }
  }

  private void buttonDown() {
    begin();
    sure++;
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
  }

  private void buttonUp() {
    begin();
    sure++;
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
  }

  private void begin() {
    if (sure + keysUp == 0) {
      before = arrivals.tally();
    }
  }

  /** Releases the main button. */
  public void release() {
    buttonUp();
    settle();
  }

  /** Presses keys together, such as {@code VK_CONTROL, VK_S}. */
  public void keys(int... codes) {
    press(codes);
    settle();
  }

  /** The same many times in a row, as fast as a hurried hand. */
  public void keysAgain(int times, int... codes) {
    for (int i = 0; i < times; i++) {
      press(codes);
    }
    settle();
  }

  private void press(int... codes) {
    begin();
    for (int code : codes) {
      robot.keyPress(code);
      sure++;
    }
    for (int i = codes.length - 1; i >= 0; i--) {
      robot.keyRelease(codes[i]);
      keysUp++;
    }
  }

  /** Types text as one does who does not look up: each key follows the one before at once. */
  public void typeBlind(String text) {
    text.chars().forEach(letter -> press(KeyEvent.getExtendedKeyCodeForChar(letter)));
    settle();
  }

  /** Opens menus by their mnemonics: Alt with the first letter, then the others. */
  public void menu(String letters) {
    waitFor("a window has the focus", WindowRobot::hasFocus);
    keys(KeyEvent.VK_ALT, KeyEvent.getExtendedKeyCodeForChar(letters.charAt(0)));
    for (char letter : letters.substring(1).toCharArray()) {
      waitFor("a menu is open", WindowRobot::isMenuOpen);
      keys(KeyEvent.getExtendedKeyCodeForChar(letter));
    }
  }

  private static boolean hasFocus() {
    return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() != null;
  }

  private static boolean isMenuOpen() {
    return javax.swing.MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
  }

  /** Types text on an English keyboard. */
  public void type(String text) {
    for (char letter : text.toCharArray()) {
      int shifted = SHIFTED.indexOf(letter);
      if (shifted >= 0) {
        keys(KeyEvent.VK_SHIFT, KeyEvent.getExtendedKeyCodeForChar(UNSHIFTED.charAt(shifted)));
      } else if (Character.isUpperCase(letter)) {
        keys(KeyEvent.VK_SHIFT, KeyEvent.getExtendedKeyCodeForChar(letter));
      } else {
        keys(KeyEvent.getExtendedKeyCodeForChar(letter));
      }
    }
  }

  /** Clicks into a field, replaces what is in it and presses Enter. */
  public void fill(String name, String text) {
    write(name, text);
    keys(KeyEvent.VK_ENTER);
  }

  /** Clicks into a field and replaces what is in it, without Enter. */
  public void write(String name, String text) {
    enter(name, () -> click(name));
    replace(text);
  }

  private void replace(String text) {
    keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    type(text);
  }

  /** Clicks into a field, again where it moved away as what stands above it grew. */
  private void enter(String name, Runnable click) {
    Callable<Boolean> there = () -> focused().map(name::equals).orElse(false);
    for (int n = 0; n < CLICKS; n++) {
      click.run();
      if (holdsWithin(PATIENCE / CLICKS, there)) {
        return;
      }
    }
    waitFor(name + " has the focus", there);
  }

  /** The name of what has the focus. */
  public static Optional<String> focused() {
    return Optional.ofNullable(
            KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
        .map(Component::getName);
  }

  /** Waits until what mouse and keys did has arrived and is worked off. */
  public void settle() {
    Toolkit.getDefaultToolkit().sync();
    arrives(SURE_ARRIVAL, now -> now.sure() >= before.sure() + sure);
    arrives(ARRIVAL, now -> now.keysUp() >= before.keysUp() + keysUp);
    arrives(ARRIVAL, now -> sent.map(now.pointer()::equals).orElse(true));
    sure = 0;
    keysUp = 0;
    sent = Optional.empty();
    long end = System.nanoTime() + SURE_ARRIVAL * 1_000_000;
    Arrivals.Tally seen = arrivals.tally();
    int quiet = 0;
    while (quiet < QUIET && System.nanoTime() < end) {
      pause(SHORT_PAUSE);
      doOnEvents(() -> {});
      Arrivals.Tally now = arrivals.tally();
      quiet = now.equals(seen) ? quiet + 1 : 0;
      seen = now;
    }
  }

  private void arrives(long milliseconds, Predicate<Arrivals.Tally> all) {
    long end = System.nanoTime() + milliseconds * 1_000_000;
    while (!all.test(arrivals.tally()) && System.nanoTime() < end) {
      pause(SHORT_PAUSE);
    }
  }

  /** A window as it paints itself, at the scale of its screen. */
  public static BufferedImage picture(Component part) {
    return onEvents(
        () -> {
          double scale = part.getGraphicsConfiguration().getDefaultTransform().getScaleX();
          BufferedImage image =
              new BufferedImage(
                  (int) Math.round(part.getWidth() * scale),
                  (int) Math.round(part.getHeight() * scale),
                  BufferedImage.TYPE_INT_RGB);
          Graphics2D pen = image.createGraphics();
          pen.scale(scale, scale);
          part.printAll(pen);
          pen.dispose();
          return image;
        });
  }

  /** What the screen shows of a component, popups included, at the scale of the screen. */
  public BufferedImage onScreen(Component part) {
    settle();
    doOnEvents(() -> RepaintManager.currentManager(part).paintDirtyRegions());
    Toolkit.getDefaultToolkit().sync();
    Rectangle area = onEvents(() -> new Rectangle(part.getLocationOnScreen(), part.getSize()));
    List<java.awt.Image> variants =
        robot.createMultiResolutionScreenCapture(area).getResolutionVariants();
    return (BufferedImage) variants.get(variants.size() - 1);
  }

  /** Keeps a picture to look at. */
  public static void write(BufferedImage picture, Path file) {
    try {
      ImageIO.write(picture, "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Closes every window and dialog of this process. */
  public static void closeAll() {
    doOnEvents(() -> List.of(Window.getWindows()).forEach(Window::dispose));
  }
}
