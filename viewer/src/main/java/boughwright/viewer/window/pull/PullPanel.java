// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Verdict;
import boughwright.viewer.scene.VerdictWords;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Caution;
import boughwright.viewer.window.look.CautionLine;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Answer;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Trials;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;

/** Pulls at branches: what it takes, what it risks, and into which plan it goes. */
public final class PullPanel implements ModePanel, AutoCloseable {
  /** Room for the verdict, so that nothing below jumps when it comes [user pixels at 100 %]. */
  private static final int SENTENCES = 100;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Trials trials;
  private final Pulling pulling;
  private final PullTool tool;
  private final PlanBar plans;
  private final Figures figures = new Figures();
  private final Holding holding = new Holding();
  private final ExactFields exact;
  private final Prose verdict = Controls.prose("");
  private final Prose trouble = Controls.prose("");
  private final Prose wire = Controls.prose("");
  private final JButton instead = Controls.button("Hold it with a line");
  private final JToggleButton line = Controls.toggle("Line");
  private final JToggleButton coil = Controls.toggle("Wire");
  private final JTextField name = Controls.high(new JTextField(8));
  private final JButton add = Controls.button("Add to plan");
  private final JButton drop = Controls.button("Drop it");
  private final JComponent adding;
  private final JComponent whole;
  private String named = "";

  /** A panel with trials of its own. */
  public PullPanel(Workspace workspace, Canvas canvas, Background background) {
    this(workspace, canvas, background, new Trials(workspace, background));
  }

