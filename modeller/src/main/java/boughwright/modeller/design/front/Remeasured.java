// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The tree as another person might have measured it. */
final class Remeasured {
  /** Nine places in ten are measured within this of the truth. Choice, no source [m]. */
  private static final double PLACE_ERROR = 3e-3;

  /** A wound's sizes are read as far off as that. Choice, no source [m]. */
  private static final double WOUND_ERROR = 1.5e-3;

  /** Nine in ten draws of a normal distribution lie within so many deviations. */
  private static final double NINE_IN_TEN = 1.6449;

  /** No error is more than this part of what is measured: a short internode stays one. */
  private static final double MOST_PART = 0.1;

  private final Skeleton skeleton;
  private final Random random;
  private final double caliperError;

  private Remeasured(Skeleton skeleton, long seed) {
    this.skeleton = skeleton;
    random = new Random(seed);
    caliperError = skeleton.tree().caliperError().orElse(Tree.USUAL_CALIPER_ERROR);
  }

  /** The tree measured another time; the same every time for the same seed. */
  static Tree of(Skeleton skeleton, long seed) {
    return new Remeasured(skeleton, seed).measure();
  }

  private Tree measure() {
    Tree tree = skeleton.tree();
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      segments.add(segment(i));
    }
    List<Wound> wounds = tree.wounds().stream().map(this::wound).toList();
    return new TreeDraft(tree).segments(segments).wounds(wounds).build();
  }

  private Segment segment(int i) {
    Segment one = skeleton.segment(i);
    double reach = skeleton.length(i);
    Vector3 off =
        new Vector3(
            error(PLACE_ERROR, reach), error(PLACE_ERROR, reach), error(PLACE_ERROR, reach));
    Point3 end = one.end().plus(off);
    return new Segment(
        one.id(),
        one.parent(),
        one.along(),
        one.joins(),
        one.kind(),
        one.start(),
        end,
        read(one.caliperStart(), caliperError),
        read(one.caliperEnd(), caliperError),
        one.bark(),
        one.live(),
        one.features(),
        one.extras());
  }

  private Wound wound(Wound one) {
    return new Wound(
        one.id(),
        one.segment(),
        one.along(),
        one.round(),
        read(one.width(), WOUND_ERROR),
        read(one.height(), WOUND_ERROR),
        one.seenOn(),
        one.extras());
  }

  private double read(double value, double error) {
    return value + error(error, value);
  }

  private double error(double nineInTen, double measured) {
    double most = MOST_PART * measured;
    double error = nineInTen / NINE_IN_TEN * random.nextGaussian();
    return Math.max(-most, Math.min(most, error));
  }
}
