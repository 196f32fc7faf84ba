// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.ground.ContainerFit;
import boughwright.modeller.design.ground.Ground;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.Level;
import boughwright.modeller.design.ground.RootBase;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.ground.RootLevel;
import boughwright.modeller.design.ground.RootPlane;
import boughwright.modeller.design.ground.Unsaid;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.tree.Container;
import boughwright.viewer.scene.GroundWords;
import boughwright.viewer.scene.Wording;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The full account of the root base for one front, for the person at the bench. */
final class GroundText {
  /** What is told where the account comes to it. */
  private static final Set<Unsaid> OF_BASE =
      EnumSet.of(
          Unsaid.NO_ROOTS, Unsaid.ONLY_TAP_ROOTS, Unsaid.TOO_FEW_ROOTS, Unsaid.ROOTS_ON_A_LINE);

  private final TextPage page;
  private final GroundAnswer answer;
  private final RootCare care;

  private GroundText(TextPage page, GroundAnswer answer, RootCare care) {
    this.page = page;
    this.answer = answer;
    this.care = care;
  }

  /** Writes the account of one front. */
  static void write(TextPage page, Ground ground, FrontPose pose) {
    GroundText text = new GroundText(page, ground.at(pose), ground.care());
    text.base();
    text.container();
    new StandText(page, text.answer).write();
  }

  private void unsaid(Set<Unsaid> some) {
    some.stream().filter(answer.unsaid()::contains).forEach(what -> page.inner(unsaid(what)));
  }

  /** What cannot be said, why, and how to mend it here. */
  static String unsaid(Unsaid what) {
    String mend =
        switch (what) {
          case NO_ROOTS -> " Add the roots as segments of kind root, on the trunk.";
          case NO_CONTAINER -> " Give its inner sizes with --container, or in the file.";
          case CONTAINER_UNDER_TRUNK -> " Give a larger one.";
          case NO_MASS -> " Give mass_kg in the file.";
          case ONLY_TAP_ROOTS, TOO_FEW_ROOTS, ROOTS_ON_A_LINE, MASS_TOO_SMALL, NOTHING_BEARS -> "";
        };
    return GroundWords.unsaid(what) + mend;
  }

  private static String mm(double length) {
    return Shown.fixed(1000 * length, 0) + " mm";
  }

  static String degrees(double angle) {
    return Shown.fixed(Math.toDegrees(angle), 1) + " degrees";
  }

  private void base() {
    page.heading("Root base");
    unsaid(OF_BASE);
    answer.base().ifPresent(this::base);
  }

  private void base(RootBase base) {
    int count = base.levels().size();
    page.inner(
        (count == 1 ? "One root leaves" : count + " roots leave")
            + " the trunk, which is "
            + mm(base.trunk())
            + " thick there; the trade asks for "
            + RootBase.ENOUGH
            + " or more all round."
            + (count < 2
                ? ""
                : " The widest gap is "
                    + Shown.fixed(Math.toDegrees(base.extent().gap()), 0)
                    + " degrees."));
    if (count > 1) {
      level(base);
    }
    base.plane().ifPresent(plane -> plane(base, plane));
    page.inner(
        "It spreads "
            + mm(base.extent().widest())
            + " across, "
            + mm(base.extent().seen())
            + " as you see it; the trade asks for "
            + mm(RootBase.SPREAD * base.trunk())
            + ", twice the trunk.");
    roots(base);
    soil(base);
    page.inner("What the trade asks for is common practice, no source.");
  }

  private void level(RootBase base) {
    page.inner(
        (base.isLevel() ? "Level: " : "Not level: ")
            + "the starts lie within "
            + Shown.millimetres(base.unevenness())
            + " of their mean height; "
            + GroundWords.allowed(base)
            + ". "
            + Wording.capital(GroundWords.farthest(base))
            + ", deepest "
            + base.deepest().root().id()
            + ".");
  }

  private void plane(RootBase base, RootPlane plane) {
    Planting levelling = plane.levelling();
    FrontPose best = FrontPose.of(answer.pose().azimuth(), levelling);
    page.inner(
        "The plane through the starts stands "
            + degrees(base.off().orElseThrow())
            + " off level here. It lies level when the tree as measured is tilted "
            + sides(best)
            + "; the starts then keep within "
            + Shown.millimetres(plane.unevenness())
            + " of it on average.");
  }

  /** A tilt as the viewer sees it. */
  private static String sides(FrontPose pose) {
    return Shown.fixed(Math.abs(Math.toDegrees(pose.tiltRight())), 1)
        + " degrees to the "
        + (pose.tiltRight() < 0 ? "left" : "right")
        + " and "
        + Shown.fixed(Math.abs(Math.toDegrees(pose.tiltToward())), 1)
        + (pose.tiltToward() < 0 ? " away" : " toward you");
  }

  private void roots(RootBase base) {
    TextTable table =
        new TextTable(2).row("root", "start", "caliper", "middle", "upper side", "rise", "end");
    for (RootLevel level : base.levels()) {
      table.row(
          level.root().id(),
          GroundWords.state(level.then()),
          Shown.fixed(1000 * level.root().caliper(), 0),
          GroundWords.height(level.then().axis()),
          GroundWords.height(level.then().upper()),
          GroundWords.height(level.rise()),
          GroundWords.height(level.tip().z()));
    }
    page.table(table);
    page.inner(
        "Heights above the soil line in mm, where each root leaves the trunk and at its end; rise:"
            + " against the tree as measured.");
  }

  private void soil(RootBase base) {
    changed("Buried by this tilt: ", base.changed(Level.State.BURIED));
    changed("Air comes beneath: ", base.changed(Level.State.CLEAR));
    GroundWords.soil(base).forEach(page::inner);
  }

  private void changed(String words, List<RootLevel> levels) {
    if (!levels.isEmpty()) {
      page.inner(words + GroundWords.names(levels) + ".");
    }
  }

  private void container() {
    if (answer.roots().isEmpty() && answer.fit().isEmpty()) {
      unsaid(EnumSet.of(Unsaid.NO_CONTAINER));
      return;
    }
    page.heading("Roots and container");
    answer.roots().ifPresent(roots -> new RootMassText(page, answer, care).write(roots));
    unsaid(EnumSet.of(Unsaid.NO_CONTAINER, Unsaid.CONTAINER_UNDER_TRUNK));
    answer.fit().ifPresent(this::fit);
  }

  private void fit(ContainerFit fit) {
    Container.Size size = fit.container().size();
    page.inner(
        "The container is "
            + Shown.fixed(1000 * size.length(), 0)
            + " x "
            + Shown.fixed(1000 * size.width(), 0)
            + " x "
            + mm(size.depth())
            + " inside"
            + turned(fit.container())
            + ". For a tree of "
            + mm(fit.height())
            + " on a trunk of "
            + mm(fit.trunk())
            + " the trade would take a length of "
            + mm(fit.usualLength())
            + ", two thirds of the height, and a depth of "
            + mm(fit.usualDepth())
            + ", the trunk's thickness"
            + GroundWords.PRACTICE
            + ".");
  }

  /** How its length stands to the front, where it is not square to it. */
  private String turned(Container container) {
    double off = Math.toDegrees(answer.pose().azimuth() - container.turn()) % 180;
    double least = off > 90 ? off - 180 : off < -90 ? off + 180 : off;
    return Math.abs(least) < 0.5
        ? ""
        : ", its length turned by "
            + Shown.fixed(Math.abs(least), 0)
            + " degrees against this front";
  }
}