  /** A panel that shares trials with others. */
  public PullPanel(Workspace workspace, Canvas canvas, Background background, Trials trials) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.trials = trials;
    pulling = new Pulling(workspace, canvas, background, trials);
    tool = new PullTool(workspace, canvas, trials, pulling);
    plans = new PlanBar(workspace);
    exact = new ExactFields(workspace, pulling);
    adding = Controls.row(name, add, drop);
    whole = Controls.scrolling(column(new BendList(workspace, pulling)));
    nameAll();
    pulling.listen(this::follow);
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS || topic == Topic.ANSWER) {
            follow();
          }
        });
    follow();
  }

  private JPanel column(BendList bends) {
    JPanel column = Controls.column();
    column.setName("pull.panel");
    verdict.setName("pull.verdict");
    trouble.setName("pull.trouble");
    wire.setName("pull.wire");
    column.add(plans.component());
    column.add(
        Controls.section("What it takes", Controls.row(line, coil), adding, figures.component()),
        "gaptop " + Controls.APART);
    column.add(verdict, "wmin 0, hmin " + Theme.length(SENTENCES));
    column.add(wire, "wmin 0");
    column.add(trouble, "wmin 0");
    column.add(instead, "wmin 0");
    column.add(new CautionLine(Caution.FLYING, Caution.STAND_CLEAR, Caution.SLOWLY), "wmin 0");
    column.add(exact.component(), "gaptop " + Controls.APART + ", wmin 0");
    column.add(bends.component(), "gaptop " + Controls.APART + ", wmin 0");
    holding.components().forEach(part -> column.add(part, "gaptop " + Controls.APART + ", wmin 0"));
    column.add(plans.more(), "gaptop " + Controls.APART + ", wmin 0");
    column.add(new CautionLine(Caution.ESTIMATES), "wmin 0");
    return column;
  }

  private void nameAll() {
    Controls.named(line, "pull.line", "Hold it with a line");
    Controls.named(coil, "pull.coil", "Hold it with coiled wire");
    Controls.named(name, "pull.name", "Name of this bend");
    Controls.named(add, "pull.add", "Add to plan");
    Controls.named(drop, "pull.drop", "Drop what is pulled");
    Controls.named(instead, "pull.instead", "Hold it with a line instead of wire");
    instead.setMnemonic('t');
    instead.addActionListener(event -> pulling.use(Follower.Way.LINE));
    name.putClientProperty("JTextField.placeholderText", "name");
    line.setMnemonic('i');
    coil.setMnemonic('w');
    add.setMnemonic('a');
    drop.setMnemonic('o');
    ButtonGroup ways = new ButtonGroup();
    ways.add(line);
    ways.add(coil);
    line.addActionListener(event -> pulling.use(Follower.Way.LINE));
    coil.addActionListener(event -> pulling.use(Follower.Way.COIL));
    add.addActionListener(event -> add());
    name.addActionListener(event -> add());
    drop.addActionListener(event -> pulling.drop());
  }

  private void add() {
    String as = name.getText().strip();
    pulling.add(as.isEmpty() ? pulling.name() : as);
  }

  private void follow() {
    Optional<Draft> draft = pulling.draft();
    line.setSelected(pulling.way() == Follower.Way.LINE);
    coil.setSelected(pulling.way() == Follower.Way.COIL);
    if (draft.isPresent()) {
      draft(draft.get());
    } else {
      plan();
    }
    exact.follow();
    boolean some = pulling.spot().isPresent();
    drop.setEnabled(some);
    name.setEnabled(some);
    add.setText(pulling.changing().isPresent() ? "Change in plan" : "Add to plan");
    add.setEnabled(draft.filter(Draft::isReady).isPresent());
    name.setVisible(pulling.changing().isEmpty());
    if (!named.equals(pulling.name())) {
      named = pulling.name();
      name.setText(named);
    }
    whole.revalidate();
  }

  private void draft(Draft draft) {
    Optional<Trying.Tried> full = pulling.full();
    figures.show(
        new Figures.Subject(
            workspace.document().tree(),
            workspace.units(),
            draft.plan(),
            draft.trial(),
            Optional.of(draft),
            full));
    holding.show(full, pulling.isJudging() || pulling.isSearching(), workspace.units());
    Optional<Verdict> judged = full.flatMap(one -> one.trial().verdict());
    String words =
        judged
            .map(this::words)
            .orElse(
                pulling.isSearching()
                    ? "Looking for wire that holds it there."
                    : pulling.isSettling()
                        ? "The other anchors are being tried."
                        : draft.isWithoutWire()
                            ? "No wire holds it."
                            : draft.settled()
                                ? "Its risk is being worked out."
                                : "Let go to have it worked out.");
    verdict.say(words, judged.isPresent() ? Shade.INK : Shade.QUIET);
    say(
        wire,
        draft.coil().map(one -> PullWords.wire(one, workspace.units())).orElse(""),
        Shade.INK);
    say(trouble, workspace.units().inWords(draft.words()), Shade.CAUTION);
    instead.setVisible(draft.isWithoutWire());
  }

  private String words(Verdict verdict) {
    String told = (VerdictWords.sentence(verdict.level()) + " " + verdict.reason()).strip();
    return workspace.units().inWords(told);
  }

  private static void say(Prose prose, String words, Shade shade) {
    prose.say(words, shade);
    prose.setVisible(!words.isEmpty());
  }

  private void plan() {
    say(wire, "", Shade.INK);
    instead.setVisible(false);
    Optional<Answer> answer = trials.shown();
    if (answer.isEmpty()) {
      boolean some = workspace.plan().isPresent();
      figures.clear(some ? "" : "There is no plan yet.");
      holding.show(Optional.empty(), trials.isWorking(), workspace.units());
      verdict.say(
          some
              ? trials.isWorking() ? "The plan is being tried." : noPose()
              : "Drag a branch where it should come.",
          Shade.QUIET);
      say(trouble, "", Shade.CAUTION);
      return;
    }
    Optional<Trying.Tried> full = trials.of(answer.get().plan());
    figures.show(
        new Figures.Subject(
            answer.get().tree(),
            workspace.units(),
            answer.get().plan(),
            answer.get().trial(),
            Optional.empty(),
            full));
    holding.show(full, trials.isWorking(), workspace.units());
    verdict.say(
        answer
            .get()
            .trial()
            .verdict()
            .map(this::words)
            .orElse(trials.isWorking() ? "Its risk is being worked out." : ""),
        Shade.INK);
    String before =
        trials.isOfPlanBefore()
            ? "These numbers are of the plan before the last change."
            : noPose();
    say(trouble, before, Shade.CAUTION);
  }

  private String noPose() {
    return workspace
        .answer()
        .filter(answer -> !answer.trial().outcome().holds())
        .map(
            answer ->
                VerdictWords.NO_POSE
                    + " "
                    + PullWords.sentence(answer.trial().outcome().where())
                    + " Ease a line, or undo.")
        .orElse("");
  }

  /** What is pulled now. */
  Pulling pulling() {
    return pulling;
  }

  /** The trials it shows. */
  public Trials trials() {
    return trials;
  }

  @Override
  public String name() {
    return "Pull";
  }

  @Override
  public char mnemonic() {
    return 'P';
  }

  @Override
  public JComponent component() {
    return whole;
  }

  @Override
  public List<Command> commands() {
    List<Command> all = new ArrayList<>(plans.commands());
    all.add(
        new Command(
            "pull.add",
            "Add the bend to the plan",
            'b',
            Optional.empty(),
            "Adds what is pulled to the plan.",
            this::add,
            add::isEnabled));
    all.add(
        new Command(
            "pull.drop",
            "Drop what is pulled",
            'p',
            Optional.empty(),
            "Forgets what is pulled and not added.",
            pulling::drop,
            () -> pulling.spot().isPresent()));
    return List.copyOf(all);
  }

  @Override
  public void shown() {
    canvas.use(tool);
  }

  @Override
  public void hidden() {
    pulling.drop();
    canvas.useNone();
  }

  @Override
  public void close() {
    pulling.close();
  }
}
