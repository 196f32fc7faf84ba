// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.physics.grow.CutTime;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialSpecies;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Figures of plans for the invented hornbeam of the examples. */
class PlanFiguresTest {
  private static Document document;

  @BeforeAll
  static void read() throws InputException {
    document = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
  }

  private static PlanFigures figures(Plan plan) {
    Trying.Watch nobody =
        new Trying.Watch() {
          @Override
          public void now(String what) {}

          @Override
          public void part(double done) {}
        };
    Trying trying =
        new Trying(Optional.empty(), Said.only(LocalDate.of(2026, 3, 5)), Optional.empty());
    TrialRequest request = TrialRequest.of(document.tree(), plan, TrialSpecies.of(document.tree()));
    Trying.Tried tried = trying.whole(request, "plan " + plan.id(), nobody);
    return PlanFigures.of(document, tried, CutTime.BEFORE_MIDSUMMER);
  }

  private static Plan unbent(List<Spot> cuts, Optional<String> apex) {
    return new PlanDraft("x").cuts(cuts).apex(apex).build();
  }

  private static List<Trace.Kind> kinds(PlanFigures figures) {
    return figures.traces().stream().map(Trace::kind).toList();
  }

  /** By hand from the file: t7 is 26 mm thick at its start and 21 mm at its end, cut at 0.1. */
  @Test
  void planOfTheFile_leavesItsCutAndTheWoundsThatStay() {
    PlanFigures figures = figures(document.plan("a").orElseThrow());
    List<OpenWound> made = figures.wounds().stream().filter(OpenWound::isNew).toList();
    assertThat(made).hasSize(1);
    assertThat(made.get(0).closure().width()).isCloseTo(0.0255, within(1e-9));
    assertThat(made.get(0).area()).isCloseTo(Math.PI * 0.0255 * 0.0255 / 4, within(1e-12));
    assertThat(figures.wounds().size() - 1)
        .isEqualTo(
            (int)
                document.tree().wounds().stream()
                    .filter(wound -> !List.of("t8", "t9").contains(wound.segment()))
                    .count());
    assertThat(figures.woundArea()).isGreaterThan(made.get(0).area());
    assertThat(figures.takeover().orElseThrow().ratio()).isCloseTo(15.5 / 38.6, within(0.005));
    assertThat(figures.thickening().likely()).isPositive();
    assertThat(figures.front().orElseThrow().pose().azimuth())
        .isEqualTo(document.plan("a").orElseThrow().frontAzimuth().orElseThrow());
    assertThat(figures.front().orElseThrow().total()).isBetween(0.0, 1.0);
    assertThat(kinds(figures)).contains(Trace.Kind.LINES, Trace.Kind.CUTS, Trace.Kind.PLANTING);
    Planting planting = document.plan("a").orElseThrow().planting().orElseThrow();
    assertThat(
            figures.traces().stream()
                .filter(trace -> trace.kind() == Trace.Kind.PLANTING)
                .findFirst()
                .orElseThrow()
                .amount())
        .isEqualTo(planting.tilt());
  }

  @Test
  void planThatDoesNothing_leavesNothingAndStandsAsMeasured() {
    PlanFigures figures = figures(unbent(List.of(), Optional.of("a7")));
    assertThat(figures.height().orElseThrow()).isCloseTo(0.434193, within(1e-6));
    assertThat(figures.wounds()).noneMatch(OpenWound::isNew);
    assertThat(figures.traces()).isEmpty();
    FrontCase measured = FrontCase.of(document, Optional.of(figures.plan()), FrontWishes.UNSAID);
    assertThat(figures.front().orElseThrow().total())
        .isCloseTo(
            FrontRules.of(FrontWishes.UNSAID)
                .score(measured.gauge().read(FrontPose.upright(0)))
                .total(),
            within(1e-9));
    assertThat(figures(unbent(List.of(), Optional.empty())).height().orElseThrow())
        .isCloseTo(0.354287, within(1e-6));
  }

  /** Each cut that takes a whole segment leaves one face, and what sits on it none of its own. */
  @Test
  void branchTakenWhole_leavesOneWoundOfItsCaliper() {
    PlanFigures figures = figures(unbent(List.of(new Spot("b1", 0)), Optional.empty()));
    List<OpenWound> made = figures.wounds().stream().filter(OpenWound::isNew).toList();
    assertThat(made).hasSize(1);
    assertThat(made.get(0).closure().width()).isCloseTo(0.0118, within(1e-9));
    assertThat(kinds(figures)).containsExactly(Trace.Kind.CUTS);
    assertThat(Trace.Kind.CUTS.canBeUndone()).isFalse();
    assertThat(Trace.Kind.LINES.canBeUndone()).isTrue();
  }
}
