// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.hold.CoiledSection;
import boughwright.physics.hold.WireMetal;
import boughwright.physics.hold.WireWound;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.SectionResponse;
import boughwright.physics.wood.WoodSection;
import java.util.List;

/** What coils stand over what bent wood pulls back with. */
final class CoilStrength {
  /** Sections looked at along a piece that bends. */
  private static final int SECTIONS = 6;

  /** Sections with less than this part of the hardest pull do not decide [1]. */
  private static final double COUNTS = 0.1;

  private final TreeRods rods;
  private final RodPose pose;
  private double hardest;

  /** In a pose that is bent, with coils on. */
  CoilStrength(HeldTree forced) {
    rods = forced.rods();
    pose = forced.solution().pose();
  }

  /** The moment some coils stand over that of the wood under them, at the weakest place [1]. */
  double of(List<CoilPath> coils) {
    hardest = 0;
    walk(coils, (pull, stands) -> hardest = Math.max(hardest, pull));
    double[] weakest = {Double.POSITIVE_INFINITY};
    walk(
        coils,
        (pull, stands) -> {
          if (pull > COUNTS * hardest) {
            weakest[0] = Math.min(weakest[0], stands / pull);
          }
        });
    return weakest[0];
  }

  private interface Look {
    void at(double pull, double stands);
  }

  private void walk(List<CoilPath> coils, Look look) {
    for (int span = 0; span < rods.spans().size(); span++) {
      double loaded = pose.loadedTo(span);
      for (int k = 0; k < SECTIONS && loaded > 0; k++) {
        double s = loaded * (k + 0.5) / SECTIONS;
        double stands = stands(coils, span, s);
        if (stands > 0) {
          look.at(pull(span, s), stands);
        }
      }
    }
  }

  private double stands(List<CoilPath> coils, int span, double s) {
    int segment = rods.run(span).piece().segment();
    double at = rods.run(span).toSegment(s);
    double sum = 0;
    for (CoilPath path : coils) {
      boolean here =
          path.stretches().stream()
              .anyMatch(one -> one.segment() == segment && at > one.low() && at < one.high());
      if (here) {
        WireMetal metal = WireMetal.of(path.coil().metal());
        CoilShape shape = CoilShape.of(path.coil());
        double caliper = 2 * rods.timber().barkRadius(segment, at);
        sum += shape.strands() * new WireWound(metal, shape, caliper).holds();
      }
    }
    return sum;
  }

  private double pull(int span, double s) {
    WoodSection section = rods.section(span, s);
    WoodSection wood = section instanceof CoiledSection coiled ? coiled.wood() : section;
    Vector3 strain = pose.section(span, s).strain();
    SectionResponse response = new SectionResponse();
    wood.respond(strain.x(), strain.y(), strain.z(), response);
    return Math.hypot(response.m1, response.m2);
  }
}
