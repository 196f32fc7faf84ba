// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Framing;
import boughwright.viewer.scene.InventedCourses;
import boughwright.viewer.scene.LiveScene;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Palette;
import boughwright.viewer.scene.Pose;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.scene.Visibility;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Pictures that once were looked at and found good.
 *
 * <p>{@code -Dboughwright.golden=write} writes them anew; then look at each before it is kept.
 *
 * <p>Tolerance: drivers place and blend the samples of an edge pixel differently, and newer ones
 * round shades differently; on a picture of this size no more than {@link #OTHER_PIXELS} of the
 * covered pixels may differ by more than {@link #OTHER_SHADE} steps of 255, and the mean difference
 * stays under {@link #MEAN_SHADE}. A limb, a ghost or a colour that is missing changes several
 * hundredths of them.
 */
class GoldenTest {
  private static final int OTHER_SHADE = 40;
  private static final double OTHER_PIXELS = 0.015;
  private static final double MEAN_SHADE = 2;
  private static final Path FOLDER = Path.of("src/test/resources/boughwright/viewer/gl/golden");
  private static final Plan PLAN = InventedCourses.lined();
  private static final Document BOXED = InventedCourses.document(PLAN);
  private static final LiveTree TREE = new LiveTree(BOXED.tree(), Optional.of(PLAN));
  private static SceneRenderer renderer;

  /** What is drawn. */
  enum Case {
    MEASURED,
    BENT_WITH_GHOST,
    STAGES_FROM_ABOVE,
    DIMMED_IN_PERSPECTIVE,
    BENT_ON_DARK
  }

  @BeforeAll
  static void open() {
    renderer = Graphics.open();
  }

  @AfterAll
  static void close() {
    if (renderer != null) {
      renderer.close();
    }
  }

  private static Camera camera(Case wanted) {
    ViewAngle angle =
        switch (wanted) {
          case STAGES_FROM_ABOVE -> new ViewAngle(0.4, 0.9);
          case DIMMED_IN_PERSPECTIVE -> new ViewAngle(-0.6, 0.25);
          default -> ViewAngle.level(0);
        };
    Camera flat = new Camera(angle, TREE.base(), 300, 200, 190, 3);
    Camera camera =
        wanted == Case.DIMMED_IN_PERSPECTIVE ? flat.withEye(Framing.eye(300, 190)) : flat;
    Framing.Margins margins = new Framing.Margins(8, 8, 8, 8);
    return Framing.fit(camera, TREE.capsules(TREE.measured()).frame(), margins);
  }

  private static TrialResult bent(double part) {
    return InventedCourses.bent(BOXED.tree(), PLAN, part);
  }

  private static Shown shown(Case wanted) {
    boolean measured = wanted == Case.MEASURED;
    Optional<TrialResult> trial = measured ? Optional.empty() : Optional.of(bent(1));
    Pose pose = trial.map(TREE::bent).orElse(TREE.measured());
    Shown.Ghost before = new Shown.Ghost(TREE.measured(), Optional.empty());
    List<Shown.Ghost> ghosts =
        switch (wanted) {
          case MEASURED, DIMMED_IN_PERSPECTIVE -> List.of();
          case STAGES_FROM_ABOVE -> List.of(before, stage(0), stage(1));
          default -> List.of(before);
        };
    Visibility visibility =
        wanted == Case.DIMMED_IN_PERSPECTIVE
            ? new Visibility(Set.of("b1"), Set.of("l2", "l3"))
            : Visibility.ALL;
    Optional<StrainScale> scale = measured ? Optional.empty() : Optional.of(new StrainScale(0.03));
    return new Shown(
        TREE,
        Optional.of(PLAN),
        trial,
        pose,
        ghosts,
        visibility,
        new Shown.Options(scale, true, List.of()));
  }

  private static Shown.Ghost stage(int n) {
    return new Shown.Ghost(TREE.bent(bent((n + 1) / 3.0)), Optional.of(Palette.stage(n, 2)));
  }

  private static BufferedImage draw(Case wanted) {
    SceneRenderer.Ground ground =
        new SceneRenderer.Ground(Quality.STILL, wanted == Case.BENT_ON_DARK);
    Raster raster = renderer.draw(new LiveScene().make(shown(wanted)), camera(wanted), 1, ground);
    int paper = wanted == Case.BENT_ON_DARK ? 0x1B1D1A : 0xF7F4ED;
    BufferedImage image =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < raster.height(); y++) {
      for (int x = 0; x < raster.width(); x++) {
        image.setRGB(x, y, over(raster.pixel(x, y), paper));
      }
    }
    return image;
  }

  private static int over(int premultiplied, int paper) {
    int clear = 255 - (premultiplied >>> 24);
    int sum = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      int part = (premultiplied >> shift & 255) + (paper >> shift & 255) * clear / 255;
      sum |= Math.min(255, part) << shift;
    }
    return sum;
  }

  @ParameterizedTest
  @EnumSource(Case.class)
  void picture_isTheOneThatWasFoundGood(Case wanted) throws IOException {
    BufferedImage drawn = draw(wanted);
    Path file = FOLDER.resolve(wanted.name().toLowerCase(java.util.Locale.ROOT) + ".png");
    if ("write".equals(System.getProperty("boughwright.golden"))) {
      Files.createDirectories(FOLDER);
      ImageIO.write(drawn, "png", file.toFile());
    }
    BufferedImage golden = ImageIO.read(file.toFile());
    assertThat(golden.getWidth()).isEqualTo(drawn.getWidth());
    assertThat(golden.getHeight()).isEqualTo(drawn.getHeight());
    int paper = golden.getRGB(0, 0);
    int covered = 0;
    int other = 0;
    double sum = 0;
    for (int y = 0; y < drawn.getHeight(); y++) {
      for (int x = 0; x < drawn.getWidth(); x++) {
        int difference = difference(golden.getRGB(x, y), drawn.getRGB(x, y));
        covered += golden.getRGB(x, y) != paper ? 1 : 0;
        other += difference > OTHER_SHADE ? 1 : 0;
        sum += difference;
      }
    }
    assertThat(covered).as("something is drawn").isGreaterThan(2000);
    assertThat((double) other / covered).isLessThan(OTHER_PIXELS);
    assertThat(sum / covered).isLessThan(MEAN_SHADE);
  }

  private static int difference(int one, int two) {
    int most = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      most = Math.max(most, Math.abs((one >> shift & 255) - (two >> shift & 255)));
    }
    return most;
  }
}
