// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.Arrays;

/**
 * What the fibres of a section remember, and its torsion as one fibre more at the end. Not changed
 * once made.
 *
 * <p>A fibre carries stress by its strain beyond its rest: the strain at which it was laid, what
 * its modes have come to, and what has set. Beyond that it flows in compression, and of that it
 * remembers how short it was at its shortest.
 */
final class FibreMemory {
  /** Strain beyond rest at which each fibre was shortest, at most 0, shape (fibres) [1]. */
  final double[] shortest;

  /** Strain without stress but for flow, shape (fibres + 1), the last the twist [1], [rad/m]. */
  final double[] rest;

  /** Strain at which each fibre was laid, likewise. */
  private final double[] laid;

  /** What {@link CreepClock} keeps of each, shape (fibres + 1)(stride); empty before any time. */
  private final double[] crept;

  /** True for sections that only look for their rest. */
  final boolean freed;

  private FibreMemory(
      double[] shortest, double[] rest, double[] laid, double[] crept, boolean freed) {
    this.shortest = shortest;
    this.rest = rest;
    this.laid = laid;
    this.crept = crept;
    this.freed = freed;
  }

  /** Fibres that went through nothing. */
  static FibreMemory none(int fibres) {
    double[] nothing = new double[fibres + 1];
    return new FibreMemory(new double[fibres], nothing, nothing, new double[0], false);
  }

  int fibres() {
    return shortest.length;
  }

  /**
   * The same fibres after a spell.
   *
   * @param shortestNow as {@link #shortest}, now
   * @param strain strain of each beyond what it flowed, at first, shape (fibres + 1)
   * @param end the same in the end
   * @param clock the spell
   */
  FibreMemory after(double[] shortestNow, double[] strain, double[] end, CreepClock clock) {
    int stride = clock.stride();
    double[] kept =
        crept.length == 0 ? new double[stride * strain.length] : Arrays.copyOf(crept, crept.length);
    if (kept.length != stride * strain.length) {
      throw new IllegalArgumentException("wood creeps by one law all its life");
    }
    double[] now = new double[strain.length];
    for (int i = 0; i < strain.length; i++) {
      clock.move(strain[i] - laid[i], end[i] - laid[i], kept, stride * i);
      now[i] = laid[i] + clock.rest(kept, stride * i);
    }
    return new FibreMemory(shortestNow, now, laid, kept, false);
  }

  /** The same fibres, of which some have been shorter. */
  FibreMemory shorter(double[] shortestNow) {
    return new FibreMemory(shortestNow, rest, laid, crept, false);
  }

  /**
   * The same fibres and new ones, laid free of stress.
   *
   * @param strain strain at which each new one is laid, shape (new fibres)
   * @param twist twist at which they are laid [rad/m]
   * @param oldTorsion part of the torsional stiffness that is the old fibres' [1]
   */
  FibreMemory with(double[] strain, double twist, double oldTorsion) {
    int before = fibres();
    int stride = crept.length / (before + 1);
    int count = before + strain.length;
    double[] moreLaid = Arrays.copyOf(laid, count + 1);
    double[] moreRest = Arrays.copyOf(rest, count + 1);
    double[] moreCrept = Arrays.copyOf(crept, stride * (count + 1));
    for (int i = 0; i < strain.length; i++) {
      moreLaid[before + i] = strain[i];
      moreRest[before + i] = strain[i];
    }
    Arrays.fill(moreCrept, stride * before, moreCrept.length, 0);
    for (int k = 0; k < stride; k++) {
      moreCrept[stride * count + k] = oldTorsion * crept[stride * before + k];
    }
    moreLaid[count] = oldTorsion * laid[before] + (1 - oldTorsion) * twist;
    moreRest[count] = oldTorsion * rest[before] + (1 - oldTorsion) * twist;
    return new FibreMemory(Arrays.copyOf(shortest, count), moreRest, moreLaid, moreCrept, false);
  }

  /** The same fibres once all that creeps back has crept back. */
  FibreMemory freed(CreepClock clock) {
    double[] good = laid.clone();
    for (int i = 0; i < good.length && crept.length > 0; i++) {
      good[i] += clock.forGood(crept, clock.stride() * i);
    }
    return new FibreMemory(shortest, good, laid, crept, true);
  }
}
