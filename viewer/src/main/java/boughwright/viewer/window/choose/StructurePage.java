// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Remedy;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.design.review.ReviewRules;
import boughwright.modeller.design.review.WoodKind;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.grow.CutBearing;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.scene.FaultWords;
import boughwright.viewer.scene.RemedyWords;
import boughwright.viewer.scene.WoundWords;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasLayer;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** What a grower would find amiss in the structure, marked on the tree, with what can be done. */
final class StructurePage {
  /** So many are told; the others matter less. */
  private static final int MOST = 20;

  /** A pause in turning after which it is looked again, as the front decides some [ms]. */
  private static final int PAUSE = 200;

  private final Workspace workspace;
  private final Turning turning;
  private final Canvas canvas;
  private final Prose note = Controls.prose("");
  private final JPanel list = Controls.stack();
  private final JPanel column = Controls.column();
  private final Timer pause = new Timer(PAUSE, event -> review());
  private Optional<Review> shown = Optional.empty();
  private boolean inView;

  StructurePage(Workspace workspace, Canvas canvas, Turning turning) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.turning = turning;
    pause.setRepeats(false);
    note.setName("choose.structure-note");
    list.setName("choose.faults");
    column.setName("choose.structure-panel");
    column.add(Controls.section("Structure", note, list));
    canvas.add(new FaultMarks(canvas, this::marked)::paint, CanvasLayer.Place.OVER);
    turning.listen(
        () -> {
          if (inView) {
            pause.restart();
          }
        });
  }

  JComponent component() {
    return column;
  }

  void inView(boolean on) {
    inView = on;
    if (on) {
      // units may be others than when it was seen last
      shown = Optional.empty();
      review();
    } else {
      pause.stop();
    }
    canvas.redraw();
  }

  /** The faults that are marked on the tree now, in their order. */
  private List<Fault> marked() {
    return inView ? faults() : List.of();
  }

  private List<Fault> faults() {
    return shown
        .map(one -> one.faults().subList(0, Math.min(MOST, one.faults().size())))
        .orElse(List.of());
  }

  /** Looks at the tree again. */
  void review() {
    if (!inView) {
      return;
    }
    Optional<Review> now = turning.judge().map(judge -> made());
    if (now.equals(shown) && list.getComponentCount() > 0) {
      return;
    }
    shown = now;
    fill();
    canvas.redraw();
  }

  private Review made() {
    Document document = workspace.document();
    Optional<Plan> plan = workspace.plan();
    Skeleton skeleton = new Skeleton(document.tree());
    WoodLeft wood = new WoodLeft(new Cutting(skeleton, plan.map(Plan::cuts).orElse(List.of())));
    WoodKind kind = CutBearing.of(TrialSpecies.of(document.tree()));
    TreeStyle style = document.fronts().wishes().style().orElse(TreeStyle.UPRIGHT);
    return Review.of(
        wood,
        TrunkLine.of(wood, plan.flatMap(Plan::apex)),
        Optional.of(turning.pose()),
        ReviewRules.of(style, kind));
  }

  private void fill() {
    List<Fault> faults = faults();
    int more = shown.map(one -> one.faults().size()).orElse(0) - faults.size();
    String told =
        shown.isEmpty()
            ? turning.trouble()
            : faults.isEmpty()
                ? "Nothing is found amiss by these rules."
                : "What matters most comes first; the numbers stand on the tree."
                    + (more > 0 ? " " + more + " lesser ones are left out." : "");
    note.say(told, shown.isEmpty() ? Shade.CAUTION : Shade.QUIET);
    boolean inHand = isFocusInside();
    list.removeAll();
    for (int n = 0; n < faults.size(); n++) {
      list.add(card(n + 1, faults.get(n)), "wmin 0, growx, gaptop " + Controls.APART);
    }
    list.revalidate();
    list.repaint();
    if (inHand) {
      // what had the keyboard is gone: it goes to the first of what is left
      firstButton().ifPresent(JComponent::requestFocusInWindow);
    }
  }

  private boolean isFocusInside() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && SwingUtilities.isDescendingFrom(owner, list);
  }

  private Optional<JComponent> firstButton() {
    return list.getComponentCount() == 0
        ? Optional.empty()
        : Stream.of(((JComponent) list.getComponent(0)).getComponents())
            .filter(JButton.class::isInstance)
            .map(JComponent.class::cast)
            .findFirst();
  }

  private String measures(Fault fault) {
    return workspace
        .units()
        .inWords(fault.measures().stream().map(FaultWords::told).collect(Collectors.joining(" ")));
  }

  /** One thing that can be done, and what it leaves. */
  private String option(Fault fault, Remedy option) {
    RemedyWords words = words();
    List<String> all = new ArrayList<>();
    all.add(RemedyWords.action(option.action()) + ": " + words.first(fault, option));
    option.aftermath().ifPresent(aftermath -> all.addAll(words.after(aftermath)));
    String told = workspace.units().inWords(String.join(" ", all));
    return Character.toUpperCase(told.charAt(0)) + told.substring(1);
  }

  private RemedyWords words() {
    Tree tree = workspace.document().tree();
    CutTime time = CutTime.of(Optional.of(LocalDate.now()), tree.condition().hemisphere());
    return new RemedyWords(
        new WoundWords(
            Optional.of(turning.pose()),
            shown.orElseThrow().rules(),
            new WoundWords.Growth(YearlyRing.of(tree.setting()), time)));
  }

  private JComponent card(int number, Fault fault) {
    String title =
        number
            + ":  "
            + FaultWords.name(fault.kind())
            + ", "
            + VisibleText.of(String.join(", ", fault.segments()));
    JButton pick =
        Controls.named(Controls.button("Show " + number), "choose.fault-" + number, title);
    pick.addActionListener(event -> workspace.select(new Selection(fault.segments())));
    JPanel card = Controls.section(title, Controls.remark(measures(fault)));
    card.setName("choose.fault-card-" + number);
    card.add(pick, "wmin 0, growx");
    for (int n = 0; n < fault.options().size(); n++) {
      Remedy option = fault.options().get(n);
      card.add(Controls.prose(option(fault, option)), "wmin 0, growx");
      // a sacrifice is cut when it has done its work, not now
      if (!option.cuts().isEmpty() && option.action() != Remedy.Action.SACRIFICE) {
        card.add(cut(option, "choose.cut-" + number + "-" + (n + 1)), "wmin 0, growx");
      }
    }
    return card;
  }

  private JButton cut(Remedy option, String name) {
    boolean one = option.cuts().size() == 1;
    String where =
        option.cuts().stream()
            .map(spot -> VisibleText.of(spot.segment()))
            .distinct()
            .reduce((a, b) -> a + ", " + b)
            .orElse("");
    String say = one ? "Put this cut into the plan" : "Put these cuts into the plan";
    JButton button = Controls.named(Controls.button(say), name, say + ": " + where);
    button.setToolTipText(say + ": " + where);
    button.addActionListener(event -> cut(option.cuts(), where));
    return button;
  }

  /** Makes cuts in the plan, in one step that can be undone; in a new plan where there is none. */
  private void cut(List<Spot> cuts, String where) {
    Optional<String> plan = workspace.plan().map(Plan::id);
    String id = plan.orElseGet(() -> PlanEdits.nextId(workspace.document()));
    workspace.edit(
        new Edit(
            String.format(Locale.ROOT, "Cut %s in plan %s", where, id),
            document -> {
              Document next =
                  plan.isPresent()
                      ? document
                      : PlanEdits.add(new PlanDraft(id).build()).of(document);
              for (Spot spot : cuts) {
                next = PlanEdits.addCut(id, spot).of(next);
              }
              return next;
            }));
  }
}
