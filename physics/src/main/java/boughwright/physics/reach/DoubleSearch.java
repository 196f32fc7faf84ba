// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** Finds a second line that does what the first leaves undone. */
final class DoubleSearch {
  /** The second lines that promise most are tried in full, this many for each first (a choice). */
  private static final int TRIED_PER_FIRST = 5;

  /** The first line is let off or drawn in by this part to see what that does [1]. */
  private static final double STEP = 0.03;

  private final Probe probe;
  private final SingleSearch search;

  DoubleSearch(Probe probe, SingleSearch search) {
    this.probe = probe;
    this.search = search;
  }

  /** A pair with what is expected of it. */
  private record Promise(List<Tie> ties, double miss) {}

  /**
   * The best that a first line can do with each of some second ones.
   *
   * @param first what the first line does alone
   * @param spots places with the anchors that fit each
   */
  List<Candidate> with(Candidate first, List<Spot> spots) {
    Tie tie = first.ties().get(0);
    Optional<Tried> more = probe.tie(List.of(tie.by((1 - STEP) * tie.shortening())));
    if (more.isEmpty()) {
      return List.of();
    }
    RealVector here = new ArrayRealVector(first.tried().missing());
    RealVector slope =
        here.subtract(new ArrayRealVector(more.get().missing())).mapDivide(STEP * tie.shortening());
    WishFinder wishes = new WishFinder(probe, first.tried());
    List<Promise> promises = new ArrayList<>();
    List<Optional<Wish>> responses =
        spots.parallelStream().map(spot -> wishes.response(spot.place())).toList();
    for (int n = 0; n < spots.size(); n++) {
      for (AnchorPlace anchor : spots.get(n).anchors()) {
        responses
            .get(n)
            .flatMap(wish -> promise(tie, here, slope, wish, anchor))
            .ifPresent(promises::add);
      }
    }
    promises.sort(Comparator.comparingDouble(Promise::miss));
    return promises.subList(0, Math.min(TRIED_PER_FIRST, promises.size())).parallelStream()
        .flatMap(promise -> search.candidate(promise.ties, TieFinder.LOOK).stream())
        .toList();
  }

  /**
   * A place with the anchors that fit it.
   *
   * @param place the place
   * @param anchors the anchors
   */
  record Spot(TiePlace place, List<AnchorPlace> anchors) {}

  private Optional<Promise> promise(
      Tie first, RealVector here, RealVector slope, Wish wish, AnchorPlace anchor) {
    if (anchor.equals(first.anchor()) && wish.place().equals(first.place())) {
      return Optional.empty();
    }
    RealVector way = Wish.vector(anchor.at().minus(wish.at()).direction().vector());
    RealVector along = wish.slope().operate(way);
    RealMatrix both = new Array2DRowRealMatrix(here.getDimension(), 2);
    both.setColumnVector(0, slope);
    both.setColumnVector(1, along);
    DecompositionSolver solver = new QRDecomposition(both).getSolver();
    if (!solver.isNonSingular()) {
      return Optional.empty();
    }
    RealVector step = solver.solve(here.mapMultiply(-1));
    double firstBy = first.shortening() + step.getEntry(0);
    double pull = step.getEntry(1);
    double secondBy = pull * way.dotProduct(wish.move().operate(way));
    if (!(firstBy > 0 && pull > 0 && secondBy > 0)) {
      return Optional.empty();
    }
    double miss = here.add(both.operate(step)).getNorm();
    return Optional.of(
        new Promise(List.of(first.by(firstBy), new Tie(wish.place(), anchor, secondBy)), miss));
  }
}
