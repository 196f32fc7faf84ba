// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the faults are looked for in: the shoots, how the tree stands, and the rules. Immutable. */
final class Structure {
  private final WoodLeft wood;
  private final List<Shoot> shoots;
  private final List<List<Shoot>> on;
  private final Optional<FrontPose> front;
  private final Rotation toViewer;
  private final ReviewRules rules;
  private final double height;

  Structure(WoodLeft wood, TrunkLine trunk, Optional<FrontPose> front, ReviewRules rules) {
    this.wood = wood;
    this.front = front;
    this.rules = rules;
    shoots = Shoots.of(wood, trunk);
    toViewer = front.map(FrontPose::toViewer).orElse(Rotation.NONE);
    List<List<Shoot>> lists = shoots.stream().<List<Shoot>>map(shoot -> new ArrayList<>()).toList();
    shoots.stream().skip(1).forEach(shoot -> lists.get(shoot.seat().on()).add(shoot));
    lists.forEach(list -> list.sort(Comparator.comparingDouble(shoot -> shoot.seat().at())));
    on = lists.stream().map(List::copyOf).toList();
    height = shoots.stream().mapToDouble(this::top).max().orElseThrow();
  }

  private double top(Shoot shoot) {
    return shoot.line().points().stream().mapToDouble(this::heightOf).max().orElseThrow();
  }

  WoodLeft wood() {
    return wood;
  }

  ReviewRules rules() {
    return rules;
  }

  double limit(Limit limit) {
    return rules.value(limit);
  }

  Measured measured(Limit limit, double value) {
    return new Measured(limit, value, rules.value(limit));
  }

  Optional<FrontPose> front() {
    return front;
  }

  List<Shoot> shoots() {
    return shoots;
  }

  Shoot main() {
    return shoots.get(0);
  }

  /** The trunk line, and the other trunks where the tree is to have several. */
  List<Shoot> stems() {
    return shoots.stream().filter(this::isStem).filter(Shoot::counts).toList();
  }

  boolean isStem(Shoot shoot) {
    return shoot.isMain() || !isBranch(shoot);
  }

  /** What leaves a shoot, from its start outward. */
  List<Shoot> on(Shoot shoot) {
    return on.get(shoot.number());
  }

  /** The branches and leaders on a shoot that are judged, from its start outward. */
  List<Shoot> judgedOn(Shoot shoot) {
    return on(shoot).stream().filter(this::isJudged).toList();
  }

  /** Whether a shoot is a branch or leader to be judged: alive, to stay, no twig and no stub. */
  boolean isJudged(Shoot shoot) {
    return shoot.counts() && !isTwig(shoot) && shoot.line().length() > shoot.seat().parentCaliper();
  }

  /**
   * Whether the rules of branches count for a shoot: for all of them where the tree is to have one
   * trunk, for no further trunk where it is to have several.
   */
  boolean isBranch(Shoot shoot) {
    return shoot.kind() != Kind.TRUNK || rules.hasOneTrunk();
  }

  boolean isTwig(Shoot shoot) {
    return shoot.seat().caliper() < limit(Limit.TWIG_CALIPER);
  }

  /** Above the trunk base, as the tree stands [m]. */
  double heightOf(Point3 point) {
    return seen(point.minus(base())).z();
  }

  /** A vector as the viewer sees it; without a front, from azimuth 0 [viewer]. */
  Vector3 seen(Vector3 vector) {
    return toViewer.turn(vector);
  }

  Point3 base() {
    return shoots.get(0).line().points().get(0);
  }

  double baseCaliper() {
    return main().line().caliper(0);
  }

  /** Of the highest wood above the trunk base [m]; 0 or less where all hangs below it. */
  double height() {
    return height;
  }
}
