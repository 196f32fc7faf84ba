// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.physics.rod.SectionLine;
import java.util.function.DoubleUnaryOperator;

/**
 * The coil along a stretch of branch whose thickness goes evenly from one end to the other: strands
 * hardened as their winding asks at either end, and evenly between. Not changed once made.
 */
public final class CoilLine {
  /** Surface strain of the wire up to which its line is followed; level beyond [1]. */
  private static final double FARTHEST = 0.1;

  /**
   * The first breakpoint over the curvature at which a wire as sold begins to flow: wound wire
   * flows a little from the start [1].
   */
  private static final double EARLY = 0.1;

  private final double length;
  private final CoilElements atStart;
  private final CoilElements atEnd;
  private final double torsion;

  private CoilLine(double length, CoilElements atStart, CoilElements atEnd, double torsion) {
    this.length = length;
    this.atStart = atStart;
    this.atEnd = atEnd;
    this.torsion = torsion;
  }

  /**
   * A coil just wound on.
   *
   * @param metal its metal
   * @param shape how it lies
   * @param bark radius over bark along the stretch [m]
   */
  public static CoilLine of(WireMetal metal, CoilShape shape, SectionLine.RadiusTaper bark) {
    return of(metal, shape, bark, false);
  }

  /** A coil just wound on so tightly that it cannot slip along the bark. */
  public static CoilLine gripping(WireMetal metal, CoilShape shape, SectionLine.RadiusTaper bark) {
    return of(metal, shape, bark, true);
  }

  private static CoilLine of(
      WireMetal metal, CoilShape shape, SectionLine.RadiusTaper bark, boolean grips) {
    WireWound start = new WireWound(metal, shape, 2 * bark.start());
    WireWound end = new WireWound(metal, shape, 2 * bark.end());
    double strain = metal.yield() / metal.moe();
    double first = EARLY * Math.min(start.branchCurvature(strain), end.branchCurvature(strain));
    double last = start.branchCurvature(FARTHEST);
    double torsion = shape.strands() * start.stiffness() * shape.twistingPart(metal.poisson());
    DoubleUnaryOperator atStart = start::moment;
    DoubleUnaryOperator atEnd = end::moment;
    if (grips) {
      WireGrip gripStart = new WireGrip(metal, shape, 2 * bark.start(), start.meanFlow());
      WireGrip gripEnd = new WireGrip(metal, shape, 2 * bark.end(), end.meanFlow());
      first = Math.min(first, Math.min(gripStart.yield(), gripEnd.yield()));
      atStart = x -> start.moment(x) + gripStart.moment(x);
      atEnd = x -> end.moment(x) + gripEnd.moment(x);
    }
    return new CoilLine(
        bark.length(),
        CoilElements.of(all(atStart, shape), first, last),
        CoilElements.of(all(atEnd, shape), first, last),
        torsion);
  }

  private static DoubleUnaryOperator all(DoubleUnaryOperator one, CoilShape shape) {
    return x -> shape.strands() * one.applyAsDouble(x);
  }

  /** The same coil of wire that flows at a part of those moments. */
  public CoilLine ofStrength(double part) {
    return new CoilLine(length, atStart.ofStrength(part), atEnd.ofStrength(part), torsion);
  }

  /**
   * The coil at a place, just wound on.
   *
   * @param s distance from the start of the stretch [m]
   */
  public CoilLaw at(double s) {
    double part = Math.min(1, Math.max(0, s / length));
    return CoilLaw.fresh(CoilElements.mixed(atStart, 1 - part, atEnd, part), torsion);
  }
}
