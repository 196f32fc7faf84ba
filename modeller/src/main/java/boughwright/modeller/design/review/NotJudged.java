// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import java.util.Objects;

/**
 * A kind of fault that was not looked for, or not everywhere.
 *
 * @param kind which
 * @param reason why
 */
public record NotJudged(FaultKind kind, Reason reason) {
  public NotJudged {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(reason, "reason");
  }

  /** Why something is not judged. */
  public enum Reason {
    /** No front is chosen. */
    NO_FRONT,
    /** In this style it is no fault. */
    STYLE,
    /** The tree has no branch that is judged. */
    NO_BRANCH,
    /** The trunk was measured as one straight segment. */
    ONE_SEGMENT,
    /** The trunk is straight from base to apex, which is a style of its own. */
    STRAIGHT_TRUNK,
    /** Nothing of the tree stands above its trunk base. */
    NOT_ABOVE_BASE
  }
}
