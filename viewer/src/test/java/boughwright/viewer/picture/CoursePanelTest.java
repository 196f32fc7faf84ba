// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.Range;
import boughwright.viewer.scene.Colour;
import boughwright.viewer.scene.InventedCourses;
import boughwright.viewer.scene.Lab;
import boughwright.viewer.scene.Vision;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What goes on over time, as a strip. */
class CoursePanelTest {
  private static final double DAY = InventedCourses.DAY;

  private static Course staged(Plan plan, int... days) {
    return InventedCourses.staged(InventedCourses.document(plan), days);
  }

  private static int count(BufferedImage image, Rect part, IntPredicate test) {
    int count = 0;
    for (int y = (int) part.y(); y < part.bottom(); y++) {
      for (int x = (int) part.x(); x < part.right(); x++) {
        count += test.test(image.getRGB(x, y) & 0xFFFFFF) ? 1 : 0;
      }
    }
    return count;
  }

  private static IntPredicate is(Color colour) {
    return rgb -> rgb == (colour.getRGB() & 0xFFFFFF);
  }

  private record Drawn(BufferedImage image, Rect room, Rect left) {
    int count(IntPredicate test) {
      return CoursePanelTest.count(
          image, new Rect(0, 0, image.getWidth(), image.getHeight()), test);
    }
  }

  private static Drawn drawn(Course course, int width, int height) {
    try (Page page = new Page(new PictureSize(width, height))) {
      Rect room = new Rect(40, 60, Math.rint(0.6 * width), height - 120);
      return new Drawn(page.image(), room, new CoursePanel(page, course).draw(room));
    }
  }

  @ParameterizedTest
  @CsvSource({"1800, 1200", "3600, 2400", "900, 600", "640, 480", "700, 1400"})
  void strip_leavesMostOfTheRoom_andDrawsNothingElsewhere(int width, int height) {
    Drawn drawn = drawn(staged(InventedCourses.crowded(), 0, 14, 28, 42, 56), width, height);
    assertThat(drawn.room().contains(drawn.left())).isTrue();
    assertThat(drawn.left().height()).isGreaterThan(0.6 * drawn.room().height());
    IntPredicate ink = is(Ink.PAPER).negate();
    Rect strip =
        new Rect(
            drawn.room().x() - 1,
            drawn.left().bottom(),
            drawn.room().width() + 2,
            drawn.room().bottom() - drawn.left().bottom() + 1);
    assertThat(count(drawn.image(), strip, ink)).isEqualTo(drawn.count(ink)).isPositive();
    assertThat(drawn.count(is(Ink.SPRINGBACK))).isGreaterThan(20);
    assertThat(drawn.count(is(Ink.SERIES.get(0)))).isGreaterThan(20);
  }

  @Test
  void coilsAlone_haveNoPullToPlot() {
    Course course = InventedCourses.byHand(InventedCourses.document(InventedCourses.coiled()));
    Drawn drawn = drawn(course, 1800, 1200);
    assertThat(drawn.count(is(Ink.SERIES.get(0)))).isZero();
    assertThat(drawn.count(is(Ink.SPRINGBACK))).isGreaterThan(300);
  }

  @Test
  void courseWithoutSamples_leavesAllTheRoom() {
    Course empty = InventedCourses.samplesOnly(List.of());
    Drawn drawn = drawn(empty, 1800, 1200);
    assertThat(drawn.left()).isEqualTo(drawn.room());
    assertThat(drawn.count(is(Ink.PAPER).negate())).isZero();
  }

  /** Springback known, then nothing holds: pulls at nothing, a bend that never stays. */
  @Test
  void slackLines_andABendThatNeverStays_areDrawn() {
    List<Course.Sample> samples = new ArrayList<>();
    for (int n = 0; n < 5; n++) {
      samples.add(
          new Course.Sample(
              n * 30 * DAY, 0, Map.of("g1", new Range(0, 0, 0)), new Range(0.8, 0.9, 1)));
    }
    Course course = InventedCourses.samplesOnly(samples);
    Drawn drawn = drawn(course, 1800, 1200);
    assertThat(drawn.count(is(Ink.APEX))).isGreaterThan(100);
    assertThat(drawn.count(is(Ink.SERIES.get(0)))).isGreaterThan(20);
  }

