// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.LeafPads;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.design.sight.Ellipsoid;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The tree a front is chosen for, and from where it is looked at. Immutable.
 *
 * @param skeleton the tree as measured
 * @param cuts the cuts that are made
 * @param apex the segment that becomes the apex; empty for where the trunk leads
 * @param eye from how far up it is looked at
 * @param inLeaf whether its leaves hide what is behind them
 */
public record FrontCase(
    Skeleton skeleton, List<Spot> cuts, Optional<String> apex, Eye eye, boolean inLeaf) {
  /** How far away the eye is when only its height is said. Choice, no source [m]. */
  public static final double USUAL_DISTANCE = 0.8;

  public FrontCase {
    Objects.requireNonNull(skeleton, "skeleton");
    cuts = List.copyOf(cuts);
    Objects.requireNonNull(apex, "apex");
    Objects.requireNonNull(eye, "eye");
  }

  /** Whether a plan's cuts take away the trunk base, or its apex. */
  public static boolean isCutAway(Skeleton skeleton, Plan plan) {
    Cutting cutting = new Cutting(skeleton, plan.cuts());
    return cutting.isGone(skeleton.outward(0))
        || plan.apex().filter(apex -> cutting.isGone(skeleton.indexOf(apex))).isPresent();
  }

  /**
   * The tree as a plan's cuts leave it, up to its apex; uncut without a plan.
   *
   * @throws IllegalArgumentException if the cuts take trunk base or apex away
   */
  public static FrontCase of(Document document, Optional<Plan> plan, FrontWishes wishes) {
    Skeleton skeleton = new Skeleton(document.tree());
    List<Spot> cuts = plan.map(Plan::cuts).orElse(List.of());
    FrontCase level = new FrontCase(skeleton, cuts, plan.flatMap(Plan::apex), Eye.LEVEL, false);
    if (wishes.eyeHeight().isEmpty()) {
      return level;
    }
    Eye eye =
        Eye.at(
            wishes.eyeHeight().getAsDouble(),
            wishes.eyeDistance().orElse(USUAL_DISTANCE),
            level.height());
    return new FrontCase(skeleton, cuts, level.apex, eye, false);
  }

  /** The same tree in leaf, or bare. */
  public FrontCase inLeaf(boolean leaf) {
    return new FrontCase(skeleton, cuts, apex, eye, leaf);
  }

  /** Height of the tree as measured above the soil line [m]. */
  public double height() {
    return subject().wood().pieces().stream()
        .map(Frustum::end)
        .mapToDouble(end -> end.z())
        .max()
        .orElse(0);
  }

  /** What is looked at. */
  public FrontSubject subject() {
    return subject(skeleton);
  }

  private FrontSubject subject(Skeleton of) {
    WoodLeft wood = new WoodLeft(new Cutting(of, cuts));
    FrontSubject bare = FrontSubject.bare(wood, TrunkLine.of(wood, apex));
    return inLeaf
        ? bare.withFoliage(LeafPads.of(wood).shapes(of).stream().map(Ellipsoid::of).toList())
        : bare;
  }

  /** Ready to look at it. */
  public FrontGauge gauge() {
    return new FrontGauge(subject(), eye);
  }

  /** Ready to look at it as another person might have measured it, by number. */
  FrontGauge measuredAgain(long number) {
    return new FrontGauge(subject(new Skeleton(Remeasured.of(skeleton, number))), eye);
  }
}
