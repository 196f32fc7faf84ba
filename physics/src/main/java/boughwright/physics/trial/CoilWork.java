// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import java.util.List;
import java.util.Optional;

/**
 * How one coil is wound.
 *
 * @param coil the coil
 * @param length along the branches, from axis to axis [m]
 * @param turns how often it goes round [1]
 * @param pitch advance in one turn at its start and at its end [m]
 * @param gap least free bark between two turns, along the branch; negative where they overlap [m]
 * @param cut length of wire to cut, for each strand [m]
 * @param anchorage what holds its start, in words
 * @param anchored whether that is enough
 * @param twist how far the bend turns the branch about its axis along the coil, right-handed
 *     positive [rad]
 * @param tightens the hand of winding that this twist tightens; empty where it hardly twists
 * @param outside where the bend is hardest, on the outside: a turn is to cross there; empty where
 *     nothing along the coil is bent
 */
public record CoilWork(
    Coil coil,
    double length,
    double turns,
    Pitch pitch,
    double gap,
    double cut,
    String anchorage,
    boolean anchored,
    double twist,
    Optional<Hand> tightens,
    Optional<FailurePlace> outside) {
  /** Wire beyond the last turn, to hold it by: common practice, no source [m]. */
  public static final double TO_HOLD = 0.05;

  /**
   * Turns added at the start where the plan has none that anchor it: common practice, no source.
   */
  public static final double TURNS_TO_ANCHOR = 2;

  /** A twist below this tightens neither hand to speak of: 3 degrees (assumption) [rad]. */
  private static final double HARDLY = Math.toRadians(3);

  /** Samples along a piece that bends. */
  private static final int SAMPLES = 8;

  /**
   * Advance in one turn.
   *
   * @param atStart where the wire starts [m]
   * @param atEnd where it ends [m]
   */
  public record Pitch(double atStart, double atEnd) {}

  /** Whether the plan winds it the way that the twist loosens. */
  public boolean isWrongHand() {
    return tightens.isPresent() && tightens.get() != coil.hand();
  }

  /**
   * The coils of a proposal in a pose that is bent.
   *
   * @param frontAzimuth the azimuth the tree is seen from, for words [rad]
   */
  public static List<CoilWork> of(HeldTree bent, Proposal proposal, double frontAzimuth) {
    Skeleton skeleton = bent.rods().timber().skeleton();
    return CoilWays.of(skeleton, proposal).stream()
        .map(path -> of(path, bent, frontAzimuth))
        .toList();
  }

  /**
   * For a coil in a pose that is bent.
   *
   * @param frontAzimuth the azimuth the tree is seen from, for words [rad]
   */
  static CoilWork of(CoilPath path, HeldTree bent, double frontAzimuth) {
    Skeleton skeleton = bent.rods().timber().skeleton();
    CoilShape shape = CoilShape.of(path.coil());
    CoilAnchorage anchorage = CoilAnchorage.of(skeleton, path);
    double turns = 0;
    double gap = Double.POSITIVE_INFINITY;
    for (CoilPath.Stretch stretch : path.stretches()) {
      double from = caliper(skeleton, stretch, stretch.from());
      double to = caliper(skeleton, stretch, stretch.to());
      turns += stretch.length() / shape.pitch((from + to) / 2);
      gap = Math.min(gap, Math.min(shape.gap(from), shape.gap(to)));
    }
    CoilPath.Stretch first = path.stretches().get(0);
    CoilPath.Stretch last = path.stretches().get(path.stretches().size() - 1);
    double start = caliper(skeleton, first, first.from());
    double anchor = anchorage.isEnough() ? 0 : TURNS_TO_ANCHOR * shape.turn(start);
    Walk walk = new Walk(bent, frontAzimuth);
    path.stretches().forEach(walk::along);
    return new CoilWork(
        path.coil(),
        path.length(),
        turns,
        new Pitch(shape.pitch(start), shape.pitch(caliper(skeleton, last, last.to()))),
        gap,
        shape.along(path.length()) + anchor + TO_HOLD,
        anchorage.words(),
        anchorage.isEnough(),
        walk.twist,
        walk.tightens(),
        walk.outside());
  }

  private static double caliper(Skeleton skeleton, CoilPath.Stretch stretch, double s) {
    return skeleton.caliper(stretch.segment(), s / skeleton.length(stretch.segment()));
  }

  /** Goes along a coil in a pose: how far it is twisted, and where it is bent hardest. */
  private static final class Walk {
    private final TreeRods rods;
    private final RodPose pose;
    private final double frontAzimuth;
    private double twist;
    private double most;
    private int span = -1;
    private double at;

    Walk(HeldTree bent, double frontAzimuth) {
      rods = bent.rods();
      pose = bent.solution().pose();
      this.frontAzimuth = frontAzimuth;
    }

    void along(CoilPath.Stretch stretch) {
      List<Integer> spans = rods.spansOf(stretch.segment());
      for (int one : spans) {
        RigidBodies.Piece piece = rods.run(one).piece();
        double middle = (piece.from() + piece.to()) / 2;
        if (middle > stretch.low() && middle < stretch.high() && pose.loadedTo(one) > 0) {
          piece(one, piece);
        }
      }
    }

    private void piece(int one, RigidBodies.Piece piece) {
      double step = (piece.to() - piece.from()) / SAMPLES;
      for (int k = 0; k < SAMPLES; k++) {
        double s = (k + 0.5) * step;
        RodSection section = pose.section(one, s);
        twist += section.strain().z() * step;
        double radius = rods.timber().woodRadius(piece.segment(), rods.run(one).toSegment(s));
        double strain = radius * section.addedCurvature();
        if (strain > most) {
          most = strain;
          span = one;
          at = s;
        }
      }
    }

    /** A helix winds on in the sense of its hand, and a twist of that sense adds to it. */
    Optional<Hand> tightens() {
      return Math.abs(twist) < HARDLY
          ? Optional.empty()
          : Optional.of(twist > 0 ? Hand.RIGHT : Hand.LEFT);
    }

    Optional<FailurePlace> outside() {
      if (span < 0) {
        return Optional.empty();
      }
      RodSection section = pose.section(span, at);
      return Optional.of(
          new BarkPlaces(rods, frontAzimuth)
              .place(span, at, rods.run(span).frame().turn(PoseReader.stretched(section))));
    }
  }
}
