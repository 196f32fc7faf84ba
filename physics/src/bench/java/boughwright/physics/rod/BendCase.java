// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * A planar rod of the reference tables, as every solver of the comparison is given it, with the
 * place of its tip that the table states.
 */
public enum BendCase {
  /** Level cantilever under a tip weight, P L^2 / EI = 1; elliptic integrals. */
  A1("cantilever, PL²/EI = 1"),
  /** The same with P L^2 / EI = 10. */
  A10("cantilever, PL²/EI = 10"),
  /** Tapered rod 30 degrees above level, drawn down by a line of 15 N; shooting of the table. */
  D2("guy-line case d2, 15 N");

  private static final String LINES = "d_line_cases.csv";
  private final String words;

  BendCase(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** P L^2 / EI of a cantilever [1]. */
  double alpha() {
    return this == A1 ? 1 : 10;
  }

  boolean isLine() {
    return this == D2;
  }

  Table row() {
    return isLine()
        ? Table.of(LINES).filter(r -> r.text("id").equals("d2")).findFirst().orElseThrow()
        : Table.of("a_elastica_tipload.csv")
            .filter(r -> r.number(0) == alpha())
            .findFirst()
            .orElseThrow();
  }

  RodModel model() {
    return isLine() ? GuyLines.of(row()).model() : Rods.unit(0, Vector3.ZERO);
  }

  RodLoads loads() {
    return isLine() ? GuyLines.of(row()).loads() : Rods.tipForce(0, 0, -alpha());
  }

  /** Length of the rod [m]. */
  double length() {
    return isLine() ? row().number("L_mm") * Table.MM : 1;
  }

  /** Where the tip comes to stand by the table [m]. */
  Point3 tip() {
    Table row = row();
    return isLine() ? row.point("tip_x") : new Point3(1 - row.number(1), 0, -row.number(2));
  }

  /** How far a tip is from where it should be, as a fraction of the length. */
  double error(Point3 tip) {
    return tip.distance(tip()) / length();
  }
}
