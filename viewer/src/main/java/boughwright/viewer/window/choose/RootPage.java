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
import boughwright.physics.grow.TreeKind;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.scene.GroundWords;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
  private final Reading mass = new Reading("choose.mass", "Middle of the mass");
  private final Reading ties = new Reading("choose.ties", "Untied, a push rocks it");
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
      RootCare care =
          switch (TreeKind.of(TrialSpecies.of(tree))) {
            case DECIDUOUS, RING_POROUS -> RootCare.DECIDUOUS;
            case CONIFER -> RootCare.CONIFER;
            case EVERGREEN, UNKNOWN -> RootCare.OTHER;
          };
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

  /** A distance in whole millimetres; the wood is not known better. */
  private String near(double metres) {
    return length(Math.round(Math.abs(metres) * 1000) / 1000.0);
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
          (base.isLevel() ? "level" : "uneven")
              + "; "
              + length(base.tolerance())
              + " is let pass; farthest off: "
              + base.farthest().root().id(),
          about(
              "How far the root that is farthest off starts above or below all on average.",
              TRADE));
    }
    double raise = base.raiseToCover();
    double lower = base.lowerToShow();
    String words =
        raise > 0 && lower > 0
            ? "some high, some buried"
            : raise > 0
                ? length(raise) + " higher"
                : lower > 0 ? length(lower) + " lower" : "as it is";
    String note =
        raise > 0 && lower > 0
            ? length(raise) + " more soil covers all, " + length(lower) + " less shows all"
            : raise > 0
                ? "so that no root has air beneath"
                : lower > 0 ? "so that every root shows" : "every root shows, none has air beneath";
    soil.show(words, note, about("Where the soil line belongs at this planting angle.", MEASURED));
  }

  private void noBase() {
    level.clear("");
    soil.clear("");
  }

  private void roots(GroundAnswer answer, RootMass all) {
    depth.show(
        length(all.depth().then()),
        "as measured "
            + length(all.depth().now())
            + (answer.fit().isPresent()
                ? "; the container holds " + length(answer.fit().get().soilDepth())
                : ""),
        about("How deep the lowest root goes below the soil line at the trunk.", MEASURED));
    int cuts = all.loss().cuts().size();
    int lifted = all.loss().lifted().size();
    loss.show(
        GroundWords.share(all.loss().share()),
        (cuts == 0
                ? "none is cut"
                : cuts + (cuts == 1 ? " cut" : " cuts") + " to fit the container")
            + (lifted == 0
                ? ""
                : "; " + lifted + (lifted == 1 ? " root" : " roots") + " out of the soil dry up"),
        about(
            "The part of the root wood that is cut, or dries because it comes out of the soil.",
            MEASURED));
    List<Double> tilts = all.steps().tilts();
    Explanation why =
        about(
            "In how many repottings the roots allow this tilt, so that each takes no more than they"
                + " bear.",
            TRADE);
    if (tilts.isEmpty()) {
      steps.tell(GroundWords.noSteps(), why);
    } else if (tilts.size() == 1) {
      steps.show("1", "the roots allow it at once", why);
    } else {
      steps.show(
          String.valueOf(tilts.size()),
          "tilt it to "
              + tilts.stream().map(workspace.units()::angle).collect(Collectors.joining(", then "))
              + ", each once roots have grown again",
          why);
    }
  }

  private void noRoots() {
    for (Reading reading : List.of(depth, loss, steps)) {
      reading.clear("");
    }
  }

  private void mass(Balance balance) {
    Balance.Body body = balance.whole().orElse(balance.tree());
    Explanation why =
        about(
            "Where the middle of the mass of "
                + (balance.whole().isPresent() ? "tree, soil and container" : "the wood")
                + " stands beside the trunk base, seen from here.",
            "Volume of the wood times its green density; foliage is left out.");
    String side = near(body.centre().x()) + (body.centre().x() >= 0 ? " right" : " left");
    String back = near(body.centre().y()) + (body.centre().y() >= 0 ? " behind" : " before");
    String edge =
        balance.margin().isEmpty()
            ? ""
            : balance.margin().get() < 0
                ? ". It falls over: the mass stands beyond the container"
                : ". "
                    + length(balance.margin().get())
                    + " inside the container's edge; it tips at "
                    + workspace.units().angle(balance.tips().orElseThrow());
    mass.tell(side + ", " + back + " the trunk base" + edge + ".", why);
  }

  private void ties(Optional<TieDown> held) {
    if (held.isEmpty()) {
      ties.clear("Fewer than three places in the soil bear it.");
      return;
    }
    double push = held.get().rocksAt();
    double distance = ground().trunk();
    OptionalDouble tension = held.get().tension(TieDown.round(TIES, distance));
    String tied =
        tension.isEmpty()
            ? "four ties beside the trunk cannot hold it"
            : tension.getAsDouble() == 0
                ? "it needs no ties against a push of "
                    + workspace.units().force(held.get().push().force())
                : "four ties, each of "
                    + workspace.units().force(tension.getAsDouble())
                    + ", hold it against a push of "
                    + workspace.units().force(held.get().push().force());
    ties.show(
        push <= 0 ? "falls by itself" : "at " + workspace.units().force(push),
        tied,
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
      String state = workspace.units().inWords(GroundWords.state(one.then()));
      roots
          .get(n)
          .tell(
              state
                  + "; its start "
                  + length(Math.abs(one.rise()))
                  + (one.rise() >= 0 ? " higher" : " lower")
                  + " than as measured",
              about("How the start of this root lies to the soil line.", MEASURED));
    }
  }
}
