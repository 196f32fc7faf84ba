// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@OnScreen
class SnapshotsTest {
  private static final Snapshots.Size SIZE = new Snapshots.Size(320, 260);

  @TempDir private Path folder;
  private CanvasWindow window;

  @BeforeEach
  void open() {
    WindowRobot.requireDisplay();
    window = new CanvasWindow();
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private Snapshots snapshots() {
    return WindowRobot.onEvents(window.canvas::snapshots);
  }

  private static int inked(BufferedImage image, int left, int right) {
    int paper = image.getRGB(1, 1);
    int inked = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = left; x < right; x++) {
        inked += image.getRGB(x, y) == paper ? 0 : 1;
      }
    }
    return inked;
  }

  @Test
  void save_writesAPictureOfTheSizeThatWasAskedFor() throws Exception {
    Path file = folder.resolve("tree.png");
    snapshots().save(file, new Snapshots.Size(1000, 400));
    BufferedImage saved = ImageIO.read(file.toFile());
    assertThat(saved.getWidth()).isEqualTo(1000);
    assertThat(saved.getHeight()).isEqualTo(400);
    assertThat(inked(saved, 0, 1000)).isGreaterThan(5000);
  }

  @Test
  void layersBehind_lieWhereTheyLieOnTheScreen() throws Exception {
    WindowRobot.doOnEvents(
        () ->
            window.canvas.add(
                pen -> {
                  pen.setColor(java.awt.Color.RED);
                  pen.fillRect(0, 0, 40, 20);
                },
                CanvasLayer.Place.BEHIND));
    Snapshots taken = snapshots();
    Snapshots.Size seen = taken.size();
    BufferedImage twice = taken.picture(new Snapshots.Size(2 * seen.width(), 2 * seen.height()));
    assertThat(twice.getRGB(77, 37)).isEqualTo(java.awt.Color.RED.getRGB());
    assertThat(twice.getRGB(83, 37)).isNotEqualTo(java.awt.Color.RED.getRGB());
    assertThat(twice.getRGB(77, 43)).isNotEqualTo(java.awt.Color.RED.getRGB());
  }

  @Test
  void turntable_writesNumberedViews_eachWithTheWholeTree() throws Exception {
    List<Double> told = new ArrayList<>();
    List<Path> files = snapshots().saveTurntable(folder, 6, SIZE, told::add);
    assertThat(files)
        .extracting(file -> file.getFileName().toString())
        .containsExactly(
            "view-001.png",
            "view-002.png",
            "view-003.png",
            "view-004.png",
            "view-005.png",
            "view-006.png");
    assertThat(told).hasSize(6).endsWith(1.0);
    List<BufferedImage> views = new ArrayList<>();
    for (Path file : files) {
      views.add(ImageIO.read(file.toFile()));
    }
    assertThat(views).allSatisfy(view -> assertThat(inked(view, 0, 320)).isGreaterThan(2500));
    assertThat(differ(views.get(0), views.get(3))).isGreaterThan(1000);
  }

  private static int differ(BufferedImage one, BufferedImage other) {
    int differ = 0;
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        differ += one.getRGB(x, y) == other.getRGB(x, y) ? 0 : 1;
      }
    }
    return differ;
  }

  @Test
  void turntable_thatIsStopped_leavesWholeViewsOnly() throws IOException {
    Snapshots taken = snapshots();
    assertThatThrownBy(
            () ->
                taken.saveTurntable(
                    folder,
                    6,
                    SIZE,
                    done -> {
                      if (done > 0.3) {
                        throw new CancellationException("stopped");
                      }
                    }))
        .isInstanceOf(CancellationException.class);
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left)
          .hasSize(2)
          .allSatisfy(file -> assertThat(ImageIO.read(file.toFile())).isNotNull());
    }
  }

  @Test
  void pair_showsMeasuredLeft_andBentRight() throws Exception {
    window.answer();
    BufferedImage pair = snapshots().pair(new Snapshots.Size(800, 360));
    assertThat(pair.getWidth()).isEqualTo(800);
    assertThat(inked(pair, 0, 400)).isGreaterThan(4000);
    assertThat(inked(pair, 400, 800)).isGreaterThan(4000);
    assertThat(differ(pair.getSubimage(0, 40, 400, 320), pair.getSubimage(400, 40, 400, 320)))
        .isGreaterThan(1500);
  }

  @Test
  void save_intoAFolderThatIsNotThere_saysSo_andChangesNothing() throws IOException {
    Path file = folder.resolve("nowhere").resolve("tree.png");
    Snapshots taken = snapshots();
    assertThatThrownBy(() -> taken.save(file, SIZE))
        .isInstanceOfSatisfying(
            InputException.class,
            e -> assertThat(e.problems().get(0).line()).contains("folder is not there"));
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).isEmpty();
    }
  }

  @Test
  void size_outsideTheLimits_isRefusedWithThem() {
    assertThatThrownBy(() -> new Snapshots.Size(7000, 500))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("100 to 6000");
  }

  @Test
  void copy_putsWhatIsSeenOnTheClipboard() throws Exception {
    WindowRobot.doOnEvents(window.canvas::copy);
    BufferedImage copied =
        (BufferedImage)
            Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);
    assertThat(copied.getWidth()).isEqualTo(window.view().getWidth());
    assertThat(inked(copied, 0, copied.getWidth())).isGreaterThan(5000);
  }
}
