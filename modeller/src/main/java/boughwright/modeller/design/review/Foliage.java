// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.tree.Kind;
import java.util.List;

/**
 * How the foliage is spread over the shoots, by a proxy: each live end, the stretch of a shoot
 * beyond its last live side shoot, carries as much as the cross-section where it starts (pipe model
 * of Shinozaki et al. 1964, from memory; a proxy, for nobody counts leaves).
 */
final class Foliage {
  private final Structure structure;
  private final double[] own;
  private final double[] from;

  /** Shape: one per shoot; what it and all on it carries. */
  private final double[] all;

  private final double total;

  Foliage(Structure structure) {
    this.structure = structure;
    List<Shoot> shoots = structure.shoots();
    own = new double[shoots.size()];
    from = new double[shoots.size()];
    for (Shoot shoot : shoots) {
      if (isLive(shoot)) {
        from[shoot.number()] = lastLive(shoot);
        double caliper = shoot.line().caliper(from[shoot.number()]);
        own[shoot.number()] = Math.PI / 4 * caliper * caliper;
      }
    }
    all = own.clone();
    for (int n = shoots.size() - 1; n > 0; n--) {
      all[shoots.get(n).seat().on()] += all[n];
    }
    total = all[0];
  }

  private boolean isLive(Shoot shoot) {
    return shoot.live() && shoot.kind() != Kind.DEADWOOD;
  }

  /** Just beyond the last live side shoot; the whole shoot is its end where there is none. */
  private double lastLive(Shoot shoot) {
    double last = 0;
    for (Shoot side : structure.on(shoot)) {
      if (isLive(side)) {
        last = Math.max(last, side.seat().at() + side.seat().caliper() / 2);
      }
    }
    return Math.min(last, shoot.line().length());
  }

  /** What a shoot and all on it carries beyond a place on it, as a share of the tree's [1]. */
  double beyond(Shoot shoot, double at) {
    return total > 0 ? carried(shoot, at) / total : 0;
  }

  private double carried(Shoot shoot, double at) {
    double start = from[shoot.number()];
    double length = shoot.line().length() - start;
    double part = length > 0 ? Math.min(1, (shoot.line().length() - at) / length) : 1;
    double sum = own[shoot.number()] * (at <= start ? 1 : part);
    for (Shoot side : structure.on(shoot)) {
      if (side.seat().at() >= at) {
        sum += all[side.number()];
      }
    }
    return sum;
  }
}
