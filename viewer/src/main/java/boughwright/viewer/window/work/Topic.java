// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

/** What has changed in a workspace. */
public enum Topic {
  /** Another document took the place of the one before; all else is told after it. */
  OPENED,
  /** The document, by an edit, undo or redo. */
  DOCUMENT,
  /** The picked segments. */
  SELECTION,
  /** The plan that is worked on. */
  PLAN,
  /** Units of display. */
  UNITS,
  /** What is known of the plan's trial. */
  ANSWER,
  /** The file, or whether it holds the document. */
  FILE,
  /** Something was said to the person. */
  NOTICE
}
