// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.PullTest;
import boughwright.physics.trial.PullNote.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Looks a pull test over, as someone who has done many would. */
final class PullNotes {
  /** A test this far from what is known of the wood is questioned [1 sd]. */
  static final double NOT_BELIEVED = 4;

  /** A movement of fewer errors of reading than this tells little [1]. */
  private static final double FEW_ERRORS = 5;

  /** What a test must leave of the doubt at most, to have been worth the while [1]. */
  private static final double TELLS_NOTHING = 0.9;

  /** A base that moved by more than this part of the point's movement [1]. */
  private static final double MUCH_BASE = 0.2;

  /** The same for a union that turned and was not read [1]. */
  private static final double MUCH_TURN = 0.05;

  /** Error of one load against another beside the ruler's, as standard deviation of ln [1]. */
  private static final double LOAD_AGAINST_LOAD = 0.02;

  private final PullAnswer answer;
  private final PullUpdate update;
  private final int n;
  private final List<PullNote> notes = new ArrayList<>();

  /**
   * @param answer the answer without notes
   * @param update all tests of the tree
   * @param n which of them it answers for
   */
  PullNotes(PullAnswer answer, PullUpdate update, int n) {
    this.answer = answer;
    this.update = update;
    this.n = n;
  }

  List<PullNote> all() {
    expected();
    others();
    loads();
    size();
    hardness();
    base();
    leftOut();
    return notes;
  }

  private void add(Kind kind, boolean question, String words, String remedy) {
    notes.add(new PullNote(kind, question, words, remedy));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private void expected() {
    double far = Math.abs(answer.fit().expected().deviations());
    if (far > PullUpdate.OUTLIER) {
      double ratio = Math.exp(Math.abs(answer.fit().lnOverExpected()));
      String words =
          text(
              "the point moved %.1f times %s this pull should move it, and %s",
              ratio,
              answer.fit().lnOverExpected() > 0 ? "as far as" : "less far than",
              far > NOT_BELIEVED
                  ? "no branch of this wood is known to be so"
                      + (answer.fit().lnOverExpected() > 0 ? " soft" : " stiff")
                  : "hardly any branch of this wood is so");
      add(
          Kind.NOT_EXPECTED,
          far > NOT_BELIEVED,
          words,
          "Check the units, the calipers and the place of the pull, and measure again");
    }
  }

  private void others() {
    double own = Math.abs(update.apart(n));
    int worst = 0;
    for (int k = 0; k < update.points().size(); k++) {
      worst = Math.abs(update.apart(k)) > Math.abs(update.apart(worst)) ? k : worst;
    }
    double most = Math.abs(update.apart(worst));
    // of two tests that disagree neither stands out: the new one is asked about
    boolean isThis = own > PullUpdate.OUTLIER && (worst == n || update.points().size() == 2);
    if (isThis) {
      double ratio = Math.exp(answer.fit().others().orElseThrow().lnSofter());
      add(
          Kind.NOT_LIKE_THE_OTHERS,
          true,
          text(
              "the point moved %s times as far as the other tests lead to expect",
              text(ratio < 0.1 ? "%.3f" : "%.1f", ratio)),
          "Check the units, look for a knot or a support that gave way, and measure again");
    } else if (most > PullUpdate.OUTLIER) {
      add(
          Kind.OTHER_TEST_STANDS_OUT,
          false,
          text(
              "test \"%s\" does not agree with the others; all are believed less for it",
              update.points().get(worst).test().id()),
          "Measure there again, or take that test out of the file");
    }
  }

  /** How far the last load lies from the first, in standard deviations. */
  static double loadsApart(PullPoint point) {
    List<PullPoint.Reading> readings = point.readings();
    PullPoint.Reading first = readings.get(0);
    PullPoint.Reading last = readings.get(readings.size() - 1);
    double variance = first.variance() + last.variance() + LOAD_AGAINST_LOAD * LOAD_AGAINST_LOAD;
    return (last.residual() - first.residual()) / Math.sqrt(variance);
  }

  private void loads() {
    double apart = answer.fit().loadsApart();
    if (Math.abs(apart) > PullUpdate.OUTLIER) {
      add(
          Kind.LOADS_DISAGREE,
          Math.abs(apart) > NOT_BELIEVED,
          apart > 0
              ? "the second load moved the point further than the first leads to expect: something"
                  + " slipped, gave way or began to flow"
              : "the second load moved the point less than the first leads to expect: there was"
                  + " slack in the first, or the branch touched something",
          "Load it once lightly, set the mark again, and read both loads from that mark");
    }
  }

  private void size() {
    boolean small = true;
    for (PullTest.Reading read : answer.test().readings()) {
      double net = read.moved() - read.baseMoved();
      small &= net < FEW_ERRORS * read.movedError();
    }
    boolean nothing = answer.after().spread() > TELLS_NOTHING * answer.before().spread();
    if (small || nothing) {
      add(
          Kind.TOO_SMALL,
          false,
          nothing
              ? "the test was too small to tell anything: the stiffness is known no better"
              : "the movement was so small that the ruler decides the result",
          "Pull nearer the tip or harder, and read against a pointer");
    }
  }

  private void hardness() {
    PullStrain strain = answer.strain();
    boolean fell = update.points().get(n).readings().stream().anyMatch(one -> !one.holds());
    if (strain.endangered() || fell) {
      add(
          Kind.TOO_HARD,
          false,
          "the test was too hard: such a bend cracks one branch in twenty or more",
          "Do not pull so hard again; look for cracks on the outside of the bend");
    } else if (strain.flowed()) {
      add(
          Kind.TOO_HARD,
          false,
          "the test was too hard to be springy: wood flowed on the inside of the bend, which is"
              + " allowed for but not known well",
          text("Pull no harder than %.1f N there", strain.gentlest()));
    }
  }

  private void base() {
    boolean much =
        answer.test().readings().stream()
            .anyMatch(read -> Math.abs(read.baseMoved()) > MUCH_BASE * read.moved());
    if (much) {
      add(
          Kind.BASE_MOVED,
          false,
          "the start of the branch moved much; its turning was not read and makes the result less"
              + " sure",
          "Hold the trunk just below the branch, wedge the pot, and measure again");
    }
    double turn = update.points().get(n).turningOfBase();
    if (turn > MUCH_TURN) {
      add(
          Kind.BASE_NOT_READ,
          false,
          text(
              "if the trunk was not held at the branch, its giving way is %.0f %% of the movement,"
                  + " and the branch is stiffer than stated",
              100 * turn / (1 + turn)),
          "Hold the trunk at the branch, or read how far the start of the branch moves too");
    }
  }

  private void leftOut() {
    for (PullTest test : update.leftOut()) {
      add(
          Kind.OTHER_TEST_STANDS_OUT,
          false,
          text("test \"%s\" pulls where, or the way, its branch cannot bend: left out", test.id()),
          "Correct its segment, along or direction in the file, or take it out");
    }
  }
}
