// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.ground.Balance;
import boughwright.modeller.design.ground.Ground;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.RootBase;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.ground.RootLevel;
import boughwright.modeller.design.ground.RootMass;
import boughwright.modeller.design.ground.TieDown;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.grow.Repotting;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.scene.GroundWords;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The root base at the planting angle that is seen: levels, soil, container, balance, ties. */
final class RootPage {
  /** So many ties hold a tree in its container; common practice, no source. */
  private static final int TIES = 4;

  private final Workspace workspace;
  private final Turning turning;
  private final Prose unsaid = Controls.prose("");
  private final Reading level = new Reading("choose.roots-level", "Roots start level within");
  private final Reading soil = new Reading("choose.roots-soil", "Soil line");
  private final Reading depth = new Reading("choose.roots-depth", "Roots go down");
  private final Reading loss = new Reading("choose.roots-loss", "Roots that go");
  private final Reading steps = new Reading("choose.roots-steps", "Repottings");
  private final Reading mass = new Reading("choose.mass", "Centre of mass");
  private final Reading ties = new Reading("choose.ties", "Ties");
  private final List<Reading> readings = List.of(level, soil, depth, loss, steps, mass, ties);
  private final JPanel list = Controls.stack();
  private final List<Reading> roots = new ArrayList<>();
  private final JPanel column = Controls.column();
  private Optional<Ground> ground = Optional.empty();
  private Optional<Turning.Basis> basis = Optional.empty();
  private boolean inView;

  RootPage(Workspace workspace, Turning turning) {
    this.workspace = workspace;
    this.turning = turning;
    unsaid.setName("choose.roots-unsaid");
    list.setName("choose.roots");
    column.setName("choose.roots-panel");
    column.add(Controls.section("Root base", readings.subList(0, 2).toArray(JComponent[]::new)));
    column.add(unsaid, "wmin 0");
    column.add(
        Controls.section("Roots and container", depth, loss, steps), "gaptop " + Controls.APART);
    column.add(Controls.section("Balance", mass, ties), "gaptop " + Controls.APART);
    column.add(Controls.section("Each root", list), "gaptop " + Controls.APART);
    turning.listen(this::follow);
  }

  JComponent component() {
    return column;
  }

  void inView(boolean on) {
    inView = on;
    follow();
  }

  private Ground ground() {
    Optional<Turning.Basis> now = Optional.of(turning.basis());
    if (!now.equals(basis) || ground.isEmpty()) {
      basis = now;
      var tree = workspace.document().tree();
      Cutting cutting =
          new Cutting(new Skeleton(tree), workspace.plan().map(Plan::cuts).orElse(List.of()));
      RootCare care = Repotting.care(TrialSpecies.of(tree));
      ground = Optional.of(new Ground(new WoodLeft(cutting), tree.setting().container(), care));
    }
    return ground.orElseThrow();
  }

  /** Shows what is so at the planting angle that is seen. */
  void follow() {
    if (!inView) {
      return;
    }
    if (turning.judge().isEmpty()) {
      readings.forEach(reading -> reading.clear(""));
      list.removeAll();
      say(turning.trouble());
      return;
    }
    GroundAnswer answer = ground().at(turning.pose());
    say(
        answer.unsaid().stream()
            .sorted()
            .map(GroundWords::unsaid)
            .collect(Collectors.joining(" ")));
    answer.base().ifPresentOrElse(this::base, this::noBase);
    answer.roots().ifPresentOrElse(all -> roots(answer, all), this::noRoots);
    mass(answer.balance());
    ties(answer.ties());
    list(answer.base().map(RootBase::levels).orElse(List.of()));
  }

  private void say(String words) {
    unsaid.say(words, Shade.CAUTION);
    unsaid.setVisible(!words.isEmpty());
  }

  private String length(double metres) {
    return workspace.units().length(metres);
  }

  private String told(String sentence) {
    return workspace.units().inWords(sentence);
  }

  private static Explanation about(String what, String source) {
    return new Explanation(what, "As exact as roots and soil line were measured.", source);
  }

