// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes the wood above the roots apart into shoots, from the trunk line outward; used once. */
final class Shoots {
  /** Less than this part of a segment is no piece of its own [1]. */
  private static final double NOTHING = 1e-6;

  private final Skeleton skeleton;
  private final Cutting cutting;
  private final boolean[] inTrunk;
  private final List<Shoot> done = new ArrayList<>();

  private Shoots(WoodLeft wood, TrunkLine trunk) {
    skeleton = wood.skeleton();
    cutting = wood.cutting();
    inTrunk = new boolean[skeleton.size()];
    trunk.segments().forEach(i -> inTrunk[i] = true);
  }

  /** All shoots, the trunk line first, each after the one it sits on. */
  static List<Shoot> of(WoodLeft wood, TrunkLine trunk) {
    Shoots shoots = new Shoots(wood, trunk);
    shoots.take(trunk);
    return List.copyOf(shoots.done);
  }

  private void take(TrunkLine trunk) {
    List<WoodLine.Piece> pieces = new ArrayList<>();
    for (int n = 0; n < trunk.segments().size(); n++) {
      int i = trunk.segments().get(n);
      boolean last = n + 1 == trunk.segments().size();
      double to = last ? cutting.left(i) : skeleton.segment(trunk.segments().get(n + 1)).along();
      pieces.add(new WoodLine.Piece(i, 0, Math.max(to, NOTHING)));
    }
    WoodLine line = new WoodLine(skeleton, pieces);
    done.add(new Shoot(0, line, Kind.TRUNK, isLive(line), Optional.empty()));
    for (int number = 0; number < done.size(); number++) {
      takeChildren(done.get(number));
    }
  }

  private void takeChildren(Shoot shoot) {
    List<WoodLine.Piece> pieces = shoot.line().pieces();
    for (int n = 0; n < pieces.size(); n++) {
      WoodLine.Piece piece = pieces.get(n);
      int next = n + 1 < pieces.size() ? pieces.get(n + 1).segment() : Skeleton.NONE;
      for (int child : skeleton.children(piece.segment())) {
        boolean here = isOn(piece, skeleton.segment(child).along());
        if (child != next && here && isWanted(child) && !goesOnFromRest(child, piece)) {
          add(shoot, piece.segment(), chain(child, 0));
        }
      }
      if (shoot.isMain() && cutting.left(piece.segment()) - piece.to() > NOTHING) {
        add(shoot, piece.segment(), chain(piece.segment(), piece.to()));
      }
    }
  }

  private static boolean isOn(WoodLine.Piece piece, double along) {
    return along <= piece.to() && (along > piece.from() || piece.from() == 0);
  }

  /** Whether a shoot belongs to the rest of a segment that the trunk line leaves midway. */
  private boolean goesOnFromRest(int child, WoodLine.Piece piece) {
    return skeleton.segment(child).along() > piece.to()
        || inTrunk[child]
        || skeleton.segment(child).along() == piece.to()
            && piece.to() < cutting.left(piece.segment())
            && skeleton.joint(child) == Joint.CONTINUES;
  }

  private boolean isWanted(int child) {
    return !cutting.isGone(child) && skeleton.segment(child).kind() != Kind.ROOT;
  }

  private List<WoodLine.Piece> chain(int first, double from) {
    List<WoodLine.Piece> pieces = new ArrayList<>();
    double start = from;
    for (int i = first; i != Skeleton.NONE; i = next(i)) {
      pieces.add(new WoodLine.Piece(i, start, cutting.left(i)));
      start = 0;
    }
    return pieces;
  }

  private int next(int i) {
    for (int child : skeleton.children(i)) {
      if (skeleton.joint(child) == Joint.CONTINUES
          && skeleton.segment(child).along() == 1
          && !inTrunk[child]
          && isWanted(child)) {
        return child;
      }
    }
    return Skeleton.NONE;
  }

  private void add(Shoot on, int parent, List<WoodLine.Piece> pieces) {
    WoodLine line = new WoodLine(skeleton, pieces);
    WoodLine.Piece first = pieces.get(0);
    Segment segment = skeleton.segment(first.segment());
    double along = first.segment() == parent ? first.from() : segment.along();
    double at = on.line().distanceTo(parent, along);
    double around = on.line().caliper(at);
    double caliper = line.caliper(Math.min(skeleton.collar(first.segment()), line.length()));
    Direction3 heading = line.chord(0, Math.min(line.length(), Math.max(around, first(line))));
    Union union = new Union(on.number(), at, around, caliper, tangent(on, at, around), heading);
    boolean live = on.live() && isLive(line);
    done.add(new Shoot(done.size(), line, segment.kind(), live, Optional.of(union)));
  }

  /** The way a shoot goes within half its caliper of a place. */
  private static Direction3 tangent(Shoot on, double at, double caliper) {
    return on.line().chord(at - caliper / 2, at + caliper / 2);
  }

  private static double first(WoodLine line) {
    return line.start(1);
  }

  private boolean isLive(WoodLine line) {
    Segment first = skeleton.segment(line.pieces().get(0).segment());
    return first.live().orElse(first.kind() != Kind.DEADWOOD);
  }
}
