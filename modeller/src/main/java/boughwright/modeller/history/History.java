// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.history;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import java.util.Objects;
import java.util.Optional;

/**
 * A document, all that led to it and all that was undone: immutable, without a limit.
 *
 * @param document the document as it is now
 * @param past the last change, on top of those before it; empty at the start
 * @param future the change undone last, on top of those undone before it; empty if none is
 * @param saved the document as it was saved or opened last; empty if it never was
 */
public record History(
    Document document, Optional<Step> past, Optional<Step> future, Optional<Document> saved) {

  /**
   * A change.
   *
   * @param name what it did
   * @param document the document to go back to, or on to
   * @param next the step under it
   */
  public record Step(String name, Document document, Optional<Step> next) {}

  public History {
    Objects.requireNonNull(document, "document");
    Objects.requireNonNull(past, "past");
    Objects.requireNonNull(future, "future");
    Objects.requireNonNull(saved, "saved");
  }

  /** The history of a document that was just opened from a file. */
  public static History opened(Document document) {
    return new History(document, Optional.empty(), Optional.empty(), Optional.of(document));
  }

  /** The history of a document that no file holds yet. */
  public static History unsaved(Document document) {
    return new History(document, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * After a change; what was undone before is gone. A change that changes nothing leaves no step.
   *
   * @throws InputException if the document does not allow it; nothing has happened then
   */
  public History after(Edit edit) throws InputException {
    Document changed = edit.of(document);
    return changed.equals(document)
        ? this
        : new History(
            changed, Optional.of(new Step(edit.name(), document, past)), Optional.empty(), saved);
  }

  /** After taking the last change back; itself if there is none. */
  public History undone() {
    return past.map(
            step ->
                new History(
                    step.document(),
                    step.next(),
                    Optional.of(new Step(step.name(), document, future)),
                    saved))
        .orElse(this);
  }

  /** After doing again what was undone last; itself if nothing was. */
  public History redone() {
    return future
        .map(
            step ->
                new History(
                    step.document(),
                    Optional.of(new Step(step.name(), document, past)),
                    step.next(),
                    saved))
        .orElse(this);
  }

  /** After saving the document as it is now. */
  public History asSaved() {
    return new History(document, past, future, Optional.of(document));
  }

  /** Whether a file holds exactly this document. */
  public boolean isSaved() {
    return saved.isPresent() && saved.get().equals(document);
  }

  /** What undo would take back. */
  public Optional<String> undoName() {
    return past.map(Step::name);
  }

  /** What redo would do again. */
  public Optional<String> redoName() {
    return future.map(Step::name);
  }
}
