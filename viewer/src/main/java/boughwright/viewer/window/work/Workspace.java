// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.units.DisplayUnits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * One open document and the state of working on it. Belongs to the event thread; the document in it
 * is immutable and may go anywhere.
 */
public final class Workspace {
  private final List<Consumer<Topic>> listeners = new ArrayList<>();
  private final Photos photos = new Photos();
  private History history;
  private Optional<Path> file;
  private Selection selection = Selection.NONE;
  private Optional<String> plan;
  private DisplayUnits units;
  private Optional<Notice> notice = Optional.empty();
  private Optional<Answer> answer = Optional.empty();

  /**
   * Opens a document.
   *
   * @param history the document and what led to it
   * @param file where it is saved; empty if nowhere yet
   * @param units units of display
   */
  public Workspace(History history, Optional<Path> file, DisplayUnits units) {
    this.history = Objects.requireNonNull(history, "history");
    this.file = Objects.requireNonNull(file, "file");
    this.units = Objects.requireNonNull(units, "units");
    plan = firstPlan();
  }

  private Optional<String> firstPlan() {
    return document().plans().stream().map(Plan::id).findFirst();
  }

  /** Asks to be told of every change, on the event thread. */
  public void listen(Consumer<Topic> listener) {
    listeners.add(listener);
  }

  private void tell(Topic topic) {
    List.copyOf(listeners).forEach(listener -> listener.accept(topic));
  }

  public Document document() {
    return history.document();
  }

  public History history() {
    return history;
  }

  public Optional<Path> file() {
    return file;
  }

  /** The photos of the document that no folder holds yet. */
  public Photos photos() {
    return photos;
  }

  public Selection selection() {
    return selection;
  }

  /** The plan that is worked on; empty where the document has none. */
  public Optional<Plan> plan() {
    return plan.flatMap(document()::plan);
  }

  public DisplayUnits units() {
    return units;
  }

  /** What is known of the plan that is worked on, as it is now; empty while nothing is. */
  public Optional<Answer> answer() {
    return answer.filter(
        known ->
            plan().equals(Optional.of(known.plan())) && document().tree().equals(known.tree()));
  }

  /** Takes what became known of a plan; it counts only while plan and tree are those of it. */
  public void take(Answer known) {
    answer = Optional.of(known);
    tell(Topic.ANSWER);
  }

  /** What was said last. */
  public Optional<Notice> notice() {
    return notice;
  }

  /**
   * Makes a change that can be undone. A change that the document does not allow is not made, and
   * the person is told why.
   *
   * @return whether it was made
   */
  public boolean edit(Edit edit) {
    try {
      change(history.after(edit));
      return true;
    } catch (InputException e) {
      say(new Notice(Notice.Kind.FAULT, words(e)));
      return false;
    }
  }

  public void undo() {
    change(history.undone());
  }

  public void redo() {
    change(history.redone());
  }

  private void change(History next) {
    if (next == history) {
      return;
    }
    boolean wasSaved = history.isSaved();
    history = next;
    Selection still = selection.within(document());
    boolean lost = !still.equals(selection);
    selection = still;
    boolean planGone = plan().isEmpty();
    if (planGone) {
      plan = firstPlan();
    }
    tell(Topic.DOCUMENT);
    if (lost) {
      tell(Topic.SELECTION);
    }
    if (planGone) {
      tell(Topic.PLAN);
    }
    if (wasSaved != history.isSaved()) {
      tell(Topic.FILE);
    }
  }

  /** The document was saved to a file. */
  public void saved(Path to) {
    history = history.asSaved();
    file = Optional.of(to);
    tell(Topic.FILE);
  }

  public void select(Selection picked) {
    Selection there = picked.within(document());
    if (!there.equals(selection)) {
      selection = there;
      tell(Topic.SELECTION);
    }
  }

  /** Works on another plan of the document. */
  public void choosePlan(String id) {
    if (document().plan(id).isPresent() && !plan.equals(Optional.of(id))) {
      plan = Optional.of(id);
      tell(Topic.PLAN);
    }
  }

  public void use(DisplayUnits others) {
    if (!units.equals(others)) {
      units = others;
      tell(Topic.UNITS);
    }
  }

  public void say(Notice said) {
    notice = Optional.of(said);
    tell(Topic.NOTICE);
  }

  /** Puts another document in the place of this one, with its own history. */
  public void open(History other, Optional<Path> where) {
    history = Objects.requireNonNull(other, "other");
    file = Objects.requireNonNull(where, "where");
    selection = Selection.NONE;
    plan = firstPlan();
    answer = Optional.empty();
    for (Topic topic :
        List.of(Topic.OPENED, Topic.DOCUMENT, Topic.SELECTION, Topic.PLAN, Topic.FILE)) {
      tell(topic);
    }
  }

  private static String words(InputException e) {
    return e.problems().stream().map(Problem::line).collect(Collectors.joining("\n"));
  }
}
