// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilLine;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.hold.WireMetal;
import boughwright.physics.rod.SectionLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The coils of some proposals, each laid along the tree from where it starts to where it ends.
 *
 * @param coils where they lie, in plan order
 * @param wire what is taken for true of their wire
 */
record Windings(List<CoilPath> coils, Wire wire) {
  /** Places closer than this are one place [m]. */
  private static final double SAME = 1e-9;

  static final Windings NONE = new Windings(List.of(), Wire.BEST);

  /**
   * What is taken for true of a tree with its coils.
   *
   * @param wood of its wood
   * @param wire of its coils
   */
  record Made(TrialWood wood, Wire wire) {}

  /**
   * What is taken for true of wire.
   *
   * @param strength part of the best guess of its strength [1]
   * @param grips whether it grips the bark and cannot slip along it
   */
  record Wire(double strength, boolean grips) {
    static final Wire BEST = new Wire(1, false);
  }

  Windings {
    coils = List.copyOf(coils);
  }

  static Windings of(Skeleton skeleton, List<Proposal> proposals) {
    List<CoilPath> coils = new ArrayList<>();
    for (Proposal proposal : proposals) {
      for (Coil coil : proposal.coils()) {
        coils.add(CoilPath.of(skeleton, coil));
      }
    }
    return new Windings(coils, Wire.BEST);
  }

  /** The same coils of other wire. */
  Windings of(Wire other) {
    return new Windings(coils, other);
  }

  /** Where coils start and end, by segment index [m]; the caller may add to it. */
  Map<Integer, List<Double>> ends() {
    Map<Integer, List<Double>> ends = new TreeMap<>();
    for (CoilPath coil : coils) {
      for (CoilPath.Stretch stretch : coil.stretches()) {
        List<Double> at = ends.computeIfAbsent(stretch.segment(), i -> new ArrayList<>());
        at.add(stretch.low());
        at.add(stretch.high());
      }
    }
    return ends;
  }

  /** The coils on a run that bends, which none of them covers only in part. */
  List<CoilLine> on(Timber timber, TreeRods.Run run) {
    RigidBodies.Piece piece = run.piece();
    SectionLine.RadiusTaper bark =
        new SectionLine.RadiusTaper(
            timber.barkRadius(piece.segment(), run.startOnSegment()),
            timber.barkRadius(piece.segment(), run.endOnSegment()),
            piece.to() - piece.from());
    List<CoilLine> on = new ArrayList<>();
    for (CoilPath path : coils) {
      if (path.stretches().stream().anyMatch(stretch -> covers(stretch, piece))) {
        on.add(line(path.coil(), bark).ofStrength(wire.strength()));
      }
    }
    return on;
  }

  private CoilLine line(Coil coil, SectionLine.RadiusTaper bark) {
    WireMetal metal = WireMetal.of(coil.metal());
    return wire.grips()
        ? CoilLine.gripping(metal, CoilShape.of(coil), bark)
        : CoilLine.of(metal, CoilShape.of(coil), bark);
  }

  private static boolean covers(CoilPath.Stretch stretch, RigidBodies.Piece piece) {
    return stretch.segment() == piece.segment()
        && piece.from() >= stretch.low() - SAME
        && piece.to() <= stretch.high() + SAME;
  }
}
