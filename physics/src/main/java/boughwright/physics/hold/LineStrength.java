// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.modeller.plan.Gauges;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Strand;
import java.util.Map;
import java.util.Optional;

/**
 * What a guy-line bears and how far it stretches.
 *
 * <p>Strengths are the low ends of published ranges, for the wire a person has is not tested.
 */
public final class LineStrength {
  /**
   * What is left of a wire twisted round itself at its ends, and of a cord with a knot [1]. Wire:
   * an assumption. Cord: a bowline takes 30 %, a reef knot 50 % (tests of a rope maker, printed in
   * a book on knots; seen).
   */
  static final double WIRE_END = 0.7;

  static final double CORD_KNOT = 0.5;

  /** Breaking load over safe load [1]: wire an assumption, cord common practice for ropes. */
  static final double WIRE_SAFETY = 3;

  static final double CORD_SAFETY = 5;

  /**
   * What a material bears.
   *
   * @param breaking tensile strength, the low end [Pa]
   * @param yield stress at which it begins to stay longer; infinite for cord [Pa]
   * @param modulus modulus of elasticity [Pa]
   * @param elongation strain at break [1]
   * @param source where the values come from
   */
  record Values(double breaking, double yield, double modulus, double elongation, String source) {}

  private static final Map<Material, Values> VALUES =
      Map.of(
          Material.COPPER_ANNEALED,
          new Values(220e6, 75e6, 120e9, 0.48, "annealed C10800 copper, data sheet"),
          Material.ALUMINIUM,
          new Values(60e6, 20e6, 70e9, 0.25, "1050-O wire, JIS H 4040-2015, lower limits"),
          Material.STEEL_SOFT,
          new Values(350e6, 250e6, 205e9, 0.15, "annealed low-carbon wire, data sheet of a maker"),
          Material.STAINLESS,
          new Values(515e6, 205e6, 193e9, 0.35, "annealed 304 wire, ASTM A580; from memory"),
          Material.CORD,
          new Values(
              200e6,
              Double.POSITIVE_INFINITY,
              2.5e9,
              0.10,
              "16-plait polyester of 6 mm breaks at 600 kg (rope maker's table); stretch from"
                  + " memory"));

  private LineStrength() {}

  static Values values(Material material) {
    return VALUES.get(material);
  }

  /** Where the strength of a material comes from, in words. */
  public static String source(Material material) {
    return values(material).source();
  }

  /** Strain at break of a material [1]. */
  public static double elongation(Material material) {
    return values(material).elongation();
  }

  /** Area of all strands over their diameter [m2]. */
  static double area(Strand strand) {
    return strand.count() * Math.PI / 4 * strand.gauge() * strand.gauge();
  }

  /**
   * Load at which a line breaks, its ends and knots counted [N]. Strands that are twisted together
   * lie at an angle to the pull and bear only its cosine.
   *
   * @param lay angle between strands and pull, 0 if not twisted [rad]
   */
  public static double breaking(Strand strand, double lay) {
    double ends = strand.material().isWire() ? WIRE_END : CORD_KNOT;
    return area(strand) * values(strand.material()).breaking() * ends * Math.cos(lay);
  }

  /** Load to which a line may be used [N]; the angle as for breaking. */
  public static double safe(Strand strand, double lay) {
    return breaking(strand, lay) / (strand.material().isWire() ? WIRE_SAFETY : CORD_SAFETY);
  }

  /** Load from which a wire begins to stay longer; infinite for cord [N]. */
  public static double yielding(Strand strand, double lay) {
    return area(strand) * values(strand.material()).yield() * Math.cos(lay);
  }

  /** Stretch per tension of a line of some length, L / (E A) [m/N]. */
  public static double compliance(Strand strand, double length) {
    return length / (values(strand.material()).modulus() * area(strand));
  }

  /** The thinnest sold strand, so many side by side, that bears a load safely. */
  public static Optional<Strand> thinnest(Material material, int count, double load) {
    return Gauges.sold(material).stream()
        .map(gauge -> new Strand(material, gauge, count, Map.of()))
        .filter(strand -> safe(strand, 0) >= load)
        .findFirst();
  }
}
