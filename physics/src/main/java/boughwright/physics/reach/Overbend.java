// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * Finds how far and which way a hand must go so that what it lets go of rests nearest to the
 * target, in few trials and within a risk. As a person does it: bend, let go, look, bend further.
 * At first all springs back and what rests there has no slope; so the hand goes further the same
 * way until the limb begins to stay, and past the target or past what is allowed, and then closes
 * in between the two ({@link HandsWay}). Only there slopes mean something, and turn the hand
 * ({@link BendSlopes}).
 */
final class Overbend {
  /** Trials along the first way, and trials of turning the hand afterwards. */
  private static final int ALONG = 9;

  private static final int TURNING = 4;

  /** A rest this near is near enough: a fraction of what a person sees [m]. */
  private static final double NEAR = 2e-4;

  /** The longest step of the hand while it turns, over the first bend [1]. */
  private static final double LONGEST = 0.7;

  /** A step shorter than this is not worth a trial [m]. */
  private static final double ENOUGH = 5e-5;

  private final Function<Vector3, Optional<Rest>> trials;
  private final Vector3 first;
  private final RealVector atRest;
  private final BendSlopes slopes;
  private final double mostRisk;
  private double nearest = Double.POSITIVE_INFINITY;
  private Optional<Tried> best = Optional.empty();

  /**
   * What came of a bend that was let go.
   *
   * @param missing what is missing to the target at rest [m]
   * @param breaking what breaking risks while it is bent, guessed [1]
   */
  record Rest(double[] missing, double breaking) {}

  /**
   * The best there is.
   *
   * @param by which way the hand goes, and how far [m, tree frame]
   * @param nearest how near any bend that was tried came, whatever the risk [m]
   */
  record Found(Vector3 by, double nearest) {}

  private record Tried(Vector3 by, RealVector missing) {
    double miss() {
      return missing.getNorm();
    }
  }

  /**
   * For one place where a hand takes hold.
   *
   * @param wish the pull it would need on the bare limb
   * @param first the bend of the bare limb that comes nearest while it is held [m]
   * @param atRest what is missing before anything is bent [m]
   */
  Overbend(Wish wish, Vector3 first, double[] atRest, Ask ask) {
    this.first = first;
    this.atRest = new ArrayRealVector(atRest);
    slopes = new BendSlopes(wish, this.atRest);
    trials = ask.trials;
    mostRisk = ask.mostRisk;
  }

  /**
   * What is asked.
   *
   * @param trials what comes of a bend that is let go; empty where no pose holds
   * @param mostRisk most that breaking may risk, as guessed [1]
   */
  record Ask(Function<Vector3, Optional<Rest>> trials, double mostRisk) {}

  /** The bend that leaves the least missing within the risk; empty where none is within. */
  Optional<Found> found() {
    HandsWay way = new HandsWay(mostRisk);
    for (int n = 0; n < ALONG && !isNear() && way.goesOn(); n++) {
      Optional<Rest> rest = tried(first.times(way.next()));
      way.learn(rest.map(one -> new HandsWay.Look(progress(one), one.breaking)));
    }
    if (!way.isLimited()) {
      turn();
    }
    return best.map(one -> new Found(one.by, nearest));
  }

  /** The part of the way to the target that stays [1]. */
  private double progress(Rest rest) {
    RealVector left = new ArrayRealVector(rest.missing);
    return 1 - left.dotProduct(atRest) / atRest.dotProduct(atRest);
  }

  private boolean isNear() {
    return best.isPresent() && best.get().miss() < NEAR;
  }

  private Optional<Rest> tried(Vector3 by) {
    Optional<Rest> rest = trials.apply(by);
    if (rest.isPresent()) {
      RealVector missing = new ArrayRealVector(rest.get().missing);
      slopes.learn(by, missing);
      nearest = Math.min(nearest, missing.getNorm());
      if (rest.get().breaking <= mostRisk
          && best.map(Tried::miss).orElse(Double.POSITIVE_INFINITY) > missing.getNorm()) {
        best = Optional.of(new Tried(by, missing));
      }
    }
    return rest;
  }

  /** From the best along the first way to the side as well, by slopes. */
  private void turn() {
    double longest = LONGEST * first.norm();
    for (int n = 0; n < TURNING && best.isPresent() && !isNear(); n++) {
      Tried from = best.get();
      Vector3 step = slopes.step(from.missing);
      if (step.norm() < ENOUGH) {
        return;
      }
      double part = Math.min(1, longest / step.norm());
      tried(from.by.plus(step.times(part)));
      if (best.get() == from) {
        longest = part * step.norm() / 2;
      }
    }
  }
}
