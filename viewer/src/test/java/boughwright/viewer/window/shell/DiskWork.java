// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.Snapshots;
import boughwright.viewer.window.work.Notice;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** What a person does in a window while its disk is full and a folder takes nothing. */
final class DiskWork {
  private static final Snapshots.Size SIZE = new Snapshots.Size(400, 300);
  private static final int VIEWS = 40;
  private static final int LEFT = 64_000;

  private final Path disk;
  private final OwnDesk desk;
  private final WindowRobot robot;
  private final MainWindow window;

  private DiskWork(Path disk) {
    this.disk = disk;
    desk = new OwnDesk(disk.resolve("home"));
    robot = desk.robot();
    window = desk.window();
    desk.resize(1280, 860);
  }

  /**
   * Works, tells in lines what it sees, and ends.
   *
   * @param args a small disk with a tree, a folder with room, and a disk with a tree that cannot be
   *     written to
   */
  public static void main(String[] args) throws Exception {
    DiskWork there = new DiskWork(Path.of(args[0]));
    there.fullDisk(Path.of(args[1]));
    there.readOnly(Path.of(args[2]));
    TestDesk.closeAll();
    System.exit(0);
  }

  private static void tell(String what, Object words) {
    System.out.println(what + ": " + String.valueOf(words).replace('\n', '|'));
  }

  private Path open(Path file) {
    desk.open(file);
    robot.waitFor("it is open", () -> desk.workspace().file().equals(Optional.of(file)));
    return file;
  }

  private void fullDisk(Path room) throws Exception {
    Path file = open(disk.resolve("larch.tree.json"));
    Path settings = disk.resolve("home").resolve("settings.json");
    robot.waitFor("it is remembered", () -> Files.exists(settings) && holds(settings, "larch"));
    byte[] tree = Files.readAllBytes(file);
    byte[] known = Files.readAllBytes(settings);
    Path picture = Files.writeString(disk.resolve("old.png"), "an older picture");
    fill();
    WindowRobot.doOnEvents(() -> window.commands().run("view.unit-in"));
    tell("settings", said("not remembered"));
    WindowRobot.doOnEvents(() -> desk.workspace().edit(TreeEdits.name("Full ".repeat(40))));
    tell("autosave", said("power cut"));
    toTree();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    tell("tree", robot.words("trouble.0"));
    tell("one", !robot.isThere("trouble.1"));
    tell("unsaved", WindowRobot.onEvents(window::getTitle).endsWith("not saved"));
    WindowRobot.doOnEvents(() -> desk.workspace().edit(TreeEdits.name("Fuller ".repeat(40))));
    robot.click("answer.elsewhere");
    desk.answerFile(room.resolve("saved.tree.json"));
    robot.waitFor("it is saved", () -> desk.workspace().history().isSaved());
    tell("elsewhere", TreeFiles.read(room.resolve("saved.tree.json")).document().tree().name());
    pictures(picture);
    tell("as before", same(file, tree) && same(settings, known));
    tell("old picture", Files.readString(picture));
    tell("files", files());
    tell("told once", count("power cut") + " " + count("not remembered"));
  }

  private void pictures(Path picture) throws Exception {
    Snapshots seen = WindowRobot.onEvents(() -> desk.canvas().snapshots());
    PictureWork work = new PictureWork(window);
    WindowRobot.doOnEvents(() -> work.save(seen, picture, SIZE));
    tell("picture", said("Saving old.png"));
    WindowRobot.doOnEvents(() -> work.savePair(seen, disk.resolve("pair.png"), SIZE));
    tell("pair", said("Saving pair.png"));
    Path none = disk.resolve("none");
    PictureWork.Round round = new PictureWork.Round(VIEWS, SIZE);
    WindowRobot.doOnEvents(() -> work.saveTurntable(seen, none, round));
    tell("no view", said("Saving none"));
    makeRoom();
    Path some = disk.resolve("some");
    WindowRobot.doOnEvents(() -> work.saveTurntable(seen, some, round));
    tell("some views", said("Saving some"));
    tell("whole views", whole(some));
  }

  private void readOnly(Path fixed) throws Exception {
    Path file = open(fixed.resolve("larch.tree.json"));
    WindowRobot.doOnEvents(() -> desk.workspace().edit(TreeEdits.name("Mine")));
    toTree();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    tell("fixed", robot.words("trouble.0"));
    tell("fixed offers", robot.words("answer.elsewhere"));
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("it is read", () -> !robot.isThere("trouble.0"));
    tell("fixed title", WindowRobot.onEvents(window::getTitle));
    Snapshots seen = WindowRobot.onEvents(() -> desk.canvas().snapshots());
    Path picture = file.resolveSibling("tree.png");
    WindowRobot.doOnEvents(() -> new PictureWork(window).save(seen, picture, SIZE));
    tell("fixed picture", said("Saving tree.png"));
  }

  private void toTree() {
    java.awt.Component view = desk.view();
    WindowRobot.doOnEvents(view::requestFocusInWindow);
    robot.waitFor("the tree has the keyboard", view::isFocusOwner);
  }

  /** Waits until something is said with these words in it. */
  private String said(String words) {
    robot.waitFor("it says " + words, () -> count(words) > 0);
    return WindowRobot.onEvents(
        () ->
            window.status().notices().stream()
                .map(Notice::words)
                .filter(one -> one.contains(words))
                .findFirst()
                .orElseThrow());
  }

  private long count(String words) {
    return WindowRobot.onEvents(
        () ->
            window.status().notices().stream()
                .filter(notice -> notice.words().contains(words))
                .count());
  }

  private static boolean holds(Path file, String words) throws IOException {
    return Files.readString(file).contains(words);
  }

  private static boolean same(Path file, byte[] bytes) throws IOException {
    return Arrays.equals(Files.readAllBytes(file), bytes);
  }

  private void fill() throws IOException {
    byte[] block = new byte[1024];
    try (var out = Files.newOutputStream(disk.resolve("filler"))) {
      while (true) {
        out.write(block);
      }
    } catch (IOException e) {
      // now it is full
      return;
    }
  }

  private void makeRoom() throws IOException {
    try (FileChannel filler = FileChannel.open(disk.resolve("filler"), StandardOpenOption.WRITE)) {
      filler.truncate(filler.size() - LEFT);
    }
  }

  /** Whether there are views, fewer than were asked for, each of them whole. */
  private static boolean whole(Path folder) throws IOException {
    try (Stream<Path> views = Files.list(folder)) {
      List<Path> all = views.toList();
      boolean whole = !all.isEmpty() && all.size() < VIEWS;
      for (Path view : all) {
        whole &= ImageIO.read(view.toFile()).getWidth() == SIZE.width();
      }
      return whole;
    }
  }

  /** All files but views. */
  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(disk)) {
      return all.filter(Files::isRegularFile)
          .map(file -> disk.relativize(file).toString())
          .filter(name -> !name.startsWith("some"))
          .sorted()
          .collect(Collectors.toList());
    }
  }
}
