// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Point3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a container leaves of the roots in one pose. */
final class RootsLeft {
  /** Less than this of a piece need not be cut [1]; rounding. */
  private static final double NOTHING = 1e-9;

  private final List<Root> roots;
  private final Stand stand;

  /** Shape: one for each root, in it one for each piece; fraction of its length [1]. */
  private final List<double[]> left = new ArrayList<>();

  /** For a container, or for none, where all is left. */
  RootsLeft(List<Root> roots, Stand stand, Optional<Box> box) {
    this.roots = roots;
    this.stand = stand;
    for (Root root : roots) {
      left.add(box.map(inside -> left(root, inside)).orElseGet(() -> all(root)));
    }
  }

  private static double[] all(Root root) {
    double[] all = new double[root.pieces().size()];
    Arrays.fill(all, 1);
    return all;
  }

  private double[] left(Root root, Box inside) {
    double[] parts = new double[root.pieces().size()];
    for (int n = 0; n < parts.length; n++) {
      RootPiece piece = root.pieces().get(n);
      if (isCarried(piece, parts)) {
        parts[n] = fits(piece.wood(), inside);
      }
    }
    return parts;
  }

  private double fits(Frustum wood, Box inside) {
    double at =
        inside.leaves(
            stand.at(wood.start()), wood.startRadius(), stand.at(wood.end()), wood.endRadius());
    return at > 1 - NOTHING ? 1 : at;
  }

  /** True if the place that a piece starts on is left. */
  private static boolean isCarried(RootPiece piece, double[] parts) {
    if (piece.on() == RootPiece.TRUNK) {
      return true;
    }
    double carrier = parts[piece.on()];
    return carrier == 1 || piece.along() < carrier;
  }

  /** What goes of a volume of all roots [m3]. */
  RootLoss loss(double whole) {
    List<RootCut> cuts = new ArrayList<>();
    List<Root> lifted = new ArrayList<>();
    double cut = 0;
    double dry = 0;
    for (int n = 0; n < roots.size(); n++) {
      Root root = roots.get(n);
      List<RootCut> own = cuts(root, left.get(n));
      double gone = own.stream().mapToDouble(RootCut::volume).sum();
      cuts.addAll(own);
      cut += gone;
      double rest = root.volume() - gone;
      if (rest > NOTHING * root.volume() && isLifted(root, left.get(n))) {
        lifted.add(root);
        dry += rest;
      }
    }
    return new RootLoss(cuts, lifted, cut, dry, whole);
  }

  private static List<RootCut> cuts(Root root, double[] parts) {
    List<RootCut> cuts = new ArrayList<>();
    for (int n = 0; n < parts.length; n++) {
      if (parts[n] < 1 && isCarried(root.pieces().get(n), parts)) {
        cuts.add(cut(root, parts, n));
      }
    }
    return cuts;
  }

  /** Adds up the rest of a piece and all that goes with it. */
  private static RootCut cut(Root root, double[] parts, int at) {
    boolean[] gone = new boolean[parts.length];
    double length = 0;
    double volume = 0;
    for (int n = at; n < parts.length; n++) {
      RootPiece piece = root.pieces().get(n);
      gone[n] = n == at || piece.on() >= at && gone[piece.on()] && !isCarried(piece, parts);
      if (gone[n]) {
        length += (1 - parts[n]) * piece.wood().length();
        volume += piece.volume(1) - piece.volume(parts[n]);
      }
    }
    return new RootCut(root, at, parts[at], length, volume);
  }

  /** Share of a volume of all roots that goes [1]; quicker than saying what goes. */
  double share(double whole) {
    double kept = 0;
    for (int n = 0; n < roots.size(); n++) {
      double[] parts = left.get(n);
      double volume = 0;
      for (int p = 0; p < parts.length; p++) {
        volume += roots.get(n).pieces().get(p).volume(parts[p]);
      }
      if (!isLifted(roots.get(n), parts)) {
        kept += volume;
      }
    }
    return Math.min(1, Math.max(0, 1 - kept / whole));
  }

  /** True if no end of what is left is in the soil any more, though one was as measured. */
  private boolean isLifted(Root root, double[] parts) {
    boolean was = false;
    boolean[] goesOn = new boolean[parts.length];
    for (int n = parts.length - 1; n >= 0; n--) {
      RootPiece piece = root.pieces().get(n);
      if (parts[n] == 0) {
        continue;
      }
      if (piece.on() != RootPiece.TRUNK && piece.along() == 1) {
        goesOn[piece.on()] = true;
      }
      if (!goesOn[n]) {
        Point3 end = piece.wood().start().toward(piece.wood().end(), parts[n]);
        if (stand.height(end) <= 0) {
          return false;
        }
        was |= stand.measuredHeight(end) <= 0;
      }
    }
    return was;
  }

  /** All wood that is left [tree frame]. */
  List<Frustum> wood() {
    List<Frustum> wood = new ArrayList<>();
    for (int n = 0; n < roots.size(); n++) {
      double[] parts = left.get(n);
      for (int p = 0; p < parts.length; p++) {
        if (parts[p] > 0) {
          wood.add(shortened(roots.get(n).pieces().get(p), parts[p]));
        }
      }
    }
    return wood;
  }

  private static Frustum shortened(RootPiece piece, double part) {
    Frustum whole = piece.wood();
    return new Frustum(
        whole.segment(),
        whole.start(),
        whole.start().toward(whole.end(), part),
        whole.startRadius(),
        piece.radius(part));
  }

  /** Depth of the lowest underside below the soil line; 0 if none is below it [m]. */
  double depth() {
    double depth = 0;
    for (Frustum piece : wood()) {
      double lift = stand.lift(piece);
      depth = Math.max(depth, lift * piece.startRadius() - stand.height(piece.start()));
      depth = Math.max(depth, lift * piece.endRadius() - stand.height(piece.end()));
    }
    return depth;
  }

  /** Starts and ends of what is left, as far as they are in the soil [m, viewer's frame]. */
  List<Point3> bearing() {
    List<Point3> places = new ArrayList<>();
    for (Frustum piece : wood()) {
      places.add(stand.at(piece.start()));
      places.add(stand.at(piece.end()));
    }
    places.removeIf(place -> place.z() > 0);
    return places;
  }
}