  @Test
  void manyLines_withLongNames_stayInTheirRoom() {
    List<Course.Sample> samples = new ArrayList<>();
    for (int n = 0; n < 9; n++) {
      Map<String, Range> pulls = new HashMap<>();
      for (int k = 0; k < 11; k++) {
        double pull = 10 + k - n;
        pulls.put("a-line-that-somebody-gave-a-long-name-" + k, new Range(pull, pull, pull + 1));
      }
      samples.add(new Course.Sample(n * n * DAY, 0, pulls, new Range(0.1, 0.2, 0.3)));
    }
    Course course = InventedCourses.samplesOnly(samples);
    Drawn drawn = drawn(course, 640, 480);
    IntPredicate ink = is(Ink.PAPER).negate();
    assertThat(count(drawn.image(), drawn.room().grown(1), ink)).isEqualTo(drawn.count(ink));
  }

  /** Colours of lines must be told apart as lines on paper, by every vision. */
  @ParameterizedTest
  @EnumSource(Vision.class)
  void linesOfOneDash_areToldApart_byEveryVision(Vision vision) {
    List<Lab> seen =
        Ink.SERIES.stream()
            .map(colour -> vision.sees(Colour.ofHex(colour.getRGB() & 0xFFFFFF)))
            .toList();
    for (int i = 0; i < seen.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (i / 3 == j / 3) {
          assertThat(seen.get(i).difference(seen.get(j)))
              .as("%d, %d", i, j)
              .isGreaterThan(Vision.PLAIN);
        }
      }
    }
  }

  @Test
  void timeScale_goesByTheCubeRoot_soThatADayAndAYearBothRead() {
    TimeScale scale = new TimeScale(1000 * DAY, 0, 100);
    assertThat(scale.at(0)).isZero();
    assertThat(scale.at(DAY)).isCloseTo(10, within(1e-9));
    assertThat(scale.at(8 * DAY)).isCloseTo(20, within(1e-9));
    assertThat(scale.at(1000 * DAY)).isCloseTo(100, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.3, 400", "30, 400", "730, 300", "730, 80", "4000, 1200"})
  void times_neverOverlap_andStartAtZero(double days, double width) {
    TimeScale scale = new TimeScale(days * DAY, 0, width);
    List<TimeScale.Tick> ticks = scale.ticks(words -> 8 * words.length(), 10);
    assertThat(ticks.get(0).time()).isZero();
    for (int n = 1; n < ticks.size(); n++) {
      double room =
          scale.at(ticks.get(n).time())
              - scale.at(ticks.get(n - 1).time())
              - 4 * (ticks.get(n).words().length() + ticks.get(n - 1).words().length());
      assertThat(room).isGreaterThanOrEqualTo(10 - 1e-9);
    }
  }

  @Test
  void names_areMovedApart_inOrder_insideTheirRoom() {
    double[] places = Spread.apart(new double[] {50, 51, 52, 99}, 15, new Spread.Room(0, 100));
    for (int n = 1; n < places.length; n++) {
      assertThat(places[n] - places[n - 1]).isGreaterThanOrEqualTo(15 - 1e-6);
    }
    assertThat(places[0]).isGreaterThanOrEqualTo(0);
    assertThat(places[3]).isLessThanOrEqualTo(100);
    double[] tight = Spread.apart(new double[] {5, 5, 5}, 15, new Spread.Room(0, 10));
    assertThat(tight).containsExactly(new double[] {0, 5, 10}, within(1e-9));
  }

  @Test
  void spans_areTold_asFarAsTheyAreKnown() {
    OptionalDouble day = OptionalDouble.of(40 * DAY);
    OptionalDouble none = OptionalDouble.empty();
    double year = 365.25 * DAY;
    assertThat(SpanWords.stays(Course.Span.NEVER, 2 * year))
        .containsExactly("does not stay by itself within 2 years");
    assertThat(SpanWords.stays(new Course.Span(day, none, none), 2 * year))
        .containsExactly("stays by itself after more than 2 years", "(40 days at the earliest)");
    assertThat(SpanWords.stays(InventedCourses.span(0.5 * year, year, 1.5 * year), 2 * year))
        .containsExactly("stays by itself after 12 months", "(6 to 18 months)");
    assertThat(SpanWords.stays(InventedCourses.span(year, year, year), 2 * year))
        .containsExactly("stays by itself after 12 months");
  }

  @Test
  void words_forSteps_areAPersonsOwn() {
    assertThat(StepMarks.words(Course.Act.LET_GO)).isEqualTo("let go");
    Document document = InventedCourses.document(InventedCourses.lined());
    Course course = InventedCourses.staged(document, 0, 14);
    assertThat(course.steps()).extracting(Course.Step::act).contains(Course.Act.TIGHTEN);
  }
}
