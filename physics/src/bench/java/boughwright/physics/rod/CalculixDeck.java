// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Locale;

/**
 * An input deck for CalculiX: two-node beams B31 with large deflection, square sections of the same
 * second moment of area as the round ones, in N, mm and MPa. A guy-line is a dead force along the
 * direction the line is known to end in, which spares CalculiX the search for it.
 *
 * @param bend the case
 * @param elements how many; a multiple of 5, so that the guy-line finds a node
 */
record CalculixDeck(BendCase bend, int elements) {
  /** Length and modulus of the cantilevers; only their ratio to the load matters. */
  private static final double CANTILEVER = 1000;

  private static final double CANTILEVER_SIDE = 5;
  private static final double CANTILEVER_MODULUS = 1e6;

  double length() {
    return bend.isLine() ? bend.length() / Table.MM : CANTILEVER;
  }

  private double angle() {
    return bend.isLine() ? Math.toRadians(bend.row().number("incl_deg_above_horizontal")) : 0;
  }

  /** Where a node is at rest [mm]. */
  Point3 node(int k) {
    double s = length() * k / elements;
    return new Point3(s * Math.cos(angle()), 0, s * Math.sin(angle()));
  }

  private double side(int element) {
    if (!bend.isLine()) {
      return CANTILEVER_SIDE;
    }
    Table row = bend.row();
    double along = (element + 0.5) / elements;
    double radius = row.number("r_base") + (row.number("r_tip") - row.number("r_base")) * along;
    return radius * Math.pow(3 * Math.PI, 0.25);
  }

  private double modulus() {
    return bend.isLine() ? bend.row().number("E_MPa") : CANTILEVER_MODULUS;
  }

  private int loadedNode() {
    double part = bend.isLine() ? bend.row().number("s_attach") / length() : 1;
    return (int) Math.round(elements * part);
  }

  private Vector3 force() {
    if (bend.isLine()) {
      Table row = bend.row();
      Vector3 line = row.point("anchor_x").minus(row.point("att_x"));
      return line.times(row.number("tension_N") / line.norm());
    }
    double stiffness = CANTILEVER_MODULUS * Math.pow(CANTILEVER_SIDE, 4) / 12;
    return new Vector3(0, 0, -bend.alpha() * stiffness / (CANTILEVER * CANTILEVER));
  }

  String text() {
    StringBuilder deck = new StringBuilder("*NODE,NSET=NALL\n");
    for (int k = 0; k <= elements; k++) {
      Point3 p = node(k);
      line(deck, "%d,%.12g,0,%.12g", k + 1, p.x(), p.z());
    }
    deck.append("*ELEMENT,TYPE=B31,ELSET=EALL\n");
    for (int k = 1; k <= elements; k++) {
      line(deck, "%d,%d,%d", k, k, k + 1);
    }
    line(deck, "*NSET,NSET=TIP\n%d", elements + 1);
    line(deck, "*MATERIAL,NAME=M\n*ELASTIC\n%.12g,0.0", modulus());
    sections(deck);
    deck.append("*BOUNDARY\n1,1,6\n*STEP,NLGEOM,INC=1000\n*STATIC\n");
    line(deck, "%s,1.,1e-6,1.\n*CLOAD", bend.isLine() ? "0.2" : "1.");
    line(deck, "%d,1,%.12g", loadedNode() + 1, force().x());
    line(deck, "%d,3,%.12g", loadedNode() + 1, force().z());
    return deck.append("*NODE PRINT,NSET=TIP\nU\n*END STEP\n").toString();
  }

  private void sections(StringBuilder deck) {
    int sets = bend.isLine() ? elements : 1;
    for (int k = 0; k < sets; k++) {
      String elset = "EALL";
      if (bend.isLine()) {
        elset = "S" + k;
        line(deck, "*ELSET,ELSET=%s\n%d,", elset, k + 1);
      }
      line(deck, "*BEAM SECTION,ELSET=%s,MATERIAL=M,SECTION=RECT", elset);
      line(deck, "%.12g,%.12g\n0.,1.,0.", side(k), side(k));
    }
  }

  private static void line(StringBuilder deck, String format, Object... values) {
    deck.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
