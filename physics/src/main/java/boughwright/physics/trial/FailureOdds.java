// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.physics.wood.Doubt;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The probability of one way of failing from the margins of all draws.
 *
 * <p>Limits do not change the pose, so their doubt is not drawn but integrated: what varies from
 * limb to limb in closed form, what is not known of species and tree by the trapezoidal rule out to
 * four standard deviations, so that small probabilities keep their tails. Each pair of a guess of
 * the wood and a node of that rule is one state of what is not known, with its weight; the
 * probability is the mean over all states, its interval holds the middle nine tenths of them.
 */
final class FailureOdds {
  /** Nodes each side of the middle, a fifth of a standard deviation apart. */
  private static final int NODES = 20;

  private static final double APART = 0.2;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Margins further than this many standard deviations from failing count as none [1]. */
  private static final double FAR = 8;

  private final FailureMode mode;
  private final Doubt doubt;

  FailureOdds(FailureMode mode, Doubt doubt) {
    this.mode = mode;
    this.doubt = doubt;
  }

  /** A probability under one state of what is not known, and how likely that state is. */
  private record State(double p, double weight) {}

  /** The probability over all draws. */
  Probability of(List<Draws> all) {
    List<State> states = new ArrayList<>();
    for (Draws draws : all) {
      if (mode == FailureMode.CRACK || draws.margins().length > 0) {
        states.addAll(ofStates(draws));
      }
    }
    if (states.isEmpty()) {
      return new Probability(0, 0, 0);
    }
    states.sort(Comparator.comparingDouble(State::p));
    double weight = states.stream().mapToDouble(State::weight).sum();
    double mean = states.stream().mapToDouble(state -> state.p * state.weight).sum() / weight;
    double low = quantile(states, 0.05 * weight);
    double high = quantile(states, 0.95 * weight);
    return new Probability(Math.min(1, mean), Math.min(low, high), high);
  }

  /** The probability below which states of some weight lie, between the middles of two states. */
  private static double quantile(List<State> sorted, double weight) {
    double reached = 0;
    double before = sorted.get(0).p;
    double beforeAt = 0;
    for (State state : sorted) {
      double at = reached + state.weight / 2;
      if (at >= weight) {
        double part = at > beforeAt ? (weight - beforeAt) / (at - beforeAt) : 1;
        return before + part * (state.p - before);
      }
      reached += state.weight;
      before = state.p;
      beforeAt = at;
    }
    return before;
  }

  private List<State> ofStates(Draws draws) {
    List<State> states = new ArrayList<>(2 * NODES + 1);
    for (int k = -NODES; k <= NODES; k++) {
      double shift = doubt.unknown() * APART * k;
      double sum = 0;
      for (double[][] draw : draws.margins()) {
        sum += anyLimb(draw[mode.ordinal()], shift);
      }
      double p =
          mode == FailureMode.CRACK
              ? (sum + draws.fallen()) / draws.count()
              : sum / draws.margins().length;
      states.add(new State(p, NORMAL.density(APART * k)));
    }
    return states;
  }

  /** Probability that some limb fails, limbs being independent once the shift is known. */
  private double anyLimb(double[] margins, double shift) {
    double whole = 1;
    for (double margin : margins) {
      if (margin > Double.NEGATIVE_INFINITY) {
        whole *= 1 - fails((margin - shift) / doubt.varies());
      }
    }
    return 1 - whole;
  }

  private static double fails(double deviations) {
    if (deviations < -FAR) {
      return 0;
    }
    return deviations > FAR ? 1 : NORMAL.cumulativeProbability(deviations);
  }
}
