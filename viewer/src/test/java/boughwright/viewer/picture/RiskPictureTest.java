// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.InventedRisks;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.RiskView;
import boughwright.viewer.scene.Scene;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of a bend whose risk is known. */
class RiskPictureTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final TrialResult PLAIN = Bending.drawnIn(HEDGE.tree(), PLAN);
  private static final TrialResult RISKY = InventedRisks.with(PLAIN);

  @BeforeAll
  static void graphics() {
    Graphics.require();
  }

  private static int count(BufferedImage image, Rect part, int rgb) {
    int count = 0;
    for (int y = (int) part.y(); y < part.bottom(); y++) {
      for (int x = (int) part.x(); x < part.right(); x++) {
        count += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return count;
  }

  private static int rgb(java.awt.Color colour) {
    return colour.getRGB() & 0xFFFFFF;
  }

  private static RiskView view(TrialResult trial) {
    return Scene.of(HEDGE, Optional.of(PLAN), Optional.of(trial)).risk().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"1800, 1200", "3600, 2400", "640, 480", "700, 1400"})
  void panel_leavesRoomForViews_andDrawsOnlyOutsideIt(int width, int height) {
    try (Page page = new Page(new PictureSize(width, height))) {
      Rect room = new Rect(30, 60, width - 60, height - 120);
      Rect left = new RiskPanel(page, view(RISKY)).draw(room);
      assertThat(room.contains(left)).isTrue();
      assertThat(left.width() * left.height()).isGreaterThan(0.5 * room.width() * room.height());
      int paper = rgb(Ink.PAPER);
      assertThat(count(page.image(), left, paper)).isEqualTo((int) left.width() * height(left));
      Rect whole = new Rect(0, 0, width, height);
      assertThat(count(page.image(), whole, rgb(Ink.SQUEEZED))).isGreaterThan(50);
    }
  }

  private static int height(Rect rect) {
    int rows = 0;
    for (int y = (int) rect.y(); y < rect.bottom(); y++) {
      rows++;
    }
    return rows;
  }

  @Test
  void pictureWithRisk_showsCrackAndKink_inTheirColours() throws Exception {
    PictureSize size = new PictureSize(1200, 800);
    Rect whole = new Rect(0, 0, 1200, 800);
    BufferedImage risky = Picture.beforeAfter(HEDGE, PLAN, RISKY, size);
    BufferedImage plain = Picture.beforeAfter(HEDGE, PLAN, PLAIN, size);
    assertThat(count(risky, whole, rgb(Ink.STRETCHED)))
        .isGreaterThan(300 + count(plain, whole, rgb(Ink.STRETCHED)));
    assertThat(count(risky, whole, rgb(Ink.SQUEEZED)))
        .isGreaterThan(300 + count(plain, whole, rgb(Ink.SQUEEZED)));
  }

  @Test
  void poseThatDoesNotHold_hasAVerdict_butNoPanel() throws Exception {
    TrialResult failed =
        InventedRisks.with(
            Bending.failed(PLAN, new Outcome(false, false, 0, "at l1")),
            Optional.of(InventedRisks.risk(PLAIN)),
            Optional.of(InventedRisks.verdict()));
    BufferedImage image = Picture.beforeAfter(HEDGE, PLAN, failed, new PictureSize(1200, 800));
    Rect whole = new Rect(0, 0, 1200, 800);
    assertThat(count(image, whole, rgb(Ink.SQUEEZED))).isZero();
    assertThat(count(image, whole, rgb(Ink.TROUBLE))).isGreaterThan(100);
  }

  @Test
  void longNames_andManyWaysToFail_stayInTheirRoom() {
    List<FailureRisk> failures = new ArrayList<>();
    for (FailureMode mode : FailureMode.values()) {
      FailurePlace place =
          new FailurePlace(
              "l2-a-segment-whose-name-somebody-made-very-long-indeed",
              0.5,
              OptionalDouble.of(0.1),
              0,
              "underside");
      failures.add(
          new FailureRisk(
              mode, InventedRisks.ONE_IN_EIGHT, Optional.of(place), 1, InventedRisks.CRACK));
    }
    Risk risk = new Risk(failures, Map.of(), 0, List.of(), List.of(), 100, 1);
    try (Page page = new Page(new PictureSize(640, 480))) {
      Rect room = new Rect(400, 100, 200, 150);
      new RiskList(page, risk).draw(room);
      Rect whole = new Rect(0, 0, 640, 480);
      int inside =
          (int) room.width() * (int) room.height() - count(page.image(), room, rgb(Ink.PAPER));
      int all = 640 * 480 - count(page.image(), whole, rgb(Ink.PAPER));
      assertThat(all).isEqualTo(inside).isPositive();
    }
  }
}
