// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.front.Front;
import boughwright.modeller.design.front.FrontDoubt;
import boughwright.modeller.design.front.FrontGrid;
import boughwright.modeller.design.front.FrontRange;
import boughwright.modeller.design.front.FrontSearch;
import boughwright.modeller.design.front.FrontWatch;
import boughwright.modeller.design.front.Fronts;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.window.canvas.Facing;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Background;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Timer;

/** Looks in the background for the best fronts that differ, and lists them. */
final class BestFronts {
  /** So often it is looked whether the search was stopped at the foot of the window [ms]. */
  private static final int WATCH_MS = 200;

  private final Background background;
  private final Turning turning;
  private final FrontPictures pictures;
  private final List<FrontCard> cards = new ArrayList<>();
  private final Timer watch = new Timer(WATCH_MS, event -> watch());
  private final JButton find = Controls.button("Find the best five");
  private final Prose note = Controls.prose("");
  private final JPanel list = Controls.stack();
  private final JComponent section;
  private Optional<Background.Job> job = Optional.empty();
  private Optional<Found> found = Optional.empty();
  private Optional<Turning.Basis> basis = Optional.empty();

  BestFronts(Background background, Turning turning, Facing facing) {
    this.background = background;
    this.turning = turning;
    pictures = new FrontPictures(background, facing, turning, this::showPictures);
    Controls.named(find, "choose.find", "Find the best five fronts");
    find.setMnemonic('i');
    find.addActionListener(event -> findOrStop());
    note.setName("choose.found");
    list.setName("choose.best");
    section = Controls.section("The best fronts that differ", find, note, list);
  }

  JComponent component() {
    return section;
  }

  private boolean isLooking() {
    return job.filter(Background.Job::isRunning).isPresent();
  }

  /** What was found counts for the tree, the cuts and the wishes it was found for. */
  private void forgetOld() {
    if (!basis.equals(Optional.of(turning.basis()))) {
      job.ifPresent(Background.Job::cancel);
      found = Optional.empty();
      basis = Optional.of(turning.basis());
    }
  }

  /** It may have been stopped, or have failed, without a word here. */
  private void watch() {
    if (!isLooking()) {
      watch.stop();
      fill();
    }
  }

  private void findOrStop() {
    if (isLooking()) {
      job.ifPresent(Background.Job::cancel);
      fill();
      return;
    }
    Optional<Turning.Judge> judge = turning.judge();
    if (judge.isPresent()) {
      job =
          Optional.of(
              background.start(
                  "Looking for the best fronts",
                  progress -> searched(judge.get(), progress),
                  this::take));
      watch.start();
    }
    fill();
  }

  /** What was found, and how far measuring tells it apart. */
  private record Found(Fronts fronts, Optional<FrontDoubt> doubt) {
    String about(int n) {
      boolean same = n > 0 && doubt.filter(one -> !one.tells(fronts, n)).isPresent();
      return same ? " As good as the first, as far as measuring can tell." : "";
    }

    String words() {
      if (fronts.fronts().isEmpty()) {
        return "Nothing that counts can be said of this tree, so no side is better than another.";
      }
      return doubt.filter(one -> !one.tellsSides(fronts)).isPresent()
          ? "No side is better than another, as far as measuring can tell."
          : "";
    }
  }

  private static Found searched(Turning.Judge judge, Background.Progress progress) {
    FrontGrid grid = FrontGrid.of(FrontRange.usual(judge.rules().style()));
    progress.now("Looking at every side in every tilt");
    Fronts fronts =
        new FrontSearch(judge.gauge(), judge.rules(), grid)
            .run(new Watch(progress))
            .orElseThrow(() -> new CancellationException("stopped"));
    Optional<FrontDoubt> doubt = Optional.empty();
    if (!fronts.fronts().isEmpty()) {
      progress.now("Looking how far measuring tells them apart");
      doubt = Optional.of(FrontDoubt.of(judge.tree(), judge.rules(), fronts));
    }
    return new Found(fronts, doubt);
  }

  private void take(Found result) {
    found = Optional.of(result);
    fill();
  }

  /** Shows what is known now. */
  void fill() {
    forgetOld();
    boolean can = turning.judge().isPresent();
    find.setEnabled(can);
    find.setText(isLooking() ? "Stop looking" : "Find the best five");
    note.say(words(), Shade.QUIET);
    note.setVisible(!note.getText().isEmpty());
    list.removeAll();
    cards.clear();
    List<Front> fronts = found.map(one -> one.fronts().fronts()).orElse(List.of());
    pictures.want(fronts.stream().map(Front::pose).toList());
    for (int n = 0; n < fronts.size(); n++) {
      FrontCard card = card(n + 1, fronts.get(n));
      cards.add(card);
      list.add(card.component(), "wmin 0, growx, gapbottom " + Controls.NEAR);
    }
    showPictures();
    list.revalidate();
    list.repaint();
    section.revalidate();
  }

  private String words() {
    if (isLooking()) {
      return "Every side is looked at in every tilt. Go on meanwhile.";
    }
    return found.map(Found::words).orElseGet(turning::trouble);
  }

  private void showPictures() {
    for (int n = 0; n < cards.size(); n++) {
      cards.get(n).show(pictures.of(n));
    }
  }

  private FrontCard card(int number, Front front) {
    return new FrontCard(
        "choose.best-" + number,
        number + ":  " + FrontWords.score(front.score().total()) + " of 100",
        MeasureWords.sentence(front.pose())
            + found.map(one -> one.about(number - 1)).orElse("")
            + MeasureWords.reasons(front.reasons()),
        () -> turning.to(front.pose()));
  }

  /** Carries on how far a search has come, and that it was stopped. */
  private static final class Watch implements FrontWatch {
    private final Background.Progress progress;
    private volatile boolean stopped;

    Watch(Background.Progress progress) {
      this.progress = progress;
    }

    @Override
    public void part(double done) {
      try {
        progress.part(done);
      } catch (CancellationException e) {
        stopped = true;
      }
    }

    @Override
    public boolean isStopped() {
      return stopped;
    }
  }
}
