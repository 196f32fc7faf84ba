// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.work.Notice;
import java.awt.Window;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in a process of its own, from its start to its end. */
@OnScreen
class RunTest {
  private static final String MAIN = "boughwright.viewer.command.Boughwright";

  @TempDir Path folder;

  private record Ended(int code, List<String> out, List<String> err) {}

  /** Runs {@link #main} in a process of its own. */
  private Ended run(List<String> before, Map<String, String> environment, String... words)
      throws Exception {
    List<String> line = new ArrayList<>(before);
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-cp", System.getProperty("java.class.path"), RunTest.class.getName()));
    line.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.redirectError(folder.resolve("err").toFile());
    builder.environment().put("BOUGHWRIGHT_HOME", folder.resolve("home").toString());
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    List<String> out;
    try (InputStream in = process.getInputStream()) {
      out = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return new Ended(process.exitValue(), out, Files.readAllLines(folder.resolve("err")));
  }

  private Path larch() throws Exception {
    Path file = folder.resolve("larch.tree.json");
    TreeFiles.write(Example.LARCH.read().document(), file);
    return file;
  }

  /** The real program, with a hand that does what the first word says once the window stands. */
  public static void main(String[] args) throws Exception {
    Thread hand =
        new Thread(
            () -> {
              MainWindow window = shown();
              switch (args[0]) {
                case "close" -> drawn(window);
                case "without-graphics" -> tellOfMessage(window);
                default -> fillUp(window, Path.of(args[2]));
              }
              WindowRobot.doOnEvents(() -> window.workspace().saved(Path.of(args[2])));
              WindowRobot.doOnEvents(() -> window.commands().run("file.quit"));
            });
    hand.setDaemon(true);
    hand.start();
    String[] words = List.of(args).subList(1, 3).toArray(String[]::new);
    Class.forName(MAIN).getMethod("main", String[].class).invoke(null, (Object) words);
  }

  private static MainWindow shown() {
    new WindowRobot()
        .waitFor(
            "the window is open",
            () ->
                java.util.Arrays.stream(Window.getWindows())
                    .anyMatch(MainWindow.class::isInstance));
    return (MainWindow)
        java.util.Arrays.stream(Window.getWindows())
            .filter(MainWindow.class::isInstance)
            .findFirst()
            .orElseThrow();
  }

  private static void drawn(MainWindow window) {
    boolean[] there = new boolean[1];
    WindowRobot.doOnEvents(() -> window.parts().whenDrawn().accept(() -> there[0] = true));
    WindowRobot.doOnEvents(() -> window.parts().canvas().redraw());
    WindowRobot.doOnEvents(() -> window.workspace().edit(TreeEdits.name("Drawn")));
    new WindowRobot().waitFor("the tree is drawn", () -> there[0]);
  }

  private static void tellOfMessage(MainWindow window) {
    WindowRobot robot = new WindowRobot();
    System.out.println(robot.words("canvas.message"));
    WindowRobot.doOnEvents(() -> window.choose(1));
    WindowRobot.doOnEvents(() -> window.commands().run("tree.table"));
    System.out.println("table " + (robot.find("measure.table").getHeight() > 100));
    boolean made = WindowRobot.onEvents(() -> window.workspace().edit(TreeEdits.name("Mine")));
    System.out.println("edited " + made);
    long told =
        WindowRobot.onEvents(window.status()::notices).stream()
            .map(Notice::words)
            .filter(words -> words.contains("OpenGL"))
            .count();
    System.out.println("told " + (told + 1));
  }

  /** Saves where there is no room, by key, and says what is told and what is on the disk. */
  private static void fillUp(MainWindow window, Path file) {
    WindowRobot robot = new WindowRobot();
    try {
      byte[] before = Files.readAllBytes(file);
      Path filler = file.resolveSibling("filler");
      fill(filler);
      WindowRobot.doOnEvents(() -> window.workspace().edit(TreeEdits.name("Full ".repeat(40))));
      javax.swing.SwingUtilities.invokeLater(() -> window.commands().run("file.save"));
      System.out.println(robot.words("trouble.0"));
      System.out.println("one " + !robot.isThere("trouble.1"));
      robot.click("sheet.close");
      robot.waitFor("it is read", () -> !robot.isThere("trouble.0"));
      System.out.println("same " + java.util.Arrays.equals(before, Files.readAllBytes(file)));
      System.out.println("unsaved " + !window.workspace().history().isSaved());
      try (var left = Files.list(file.getParent())) {
        System.out.println("files " + left.map(p -> p.getFileName().toString()).sorted().toList());
      }
    } catch (IOException e) {
      System.out.println(e);
    }
  }

  private static void fill(Path filler) throws IOException {
    byte[] block = new byte[1024];
    try (var out = Files.newOutputStream(filler)) {
      while (true) {
        out.write(block);
      }
    } catch (IOException e) {
      // now it is full
      return;
    }
  }

  @Test
  void openedAndClosed_itEndsWithoutAWord() throws Exception {
    Graphics.require();
    WindowRobot.requireDisplay();
    Ended ended = run(List.of(), Map.of(), "close", "view", larch().toString());
    assertThat(ended.err()).isEmpty();
    assertThat(ended.out()).isEmpty();
    assertThat(ended.code()).isZero();
  }

  @Test
  void withoutOpenGl_itSaysSoOnce_andTableAndEditsWork() throws Exception {
    WindowRobot.requireDisplay();
    Map<String, String> none =
        Map.of("LIBGL_DRIVERS_PATH", "/nothing", "__EGL_VENDOR_LIBRARY_DIRS", "/nothing");
    Ended ended = run(List.of(), none, "without-graphics", "view", larch().toString());
    Assumptions.assumeFalse(ended.out().isEmpty(), "drivers cannot be hidden on this system");
    assertThat(ended.out().get(0))
        .contains("OpenGL 3.3", "Install Mesa")
        .doesNotContain("leave the picture out");
    assertThat(ended.out().subList(1, 4)).containsExactly("table true", "edited true", "told 1");
    assertThat(ended.code()).isZero();
  }

  /** A disk of 300 kB in a namespace of its own, where the system lets a process have one. */
  @Test
  void onAFullDisk_oneMessage_theOldFileStays_andNothingIsLost() throws Exception {
    WindowRobot.requireDisplay();
    Path disk = Files.createDirectory(folder.resolve("disk"));
    String mount = "mount -t tmpfs -o size=300k none '" + disk + "'";
    boolean can = new ProcessBuilder("unshare", "-rm", "sh", "-c", mount).start().waitFor() == 0;
    Assumptions.assumeTrue(can, "no disk of its own can be had here");
    String script = mount + " && cp '" + larch() + "' '" + disk + "' && exec \"$@\"";
    Ended ended =
        run(
            List.of("unshare", "-rm", "sh", "-c", script, "sh"),
            Map.of(),
            "full",
            "view",
            disk.resolve("larch.tree.json").toString());
    assertThat(ended.out()).hasSize(5);
    assertThat(ended.out().get(0)).contains("larch.tree.json", "not saved", "No space left");
    assertThat(ended.out().subList(1, 5))
        .containsExactly(
            "one true", "same true", "unsaved true", "files [filler, larch.tree.json]");
  }
}
