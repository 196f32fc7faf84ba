// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Questions sizes that a container, a year's growth or an anchor hardly has; mostly a slip of the
 * unit. All bounds are common practice, no source; they only make the person look again.
 */
public final class SettingRules {
  private static final double SMALLEST = 20e-3;
  private static final double LARGEST = 3;
  private static final double LIGHTEST = 0.05;

  /** Wet soil and stone weigh less [kg/m3]. */
  private static final double DENSEST = 3000;

  /** A tree and its box weigh no more above the rim than this many times what is in it [1]. */
  private static final double MOST_ABOVE = 3;

  private static final double WIDEST_RING = 15e-3;
  private static final double FARTHEST = 5;

  private SettingRules() {}

  /** What is odd about a container; each field is one of its own. */
  public static List<Finding> container(Container container) {
    List<Finding> findings = new ArrayList<>();
    Container.Size size = container.size();
    double[] sizes = {size.length(), size.width(), size.depth()};
    String[] names = {"length_mm", "width_mm", "depth_mm"};
    for (int k = 0; k < sizes.length; k++) {
      if (sizes[k] < SMALLEST || sizes[k] > LARGEST) {
        findings.add(
            odd(
                names[k],
                "odd-container",
                names[k] + " of the container is " + Amount.millimetres(sizes[k]),
                "Measure it again inside; the unit is the millimetre"));
      }
    }
    if (!holdsBase(container)) {
      findings.add(
          odd(
              "centre_mm",
              "base-outside",
              "the trunk base does not stand inside the container",
              "centre_mm is the container's middle, [right, away from you] of the trunk base"));
    }
    if (Math.abs(container.rim()) > size.depth()) {
      findings.add(
          odd(
              "rim_mm",
              "odd-container",
              "the rim is further from the soil line than the container is deep",
              "Give how far the rim is above the soil at the trunk; below it, less than 0"));
    }
    container.mass().ifPresent(mass -> mass(findings, mass, size));
    return findings;
  }

  private static void mass(List<Finding> findings, double mass, Container.Size size) {
    double most = MOST_ABOVE * DENSEST * size.length() * size.width() * size.depth();
    if (mass < LIGHTEST || mass > most) {
      findings.add(
          odd(
              "mass_kg",
              "odd-mass",
              String.format(
                  Locale.ROOT,
                  "tree, soil and container weigh %s kg together, in a container of %s litres",
                  Amount.number(mass),
                  Amount.number(1e3 * size.length() * size.width() * size.depth())),
              "Weigh it again, in kilograms: a bathroom scale will do"));
    }
  }

  /** Whether the origin lies in the turned rectangle. */
  private static boolean holdsBase(Container container) {
    double cos = Math.cos(container.turn());
    double sin = Math.sin(container.turn());
    // a turn clockwise seen from above takes the x axis to (cos, -sin)
    double along = -container.centreX() * cos + container.centreY() * sin;
    double across = -container.centreX() * sin - container.centreY() * cos;
    return Math.abs(along) <= container.size().length() / 2
        && Math.abs(across) <= container.size().width() / 2;
  }

  /** What is odd about a year's growth. */
  public static List<Finding> growing(Growing growing) {
    if (growing.ring().isEmpty() || growing.ring().getAsDouble() <= WIDEST_RING) {
      return List.of();
    }
    return List.of(
        odd(
            "ring_mm_per_year",
            "odd-ring",
            "a ring of "
                + Amount.millimetres(growing.ring().getAsDouble())
                + " a year is more than trees lay on",
            "Give how much the radius grows, not the girth: mostly 0.3 to 5 mm"));
  }

  /** What is odd about an anchor. */
  public static List<Finding> anchor(AnchorPoint anchor) {
    double far = anchor.at().distance(Point3.ORIGIN);
    return far <= FARTHEST
        ? List.of()
        : List.of(
            odd(
                "at_mm",
                "far-anchor",
                "\"" + anchor.id() + "\" is " + Amount.millimetres(far) + " from the trunk base",
                "Measure it again from the trunk base; the unit is the millimetre"));
  }

  private static Finding odd(String field, String kind, String found, String remedy) {
    return Finding.warning(List.of(), field, new Words(kind, found, remedy));
  }
}
