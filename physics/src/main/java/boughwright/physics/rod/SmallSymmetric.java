// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Solves a small dense symmetric system, not necessarily positive, by L D L^T with the largest
 * diagonal entry as pivot, and counts its negative eigenvalues. A workspace.
 *
 * <p>Commons Math has no factorisation that gives the inertia short of an eigenvalue search, which
 * takes longer than the rest of an iteration on a small rod.
 */
final class SmallSymmetric {
  private final double[][] a;
  private final int[] order;
  private int size;
  private int negative;

  SmallSymmetric(int most) {
    a = new double[most][most];
    order = new int[most];
  }

  double[][] matrix() {
    return a;
  }

  int negative() {
    return negative;
  }

  /**
   * Factorises the leading part of {@link #matrix()}, of which the lower half is read.
   *
   * @return whether every pivot is large enough to divide by
   */
  boolean factorise(int n) {
    size = n;
    negative = 0;
    double scale = 0;
    for (int i = 0; i < n; i++) {
      order[i] = i;
      for (int j = 0; j < i; j++) {
        a[j][i] = a[i][j];
      }
      scale = Math.max(scale, Math.abs(a[i][i]));
    }
    for (int k = 0; k < n; k++) {
      int best = k;
      for (int i = k + 1; i < n; i++) {
        best = Math.abs(a[i][i]) > Math.abs(a[best][best]) ? i : best;
      }
      swap(k, best, n);
      double pivot = a[k][k];
      if (!(Math.abs(pivot) > 1e-14 * scale)) {
        return false;
      }
      negative += pivot < 0 ? 1 : 0;
      for (int i = k + 1; i < n; i++) {
        double factor = a[i][k] / pivot;
        for (int j = k + 1; j <= i; j++) {
          a[i][j] -= factor * a[j][k];
          a[j][i] = a[i][j];
        }
      }
      for (int i = k + 1; i < n; i++) {
        a[i][k] /= pivot;
      }
    }
    return true;
  }

  private void swap(int k, int best, int n) {
    if (k == best) {
      return;
    }
    int held = order[k];
    order[k] = order[best];
    order[best] = held;
    double[] row = a[k];
    a[k] = a[best];
    a[best] = row;
    for (int i = 0; i < n; i++) {
      // rows above k keep only factors to the left of the diagonal, so all columns may be swapped
      if (i >= k) {
        double value = a[i][k];
        a[i][k] = a[i][best];
        a[i][best] = value;
      }
    }
  }

  /** Solves for one right side, written over with the answer. */
  void solve(double[] b) {
    double[] x = new double[size];
    for (int i = 0; i < size; i++) {
      x[i] = b[order[i]];
      for (int j = 0; j < i; j++) {
        x[i] -= a[i][j] * x[j];
      }
    }
    for (int i = 0; i < size; i++) {
      x[i] /= a[i][i];
    }
    for (int i = size - 1; i >= 0; i--) {
      for (int j = i + 1; j < size; j++) {
        x[i] -= a[j][i] * x[j];
      }
    }
    for (int i = 0; i < size; i++) {
      b[order[i]] = x[i];
    }
  }
}
