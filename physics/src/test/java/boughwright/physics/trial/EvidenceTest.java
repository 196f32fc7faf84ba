// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against the precision form of the same conditional, inverted by Hipparchus. */
class EvidenceTest {
  private static final double[][] SHARED = {{0.8, 0.3}, {0.2, -0.5}};
  private static final double[][] OWN = {{0.4, 0, 0.1}, {0, 0.7, 0.2}};
  private static final double[] SEEN = {0.9, -0.4};
  private static final double[] NOISE = {0.05, 0.2};
  private static final int DRAWS = 200_000;

  /** Four standard errors of a mean of so many draws of spread 1. */
  private static final double MEAN_ERROR = 4 / Math.sqrt(DRAWS);

  private static Evidence evidence() {
    return new Evidence(
        List.of(
            new Evidence.Observation(SEEN[0], SHARED[0], OWN[0], NOISE[0]),
            new Evidence.Observation(SEEN[1], SHARED[1], OWN[1], NOISE[1])));
  }

  /** Covariance of all five variables given what was seen: (I + A' R^-1 A)^-1. */
  private static RealMatrix covariance() {
    RealMatrix a = MatrixUtils.createRealMatrix(2, 5);
    a.setSubMatrix(SHARED, 0, 0);
    a.setSubMatrix(OWN, 0, 2);
    RealMatrix weight = MatrixUtils.createRealDiagonalMatrix(new double[] {20, 5});
    RealMatrix precision =
        MatrixUtils.createRealIdentityMatrix(5).add(a.transpose().multiply(weight).multiply(a));
    return MatrixUtils.inverse(precision);
  }

  private static double[] mean() {
    RealMatrix a = MatrixUtils.createRealMatrix(2, 5);
    a.setSubMatrix(SHARED, 0, 0);
    a.setSubMatrix(OWN, 0, 2);
    double[] weighted = {20 * SEEN[0], 5 * SEEN[1]};
    return covariance().operate(a.transpose().operate(weighted));
  }

  @Test
  void means_agreeWithThePrecisionForm() {
    double[] mean = mean();
    assertThat(evidence().sharedMean(2))
        .containsExactly(new double[] {mean[0], mean[1]}, within(1e-12));
    assertThat(evidence().ownMean(3))
        .containsExactly(new double[] {mean[2], mean[3], mean[4]}, within(1e-12));
  }

  @Test
  void draws_haveTheMeanAndCovarianceOfThePrecisionForm() {
    Evidence evidence = evidence();
    java.util.Random random = new java.util.Random(5);
    double[] sum = new double[5];
    double[][] products = new double[5][5];
    for (int n = 0; n < DRAWS; n++) {
      double[] shared = normals(random, 2);
      evidence.correctShared(shared, normals(random, 3), normals(random, 2));
      double[] own = normals(random, 3);
      evidence.correctOwn(own, shared, normals(random, 2));
      double[] all = {shared[0], shared[1], own[0], own[1], own[2]};
      for (int i = 0; i < 5; i++) {
        sum[i] += all[i];
        for (int j = 0; j < 5; j++) {
          products[i][j] += all[i] * all[j];
        }
      }
    }
    double[] mean = mean();
    RealMatrix covariance = covariance();
    for (int i = 0; i < 5; i++) {
      assertThat(sum[i] / DRAWS).isCloseTo(mean[i], within(MEAN_ERROR));
      for (int j = 0; j < 5; j++) {
        double found = products[i][j] / DRAWS - sum[i] / DRAWS * (sum[j] / DRAWS);
        assertThat(found).isCloseTo(covariance.getEntry(i, j), within(2 * MEAN_ERROR));
      }
    }
  }

  @Test
  void nothingSeen_leavesDrawsAsTheyAre() {
    Evidence none = new Evidence(List.of());
    double[] shared = {0.3, -1.2};
    none.correctShared(shared, new double[3], new double[0]);
    assertThat(shared).containsExactly(0.3, -1.2);
    assertThat(none.sharedMean(2)).containsExactly(0, 0);
  }

  private static double[] normals(java.util.Random random, int count) {
    return random.doubles(count).map(u -> random.nextGaussian()).toArray();
  }
}
