// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.tree.Tree;
import java.util.ArrayList;
import java.util.List;

/** Wood that is thicker further out, on stems and on the branches they carry. */
final class ReverseTaper {
  private final Structure structure;
  private final double readingError;

  ReverseTaper(Structure structure) {
    this.structure = structure;
    Tree tree = structure.wood().skeleton().tree();
    readingError = 2 * tree.caliperError().orElse(Tree.USUAL_CALIPER_ERROR);
  }

  /** From where it is thinnest to where it is thickest after that [m along the line], [m]. */
  record Rise(WoodLine.Reading low, WoodLine.Reading high) {
    double ratio() {
      return high.caliper() / low.caliper();
    }
  }

  /**
   * @param swellings what is told already as a swelling
   */
  List<Found> find(List<Found> swellings) {
    List<Found> out = new ArrayList<>();
    for (Shoot stem : structure.stems()) {
      look(stem, Limit.REVERSE_TAPER, out);
      structure.judgedOn(stem).stream()
          .filter(shoot -> !structure.isStem(shoot))
          .forEach(shoot -> look(shoot, Limit.REVERSE_BRANCH, out));
    }
    out.removeIf(found -> swellings.stream().anyMatch(one -> isAt(found, one)));
    return out;
  }

  private static boolean isAt(Found found, Found swelling) {
    Found.Subject.Stretch rise = (Found.Subject.Stretch) found.subject();
    Found.Subject.Stretch bulge = (Found.Subject.Stretch) swelling.subject();
    return rise.shoot().number() == bulge.shoot().number()
        && rise.to() >= bulge.from()
        && rise.to() <= bulge.to();
  }

  private void look(Shoot shoot, Limit limit, List<Found> out) {
    for (Rise rise : rises(shoot.line(), structure.limit(limit), readingError)) {
      out.add(
          Found.stretch(
              FaultKind.REVERSE_TAPER,
              new Found.Subject.Stretch(shoot, rise.low().s(), rise.high().s()),
              List.of(structure.measured(limit, rise.ratio()))));
    }
  }

  /**
   * The rises of a line, one for each pinch.
   *
   * @param ratio what counts as a rise [1]
   * @param error smaller differences may come from reading [m]
   */
  static List<Rise> rises(WoodLine line, double ratio, double error) {
    List<Rise> out = new ArrayList<>();
    List<WoodLine.Reading> readings = line.readings();
    WoodLine.Reading low = readings.get(0);
    WoodLine.Reading high = null;
    for (WoodLine.Reading reading : readings) {
      boolean over =
          reading.caliper() >= ratio * low.caliper() && reading.caliper() - low.caliper() > error;
      if (over) {
        high = high == null || reading.caliper() > high.caliper() ? reading : high;
      } else if (high != null) {
        out.add(new Rise(low, high));
        high = null;
        low = reading;
      } else if (reading.caliper() <= low.caliper()) {
        low = reading;
      }
    }
    if (high != null) {
      out.add(new Rise(low, high));
    }
    return out;
  }
}
