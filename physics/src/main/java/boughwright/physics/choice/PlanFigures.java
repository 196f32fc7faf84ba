// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.choice;

import boughwright.modeller.design.front.Eye;
import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.apex.ApexSearch;
import boughwright.physics.apex.Takeover;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.Thickening;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.grow.Years;
import boughwright.physics.stage.Course;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.BentTree;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.SegmentTrial;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What plans of one tree are compared by.
 *
 * @param plan the plan
 * @param tried what came of it
 * @param wounds wounds that are on the tree then
 * @param height how high the apex is over the soil, bent and planted; empty where no pose holds [m]
 * @param takeover the largest step of caliper on the way to the apex; empty where there is none
 * @param thickening until that step is a believable one
 * @param front how good its front is at its planting angle, on the bent tree; empty where no pose
 *     holds or nothing that counts can be said
 * @param traces what it does to the tree
 */
public record PlanFigures(
    Plan plan,
    Trying.Tried tried,
    List<OpenWound> wounds,
    OptionalDouble height,
    Optional<Takeover> takeover,
    Years thickening,
    Optional<FrontScore> front,
    List<Trace> traces) {
  public PlanFigures {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(tried, "tried");
    wounds = List.copyOf(wounds);
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(takeover, "takeover");
    Objects.requireNonNull(thickening, "thickening");
    Objects.requireNonNull(front, "front");
    traces = List.copyOf(traces);
  }

  /**
   * The figures of a plan that was tried.
   *
   * @param document the tree as measured, and by what its fronts are judged
   * @param tried what came of the plan
   * @param time when its cuts are made
   */
  public static PlanFigures of(Document document, Trying.Tried tried, CutTime time) {
    Plan plan = tried.request().plan();
    Skeleton skeleton = new Skeleton(document.tree());
    WoodLeft wood = new WoodLeft(new Cutting(skeleton, plan.cuts()));
    List<Integer> way = TrunkLine.of(wood, plan.apex()).segments();
    List<OpenWound> wounds = OpenWound.all(wood, time);
    Optional<Takeover> takeover = Takeover.largest(wood, way);
    int cuts = (int) wounds.stream().filter(OpenWound::isNew).count();
    return new PlanFigures(
        plan,
        tried,
        wounds,
        height(skeleton, tried, way),
        takeover,
        takeover
            .map(
                step ->
                    Thickening.toPart(
                        step.thin(),
                        step.thick(),
                        ApexSearch.BELIEVABLE,
                        YearlyRing.of(document.tree().setting())))
            .orElse(Years.NONE),
        front(document, tried),
        Trace.all(plan, tried, cuts));
  }

  private static Optional<FrontScore> front(Document document, Trying.Tried tried) {
    if (!tried.trial().outcome().holds()) {
      return Optional.empty();
    }
    Plan plan = tried.request().plan();
    Skeleton bent = new Skeleton(BentTree.of(document.tree(), plan, tried.trial()).tree());
    Eye eye = FrontCase.of(document, Optional.of(plan), document.fronts().wishes()).eye();
    FrontPose pose =
        plan.planting()
            .map(planting -> FrontPose.of(plan.frontAzimuth().orElse(0), planting))
            .orElseGet(() -> FrontPose.upright(plan.frontAzimuth().orElse(0)));
    FrontCase tree = new FrontCase(bent, plan.cuts(), plan.apex(), eye, false);
    FrontScore score = FrontRules.of(document.fronts().wishes()).score(tree.gauge().read(pose));
    return Optional.of(score).filter(FrontScore::isSaid);
  }

  /** The end of the segment that is named as the apex; of the trunk where none is named. */
  private static OptionalDouble height(Skeleton skeleton, Trying.Tried tried, List<Integer> way) {
    Plan plan = tried.request().plan();
    Point3 base = skeleton.start(skeleton.outward(0));
    Direction3 up =
        plan.planting()
            .map(planting -> Standing.turn(planting).inverse().turn(Direction3.UP))
            .orElse(Direction3.UP);
    String apex = plan.apex().orElse(skeleton.segment(way.get(way.size() - 1)).id());
    return tried
        .trial()
        .segment(apex)
        .map(SegmentTrial::end)
        .map(end -> OptionalDouble.of(end.minus(base).dot(up.vector())))
        .orElse(OptionalDouble.empty());
  }

  /** The line that pulls hardest. */
  public Optional<LineTrial> hardest() {
    return tried.trial().lines().stream().max(Comparator.comparingDouble(LineTrial::tension));
  }

  /** The wound that takes longest to close. */
  public Optional<OpenWound> slowest() {
    return wounds.stream()
        .max(Comparator.comparingDouble(wound -> wound.closure().years().likely()));
  }

  /** The widest wound. */
  public Optional<OpenWound> widest() {
    return wounds.stream().max(Comparator.comparingDouble(wound -> wound.closure().width()));
  }

  /** The faces of all wounds together [m2]. */
  public double woundArea() {
    return wounds.stream().mapToDouble(OpenWound::area).sum();
  }

  /** When the bend stays by itself [s]; empty where nothing is bent, or no course was asked for. */
  public Optional<Course.Span> stays() {
    return tried.course().map(Course::stays);
  }
}
