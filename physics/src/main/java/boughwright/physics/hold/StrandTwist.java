// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

/**
 * Two strands twisted round each other: each is a helix on a cylinder as thick as one strand, so n
 * turns on a height H take a strand of length sqrt(H² + (π d n)²). A stick in the middle of the
 * span puts its turns into each half, opposite, which counts twice.
 */
public final class StrandTwist {
  /** Lay angle near which two strands lie against each other all along [rad]. */
  static final double TOUCHING = Math.PI / 4;

  private final double strand;
  private final double roundPerTurn;

  /**
   * A double strand.
   *
   * @param strand length of one strand from pad to anchor [m]
   * @param gauge its diameter [m]
   * @param inMiddle true if a stick in mid-span is turned, false if the end is
   */
  public StrandTwist(double strand, double gauge, boolean inMiddle) {
    if (!(strand > 0 && gauge > 0)) {
      throw new IllegalArgumentException("a strand has a length and a diameter");
    }
    this.strand = strand;
    roundPerTurn = (inMiddle ? 2 : 1) * Math.PI * gauge;
  }

  /** The strand of a line that spans a distance with some turns in it. */
  public static StrandTwist spanning(double span, double gauge, double turns, boolean inMiddle) {
    double round = (inMiddle ? 2 : 1) * Math.PI * gauge * turns;
    return new StrandTwist(Math.hypot(span, round), gauge, inMiddle);
  }

  /** Length of one strand [m]. */
  public double strand() {
    return strand;
  }

  /** Distance the line spans after so many turns in all; 0 when no more can be put in [m]. */
  public double span(double turns) {
    double round = roundPerTurn * turns;
    return Math.sqrt(Math.max(0, strand * strand - round * round));
  }

  /**
   * Turns in all at which the line spans a distance [1].
   *
   * @param span 0 or more; longer than the strand counts as untwisted [m]
   */
  public double turns(double span) {
    return Math.sqrt(Math.max(0, strand * strand - span * span)) / roundPerTurn;
  }

  /** Angle between strands and pull after so many turns in all [rad]. */
  public double lay(double turns) {
    return Math.asin(Math.min(1, roundPerTurn * turns / strand));
  }

  /** Turns in all at which the strands lie against each other [1]. */
  public double turnsTouching() {
    return turnsAt(Math.sin(TOUCHING));
  }

  /**
   * Turns in all at which the outside of the strands is strained so far by the winding itself: a
   * helix of lay a on a radius of half a strand bends its wire by sin²(a) at the surface [1].
   */
  public double turnsStraining(double strain) {
    return turnsAt(Math.sqrt(strain));
  }

  private double turnsAt(double sine) {
    return strand * sine / roundPerTurn;
  }
}
