// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodLine;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A tree of tapered round rods and what pulls on it, as a reference table or a test states it:
 * limbs that start anywhere on their parents. Gives the solver's input; {@link ShootingTree} reads
 * the same numbers and nothing of the solver.
 *
 * @param baseFrame axes of the clamp
 * @param limbs every limb after its parent
 * @param pulls dead forces
 * @param ties lines
 * @param spreads distributed dead forces
 */
record RodCase(
    Rotation baseFrame, List<Limb> limbs, List<Pull> pulls, List<Tie> ties, List<Spread> spreads) {

  /** A limb; it starts {@code at} along its parent, {@code offset} and {@code turn} further on. */
  record Limb(
      int parent,
      double at,
      Vector3 offset,
      Rotation turn,
      double length,
      Wood wood,
      Vector3 curvature) {
    static Limb trunk(double length, Wood wood, Vector3 curvature) {
      return new Limb(-1, 0, Vector3.ZERO, Rotation.NONE, length, wood, curvature);
    }
  }

  /** A round taper [m], its moduli [Pa] and the strain at which compressed fibres flow [1]. */
  record Wood(double start, double end, double moe, double shear, double yield) {
    Wood(double start, double end, double moe, double shear) {
      this(start, end, moe, shear, Double.POSITIVE_INFINITY);
    }

    /** Wood whose torsional stiffness is a part of its bending stiffness: GJ / EI = 2 G / E. */
    static Wood ofRatio(double start, double end, double moe, double torsionOverBending) {
      return new Wood(start, end, moe, moe * torsionOverBending / 2);
    }

    double radius(double along) {
      return start + (end - start) * along;
    }
  }

  record Place(int limb, double s, Vector3 arm) {
    static Place on(int limb, double s) {
      return new Place(limb, s, Vector3.ZERO);
    }
  }

  record Pull(Place at, Vector3 force) {}

  /**
   * A line to an anchor or, where that is null, to another place; with a given length, or a given
   * tension where that is not a number. With a length, the tension is a first guess for shooting.
   */
  record Tie(
      Place at, Point3 anchor, Place other, double tension, double length, double compliance) {
    static Tie tight(Place at, Point3 anchor, double tension) {
      return new Tie(at, anchor, null, tension, Double.NaN, 0);
    }

    static Tie measured(Place at, Point3 anchor, double tension, double length) {
      return new Tie(at, anchor, null, tension, length, 0);
    }

    boolean byLength() {
      return !Double.isNaN(length);
    }
  }

  /** A force per length: pull times c0 + c1 s + c2 s^2. */
  record Spread(int limb, Vector3 pull, double c0, double c1, double c2) {
    double at(double s) {
      return c0 + s * (c1 + s * c2);
    }
  }

  static RodCase single(Rotation frame, Limb limb, List<Pull> pulls, List<Tie> ties) {
    return new RodCase(frame, List.of(limb), pulls, ties, List.of());
  }

  /** The same rods of wood that flows. */
  RodCase flowingFrom(double yield) {
    List<Limb> flowing = new ArrayList<>();
    for (Limb limb : limbs) {
      Wood w = limb.wood();
      flowing.add(
          new Limb(
              limb.parent(),
              limb.at(),
              limb.offset(),
              limb.turn(),
              limb.length(),
              new Wood(w.start(), w.end(), w.moe(), w.shear(), yield),
              limb.curvature()));
    }
    return new RodCase(baseFrame, flowing, pulls, ties, spreads);
  }

  /** A piece of a limb that becomes a span of the solver. */
  private record Piece(int limb, double from, double to) {}

  private List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < limbs.size(); i++) {
      TreeSet<Double> cuts = new TreeSet<>(List.of(limbs.get(i).length()));
      for (Limb child : limbs) {
        if (child.parent() == i) {
          cuts.add(child.at());
        }
      }
      double from = 0;
      for (double to : cuts) {
        pieces.add(new Piece(i, from, to));
        from = to;
      }
    }
    return pieces;
  }

  RodModel model() {
    return model(List.of());
  }

  RodModel model(List<Spread> settledUnder) {
    List<Piece> pieces = pieces();
    List<RodSpan> spans = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      Limb limb = limbs.get(piece.limb());
      Wood wood = limb.wood();
      SectionLine whole =
          WoodLine.round(
              new SegmentWood(wood.moe(), wood.shear(), wood.yield(), "test"),
              new SectionLine.RadiusTaper(wood.start(), wood.end(), limb.length()));
      boolean first = piece.from() == 0;
      int parent = first && limb.parent() >= 0 ? span(limb.parent(), limb.at()) : i - 1;
      spans.add(
          new RodSpan(
              first && limb.parent() < 0 ? RodSpan.CLAMP : parent,
              first ? limb.offset() : Vector3.ZERO,
              first ? limb.turn() : Rotation.NONE,
              piece.to() - piece.from(),
              limb.curvature(),
              s -> whole.at(piece.from() + s)));
    }
    return new RodModel(Point3.ORIGIN, baseFrame, spans, weights(settledUnder));
  }

  /** The span that holds a place of a limb; at a cut the one before it. */
  int span(int limb, double s) {
    List<Piece> pieces = pieces();
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).limb() == limb && s <= pieces.get(i).to()) {
        return i;
      }
    }
    throw new IllegalArgumentException("no place at " + s + " on limb " + limb);
  }

  private RodPlace place(Place place) {
    int span = span(place.limb(), place.s());
    return new RodPlace(span, place.s() - pieces().get(span).from(), place.arm());
  }

  RodSection section(RodPose pose, int limb, double s) {
    RodPlace place = place(Place.on(limb, s));
    return pose.section(place.span(), place.s());
  }

  RodLoads loads() {
    return new RodLoads(
        pulls.stream().map(pull -> new RodLoads.DeadForce(place(pull.at()), pull.force())).toList(),
        List.of(),
        weights(spreads),
        ties.stream().map(this::line).toList());
  }

  private RodLine line(Tie tie) {
    RodLine.End other =
        tie.anchor() != null
            ? new RodLine.FixedEnd(tie.anchor())
            : new RodLine.MovingEnd(place(tie.other()));
    RodLine.Hold hold =
        tie.byLength()
            ? new RodLine.Length(tie.length(), tie.compliance())
            : new RodLine.Constant(tie.tension());
    return new RodLine(place(tie.at()), other, hold);
  }

  private List<SpanWeight> weights(List<Spread> all) {
    List<SpanWeight> weights = new ArrayList<>();
    List<Piece> pieces = pieces();
    for (Spread spread : all) {
      for (int i = 0; i < pieces.size(); i++) {
        if (pieces.get(i).limb() == spread.limb()) {
          double from = pieces.get(i).from();
          double slope = spread.c1() + 2 * spread.c2() * from;
          weights.add(new SpanWeight(i, spread.pull(), spread.at(from), slope, spread.c2()));
        }
      }
    }
    return weights;
  }

  RodSolution solve() {
    return RodSolver.solve(model(), loads(), RodOptions.DEFAULT);
  }
}
