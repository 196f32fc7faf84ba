// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.SectionLine;
import boughwright.physics.wood.SectionShape;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodLine;

/**
 * The wood of every segment that the cuts leave: where it bends, how thick and how stiff it is.
 * Distances are from the start of the segment on its parent's axis.
 */
final class Timber {
  /** No reading is taken to be so wrong that less than this part of the radius is left [1]. */
  private static final double THINNEST = 0.25;

  private final Cutting cutting;
  private final Skeleton skeleton;
  private final TrialWood wood;
  private final AidWork aids;

  Timber(Cutting cutting, TrialWood wood) {
    this(cutting, wood, AidWork.NONE);
  }

  /**
   * The wood, worked on.
   *
   * @param cutting what the cuts leave
   * @param wood what is taken for true of it
   * @param aids what aids have done to it
   */
  Timber(Cutting cutting, TrialWood wood, AidWork aids) {
    this.cutting = cutting;
    this.wood = wood;
    this.aids = aids;
    skeleton = cutting.skeleton();
  }

  /** The same pieces of other wood. */
  Timber of(TrialWood other) {
    return new Timber(cutting, other, aids);
  }

  /** The same wood, worked on otherwise. */
  Timber with(AidWork others) {
    return new Timber(cutting, wood, others);
  }

  AidWork aids() {
    return aids;
  }

  Cutting cutting() {
    return cutting;
  }

  Skeleton skeleton() {
    return skeleton;
  }

  boolean isGone(int i) {
    return cutting.isGone(i);
  }

  /** Where a segment ends after the cuts [m]. */
  double end(int i) {
    return cutting.left(i) * skeleton.length(i);
  }

  /** Where a segment starts to bend [m]. */
  double bendsFrom(int i) {
    return Math.min(skeleton.collar(i), end(i));
  }

  /** True if a segment lies wholly inside its parent. */
  boolean isBuried(int i) {
    return skeleton.collar(i) >= end(i);
  }

  SegmentWood wood(int i) {
    return wood.segments().get(i);
  }

  /** Radius over bark [m]. */
  double barkRadius(int i, double s) {
    return skeleton.caliper(i, s / skeleton.length(i)) / 2;
  }

  /** Radius of the wood under bark [m]. */
  double woodRadius(int i, double s) {
    double bark = skeleton.segment(i).bark().orElse(skeleton.tree().bark().orElse(0));
    double x = s / skeleton.length(i);
    double misread = wood.startReading()[i] * (1 - x) + wood.endReading()[i] * x;
    double read = barkRadius(i, s) - bark;
    return Math.max(THINNEST * read, read - misread / 2);
  }

  /**
   * Sections of a piece of a segment, from one end to the other in either direction.
   *
   * @param i segment index
   * @param from where the sections start [m]
   * @param to where they end [m]
   * @param frame section frame at rest, into the tree frame
   */
  WoodLine sections(int i, double from, double to, Rotation frame) {
    SectionLine.RadiusTaper taper =
        new SectionLine.RadiusTaper(woodRadius(i, from), woodRadius(i, to), Math.abs(to - from));
    Features features = skeleton.segment(i).features();
    if (features.isWhole() && !aids.shapes(i)) {
      return WoodLine.round(wood(i), taper);
    }
    SectionShape.Face dead =
        features
            .deadFace()
            .map(
                face ->
                    new SectionShape.Face(
                        angle(i, face.round(), frame), face.width(), face.depth()))
            .orElse(SectionShape.Face.NONE);
    double inside = (from + to) / 2;
    double hollow = Math.max(features.hollow().orElse(0) / 2, aids.hollow(i, inside));
    return WoodLine.shaped(
        wood(i),
        s -> {
          double radius = taper.at(s);
          double most = (1 - SectionShape.THINNEST) * radius;
          double at = from + Math.signum(to - from) * s;
          SectionShape.Groove groove =
              aids.gone(i, at, inside)
                  .or(
                      () ->
                          features
                              .slot()
                              .map(c -> new AidWork.Gone(c.round(), c.width(), c.depth())))
                  .map(gone -> groove(gone, radius, angle(i, gone.round(), frame)))
                  .orElse(SectionShape.Groove.NONE);
          return new SectionShape(radius, Math.min(hollow, most), dead, groove);
        });
  }

  /** A cut right across is as wide as its floor, so that its corners lie on the rim. */
  private static SectionShape.Groove groove(AidWork.Gone gone, double radius, double middle) {
    double floor = radius - gone.depth();
    double chord = floor > 0 ? Math.sqrt(radius * radius - floor * floor) : radius;
    return new SectionShape.Groove(middle, Math.min(gone.width(), 2 * chord), gone.depth());
  }

  /** A place round a segment as the angle from section axis 1 to axis 2 [rad]. */
  private double angle(int i, double round, Rotation frame) {
    Vector3 there = RoundAngle.direction(skeleton.direction(i), round).vector();
    Vector3 across = frame.inverse().turn(there);
    return Math.atan2(across.y(), across.x());
  }
}
