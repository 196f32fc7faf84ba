// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.scene.Colour;
import boughwright.viewer.scene.Palette;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.scene.Vision;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The colours of the canvas as other eyes see them ({@link Vision}), by day and by night. */
@OnScreen
class CanvasColourTest {
  private static final Map<Tone, Colour> PAPERS = new EnumMap<>(Tone.class);
  private static final Map<Tone, Colour> PICKED = new EnumMap<>(Tone.class);
  private static final Map<Tone, Colour> PLATES = new EnumMap<>(Tone.class);
  private static final StrainScale SCALE = new StrainScale(0.03);

  /** The thinnest veil of translucent wood, facing the viewer (what the ghosts are drawn with). */
  private static final double GHOST_VEIL = 0.30;

  private static final double STAGE_VEIL = 0.34;
  private static final double DIMMED_FACE = 0.16;
  private static final double DIMMED_EDGE = 0.56;

  @BeforeAll
  static void takeTheColoursOfTheThemes() {
    WindowRobot.requireDisplay();
    for (Tone tone : Tone.values()) {
      WindowRobot.doOnEvents(
          () -> {
            Theme.apply(tone, TextSize.USUAL);
            PAPERS.put(tone, colour(Shade.PAPER));
            PLATES.put(tone, colour(Shade.RAISED));
            PICKED.put(tone, colour(Shade.SELECTION));
          });
    }
  }

  private static Colour colour(Shade shade) {
    return Colour.ofHex(Theme.colour(shade).getRGB());
  }

  static Stream<Arguments> eyes() {
    return Stream.of(Tone.values())
        .flatMap(tone -> Stream.of(Vision.values()).map(vision -> Arguments.of(tone, vision)));
  }

  private static Colour veiled(Colour tone, double cover, Colour paper) {
    return new Colour(
        tone.red() * cover + paper.red() * (1 - cover),
        tone.green() * cover + paper.green() * (1 - cover),
        tone.blue() * cover + paper.blue() * (1 - cover));
  }

  @ParameterizedTest
  @MethodSource("eyes")
  void outlineOfWhatIsPicked_isSeenOnPaper_bark_andStrain(Tone tone, Vision vision) {
    var picked = vision.sees(PICKED.get(tone));
    List<Colour> grounds =
        List.of(PAPERS.get(tone), Palette.BARK, SCALE.colour(0.03), SCALE.colour(-0.03));
    for (Colour ground : grounds) {
      assertThat(picked.difference(vision.sees(ground)))
          .as("%s", ground)
          .isGreaterThan(Vision.PLAIN);
    }
  }

  @ParameterizedTest
  @MethodSource("eyes")
  void ghosts_areSeenOnPaper(Tone tone, Vision vision) {
    Colour paper = PAPERS.get(tone);
    var ground = vision.sees(paper);
    assertThat(vision.sees(veiled(Palette.GHOST, GHOST_VEIL, paper)).difference(ground))
        .isGreaterThan(Vision.PLAIN);
    for (int n = 0; n < 3; n++) {
      assertThat(vision.sees(veiled(Palette.stage(n, 3), STAGE_VEIL, paper)).difference(ground))
          .as("stage %d", n)
          .isGreaterThan(Vision.PLAIN / 2);
    }
  }

  /** The veil of what is dimmed: thin where it faces the viewer, thicker at its edge. */
  @ParameterizedTest
  @MethodSource("eyes")
  void dimmedWood_isSeenOnPaper_andNotTakenForWoodThatIsShown(Tone tone, Vision vision) {
    Colour paper = PAPERS.get(tone);
    var edge = vision.sees(veiled(Palette.BARK, DIMMED_EDGE, paper));
    var face = vision.sees(veiled(Palette.BARK, DIMMED_FACE, paper));
    assertThat(edge.difference(vision.sees(paper))).as("edge").isGreaterThan(Vision.PLAIN);
    assertThat(face.difference(vision.sees(Palette.BARK))).isGreaterThan(Vision.PLAIN);
  }

  /** What is hovered over has the same outline, dashed, and words on a plate with such a rim. */
  @ParameterizedTest
  @MethodSource("eyes")
  void rimOfTheLabelAtTheMouse_isSeenOnPaper_andOnItsPlate(Tone tone, Vision vision) {
    var rim = vision.sees(PICKED.get(tone));
    for (Colour ground : List.of(PAPERS.get(tone), PLATES.get(tone), Palette.BARK)) {
      assertThat(rim.difference(vision.sees(ground))).isGreaterThan(Vision.PLAIN);
    }
  }

  /** Lightness falls all along on the squeezed side and rises on the other, for every eye. */
  @ParameterizedTest
  @MethodSource("eyes")
  void strain_isToldByLightnessAlone(Tone tone, Vision vision) {
    double[] lightness =
        IntStream.rangeClosed(-6, 6)
            .mapToDouble(n -> vision.sees(SCALE.colour(0.03 * n / 6)).lightness())
            .toArray();
    assertThat(lightness).isSorted();
    assertThat(lightness[12] - lightness[0]).isGreaterThan(4 * Vision.PLAIN);
    var ends = vision.sees(SCALE.colour(0.03)).difference(vision.sees(SCALE.colour(-0.03)));
    assertThat(ends).as("both ends, %s", tone).isGreaterThan(8 * Vision.PLAIN);
  }
}
