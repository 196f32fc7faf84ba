// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;

/** Rows of the guy-line tables d as rods. */
final class GuyLines {
  private GuyLines() {}

  /** A row of d_line_cases.csv. */
  static RodCase of(Table row) {
    double length = row.number("L_mm") * Table.MM;
    RodCase.Wood wood =
        RodCase.Wood.ofRatio(
            row.number("r_base") * Table.MM,
            row.number("r_tip") * Table.MM,
            row.number("E_MPa") * Table.MPA,
            row.number("GJ/EI"));
    Vector3 curvature =
        new Vector3(-row.number("kappa0_up"), row.number("kappa0_side(+y)"), 0).times(1 / Table.MM);
    RodCase.Place at = RodCase.Place.on(0, row.number("s_attach") * Table.MM);
    return RodCase.single(
        Rods.rootFrame(Math.toRadians(row.number("incl_deg_above_horizontal")), 0),
        RodCase.Limb.trunk(length, wood, curvature),
        List.of(),
        List.of(tie(row, at)));
  }

  private static RodCase.Tie tie(Table row, RodCase.Place at) {
    Point3 anchor = row.point("anchor_x");
    double tension = row.number("tension_N");
    String mode = row.text("mode");
    if (mode.startsWith("T=")) {
      return RodCase.Tie.tight(at, anchor, Table.after("T=", mode));
    }
    if (mode.startsWith("len=")) {
      return RodCase.Tie.measured(at, anchor, tension, Table.after("len=", mode) * Table.MM);
    }
    double rest = Table.after("rest=", mode) * Table.MM;
    double stiffness = Table.after("EA=", mode);
    return new RodCase.Tie(at, anchor, null, tension, rest, rest / stiffness);
  }

  /** Force and moment at the clamp, which follow from the table's tension and point of attack. */
  static double[] guess(Table row) {
    Point3 at = row.point("att_x");
    Vector3 line = row.point("anchor_x").minus(at);
    Vector3 force = line.times(row.number("tension_N") / line.norm());
    Vector3 moment = at.minus(Point3.ORIGIN).cross(force);
    return new double[] {
      force.x(), force.y(), force.z(),
      moment.x(), moment.y(), moment.z(),
      force.x(), force.y(), force.z()
    };
  }
}
