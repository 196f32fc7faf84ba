// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import java.util.Objects;

/**
 * One change with the name a person knows it by.
 *
 * @param name what it does, for undo, such as {@code Split b2}
 * @param change the change itself
 */
public record Edit(String name, Change change) {

  /** A change of the whole document. */
  @FunctionalInterface
  public interface Change {
    /**
     * The changed document.
     *
     * @throws InputException if the document does not allow it, with what to do instead
     */
    Document of(Document document) throws InputException;
  }

  public Edit {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(change, "change");
  }

  /**
   * The changed document.
   *
   * @throws InputException if the document does not allow it, with what to do instead
   */
  public Document of(Document document) throws InputException {
    return change.of(document);
  }
}
