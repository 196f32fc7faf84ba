// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.hold.WireMetal;
import boughwright.physics.hold.WireWound;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.wood.WoodSection;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges wire from the bare branch in its bent pose: how hard the wood pulls back at some sections,
 * and what a coil there stands.
 */
final class WireJudge {
  /** Sections looked at along a piece that bends. */
  private static final int SECTIONS = 6;

  /** Sections with less than this part of the hardest pull do not decide [1]. */
  private static final double COUNTS = 0.1;

  private final TreeRods rods;
  private final RodPose pose;
  private final HandBend hand;
  private final List<Place> places = new ArrayList<>();
  private double thickest;
  private double thinnest = Double.POSITIVE_INFINITY;
  private double hardest;

  /**
   * A section of the bent branch.
   *
   * @param coiled diameter over bark where the coil lies, else 0 [m]
   * @param wood the wood, before it was bent
   * @param moment its moment in the pose [N m]
   * @param strain its strain there
   * @param across what a strain moves along the hand's direction [m2]
   */
  private record Place(
      double coiled, WoodSection wood, double moment, Vector3 strain, Vector3 across) {
    double moves(double e1, double e2) {
      return e1 * across.x() + e2 * across.y();
    }
  }

  WireJudge(HeldTree forced, HandBend hand, CoilPath path) {
    rods = forced.rods();
    pose = forced.solution().pose();
    this.hand = hand;
    Skeleton skeleton = rods.timber().skeleton();
    int i = skeleton.indexOf(hand.at().segment());
    Point3 there = forced.point(i, hand.at().along() * skeleton.length(i));
    for (int span = 0; span < rods.spans().size(); span++) {
      if (pose.loadedTo(span) > 0) {
        look(span, path, there);
      }
    }
  }

  private void look(int span, CoilPath path, Point3 there) {
    int segment = rods.run(span).piece().segment();
    double loaded = pose.loadedTo(span);
    for (int k = 0; k < SECTIONS; k++) {
      double s = loaded * (k + 0.5) / SECTIONS;
      double at = rods.run(span).toSegment(s);
      boolean coiled =
          path.stretches().stream()
              .anyMatch(one -> one.segment() == segment && at > one.low() && at < one.high());
      RodSection section = pose.section(span, s);
      Vector3 arm = there.minus(section.position());
      Vector3 lever = arm.cross(hand.direction().vector()).times(loaded / SECTIONS);
      Vector3 across = section.frame().inverse().turn(lever);
      double caliper = coiled ? 2 * rods.timber().barkRadius(segment, at) : 0;
      double moment = section.bendingMoment();
      places.add(new Place(caliper, rods.section(span, s), moment, section.strain(), across));
      if (coiled) {
        thickest = Math.max(thickest, caliper);
        thinnest = Math.min(thinnest, caliper);
        hardest = Math.max(hardest, moment);
      }
    }
  }

  /** Diameter over bark of the thickest wood that the coil covers and the hand bends [m]. */
  double thickest() {
    return thickest;
  }

  /** Likewise of the thinnest [m]; infinite where the coil covers nothing that is bent. */
  double thinnest() {
    return thinnest;
  }

  /** What stays with no wire, over the movement [1]. */
  double alone() {
    double stays = 0;
    double bent = 0;
    for (Place place : places) {
      Vector3 strain = place.strain;
      double[] left = place.wood.bentTo(strain.x(), strain.y()).strainUnder(0, 0, 0);
      stays += place.moves(left[0], left[1]);
      bent += place.moves(strain.x(), strain.y());
    }
    return stays / bent;
  }

  /**
   * What one strand stands over what the wood pulls back with, at the weakest place [1].
   *
   * @param metal its metal
   * @param shape how it lies
   */
  double strength(WireMetal metal, CoilShape shape) {
    double thick = new WireWound(metal, shape, thickest).holds();
    double thin = new WireWound(metal, shape, thinnest).holds();
    double weakest = Double.POSITIVE_INFINITY;
    for (Place place : places) {
      if (place.coiled > 0 && place.moment > COUNTS * hardest) {
        double part = thickest > thinnest ? (place.coiled - thinnest) / (thickest - thinnest) : 0;
        weakest = Math.min(weakest, (thin + part * (thick - thin)) / place.moment);
      }
    }
    return weakest;
  }
}