  private static final String MEASURED = "Worked out from the roots as you measured them.";
  private static final String TRADE = "Common practice, no source, beside the roots as measured.";

  private void base(RootBase base) {
    if (base.levels().size() < 2) {
      level.clear("One root is level by itself.");
    } else {
      level.show(
          length(base.unevenness()),
          told(
              (base.isLevel() ? "level: " : "not level: ")
                  + GroundWords.allowed(base)
                  + "; "
                  + GroundWords.farthest(base)),
          about(
              "How far the root that is farthest off starts above or below all on average.",
              TRADE));
    }
    List<String> soils = GroundWords.soil(base);
    soil.tell(
        soils.isEmpty()
            ? "Every root shows, none has air beneath."
            : told(String.join(" ", soils)),
        about("Where the soil line belongs at this planting angle.", MEASURED));
  }

  private void noBase() {
    level.clear("");
    soil.clear("");
  }

  private void roots(GroundAnswer answer, RootMass all) {
    String now = "as measured " + length(all.depth().now());
    depth.show(
        length(all.depth().then()),
        answer.fit().map(fit -> now + "; " + told(GroundWords.room(fit))).orElse(now),
        about("How deep the lowest root goes below the soil line at the trunk.", MEASURED));
    int cuts = all.loss().cuts().size();
    String cut =
        cuts == 0 ? "None is cut." : cuts + (cuts == 1 ? " cut" : " cuts") + " to fit the container.";
    loss.show(
        GroundWords.share(all.loss().share()),
        (cut + " " + GroundWords.lifted(all.loss())).strip(),
        about(
            "The part of the root wood that is cut, or dries because it comes out of the soil.",
            MEASURED));
    if (turning.planting().isEmpty() && all.steps().atOnce()) {
      steps.clear("It stands as measured.");
    } else {
      steps.show(
          all.steps().tilts().isEmpty() ? "none" : String.valueOf(all.steps().tilts().size()),
          GroundWords.steps(all.steps(), ground().care()),
          about(
              "In how many repottings the roots allow this tilt, so that each takes no more than"
                  + " they bear.",
              TRADE));
    }
  }

  private void noRoots() {
    for (Reading reading : List.of(depth, loss, steps)) {
      reading.clear("");
    }
  }

  private void mass(Balance balance) {
    Balance.Body body = balance.whole().orElse(balance.tree());
    mass.tell(
        told(
            (Wording.capital(GroundWords.place(body)) + ". " + GroundWords.margin(balance))
                .strip()),
        about(
            "Where the middle of the mass of "
                + (balance.whole().isPresent() ? "tree, soil and container" : "the wood")
                + " stands, seen from here.",
            "Volume of the wood times its green density; foliage is left out."));
  }

  private void ties(Optional<TieDown> held) {
    if (held.isEmpty()) {
      ties.clear("Fewer than three places in the soil bear it.");
      return;
    }
    ties.tell(
        told(
            GroundWords.untied(held.get())
                + " "
                + Wording.capital(GroundWords.tied(held.get(), TIES, ground().trunk()))
                + "."),
        about(
            "The level push, two thirds up the tree, that rocks it untied; soil on the roots is left"
                + " out.",
            "Balance of moments about the edge of what bears it; the push is common practice, no"
                + " source."));
  }

  private void list(List<RootLevel> levels) {
    if (roots.size() != levels.size()) {
      list.removeAll();
      roots.clear();
      for (RootLevel one : levels) {
        Reading reading =
            new Reading("choose.root-" + one.root().id(), VisibleText.of(one.root().id()));
        roots.add(reading);
        list.add(reading, "wmin 0, growx");
      }
      list.revalidate();
    }
    for (int n = 0; n < levels.size(); n++) {
      RootLevel one = levels.get(n);
      roots
          .get(n)
          .tell(
              told(Wording.capital(GroundWords.state(one.then())) + "; " + GroundWords.rise(one) + "."),
              about("How the start of this root lies to the soil line.", MEASURED));
    }
  }
}
