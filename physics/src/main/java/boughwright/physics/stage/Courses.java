// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Stage;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeWood;
import boughwright.physics.grow.GrowingSeason;
import boughwright.physics.grow.GrowthCalendar;
import boughwright.physics.grow.TreeKind;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.PartRisk;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.wood.Creep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans a bend over time: stages as the plan gives them, else as the wood and the risk asked for
 * allow; the waits between; what is left of the pull; when it stays, and when wire bites. Three
 * trees go through it, one where all goes slowly, one as best guessed, one where all goes fast.
 */
public final class Courses {
  private static final double WEEK = 7 * GrowthCalendar.DAY;

  /** Time changes the pull by tens of per cent; the usual accuracy would cost twice as much. */
  private static final RodOptions ROUGH =
      new RodOptions(RodOptions.Route.FOLLOWED, 1e-4, 1e-3, 1e-2, 3, RodOptions.Doubt.THOROUGH);

  private final TrialRequest request;
  private final TrialResult full;
  private final CourseOptions options;
  private final CourseNotes notes;
  private final boolean ownWeight;
  private final YearlyRing ring;
  private final GrowthCalendar calendar;

  private Courses(TrialRequest request, TrialResult full, CourseOptions options) {
    this.request = TiedOff.of(request, full, ROUGH);
    this.full = full;
    this.options = options;
    notes = new CourseNotes(request, options);
    ownWeight = request.plan().selfWeight();
    ring = YearlyRing.of(request.tree().setting());
    calendar =
        new GrowthCalendar(
            options.start(),
            options.hemisphere().or(() -> request.tree().condition().hemisphere()),
            GrowingSeason.of(TreeKind.of(request.species())));
  }

  /**
   * The course of a plan.
   *
   * @param request what is tried
   * @param full what came of it, whole and at once; with its risk, stages keep within the odds
   *     asked for
   * @param options what is asked
   */
  public static Course of(TrialRequest request, TrialResult full, CourseOptions options) {
    return new Courses(request, full, options).plan();
  }

  private Course plan() {
    if (!full.outcome().holds()) {
      return none(
          "No pose holds with all of the pull, so there is nothing to reach in stages: make the"
              + " bend smaller, or tie it elsewhere.");
    }
    Schedule schedule = request.plan().schedule();
    StageParts parts = new StageParts(request, full, options.risk());
    double reached = schedule.stages().isEmpty() ? parts.reached() : 1;
    if (reached == 0) {
      return none(
          CourseWords.format(
              "Even the smallest part of this bend has odds of breaking above the %.1f %% asked"
                  + " for: no stage is given. Tie it elsewhere, or accept more risk.",
              100 * options.risk()));
    }
    boolean byHand =
        request.proposals().stream().anyMatch(proposal -> !proposal.handBends().isEmpty());
    List<Stage> stages = schedule.stages();
    if (stages.isEmpty()) {
      stages = byHand ? List.of(new Stage(0, reached)) : spaced(parts.upTo(reached));
    }
    return course(new Timetable(stages, schedule.release(), byHand), reached);
  }

  private static List<Stage> spaced(List<Double> parts) {
    double wait = StageWait.of(Creep.MIDDLE);
    List<Stage> stages = new ArrayList<>();
    for (int k = 0; k < parts.size(); k++) {
      stages.add(new Stage(k * wait, parts.get(k)));
    }
    return stages;
  }

  private Course none(String why) {
    List<String> said = new ArrayList<>(List.of(why));
    said.addAll(notes.repotting());
    return new Course(
        List.of(), List.of(), Course.Span.NEVER, Course.Span.NEVER, options.target(), 0, said);
  }

  private Course course(Timetable timetable, double reached) {
    FarEnd end = FarEnd.of(new Skeleton(request.tree()), full);
    List<CourseRun> runs =
        Scenario.all(ring, calendar).parallelStream()
            .map(scenario -> CourseRun.of(request, end, timetable, scenario))
            .toList();
    CourseBand band = new CourseBand(runs, timetable);
    CourseSteps steps = new CourseSteps(request, end, band, timetable);
    boolean held = Means.of(request.proposals()).hold();
    Course.Span bites = held ? steps.bites(ring, calendar) : Course.Span.NEVER;
    Course.Span stays = held ? band.stays(options.target()) : Course.Span.NEVER;
    return new Course(
        steps.all(pose -> PartRisk.breaking(full, pose), stays, bites),
        held ? band.samples() : List.of(),
        stays,
        bites,
        options.target(),
        band.isWhole() ? reached : band.reached(),
        said(timetable, reached, band, steps));
  }

  private List<String> said(
      Timetable timetable, double reached, CourseBand band, CourseSteps steps) {
    List<String> said = new ArrayList<>();
    if (reached < 1) {
      Optional<Double> whole = PartRisk.breaking(full, full).map(odds -> odds.p());
      said.add(
          CourseWords.format(
              "The whole bend has odds of breaking of %.0f %%, more than the %.1f %% asked for;"
                  + " waiting does not make wood stronger. The stages end at %.0f %% of it.",
              100 * whole.orElse(1.0), 100 * options.risk(), 100 * reached));
    }
    boolean held = Means.of(request.proposals()).hold();
    said.addAll(notes.unheld());
    said.addAll(held ? CourseNotes.weak(steps.keptByHolders()) : List.of());
    if (!band.isWhole()) {
      said.add("Further on no pose holds, so the course ends there.");
    }
    said.add(CourseWords.STOP);
    said.addAll(steps.jams());
    said.addAll(notes.repotting());
    if (!held) {
      return said;
    }
    said.addAll(notes.stays(band, timetable.release()));
    said.add(notes.wood(isElastic()));
    said.add(notes.growth(ring, calendar));
    said.addAll(counted(timetable));
    return said;
  }

  /** What is counted in a way of its own, in one sentence. */
  private List<String> counted(Timetable timetable) {
    List<String> ways = new ArrayList<>();
    if (timetable.byHand() && request.plan().schedule().stages().isEmpty()) {
      ways.add("what hands bend is bent at once, without stages");
    }
    if (TiedOff.changes(full)) {
      ways.add("a line given by its pull is tied off once it pulls that much");
    }
    if (ownWeight) {
      ways.add("own weight is left out, since the tree has long crept under it");
    }
    return ways.isEmpty() ? List.of() : List.of("Counted here: " + String.join("; ", ways) + ".");
  }

  private boolean isElastic() {
    return request.tree().wood() instanceof TreeWood.Own own
        && own.response().orElse(Response.FIBRE) == Response.ELASTIC;
  }

  /** A time in whole weeks, rounded up [s]. */
  static double weeks(double seconds) {
    return WEEK * Math.ceil(seconds / WEEK - 1e-9);
  }
}
