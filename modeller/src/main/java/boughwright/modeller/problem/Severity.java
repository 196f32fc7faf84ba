// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

/** Whether an input is refused or only remarked upon. */
public enum Severity {
  /** The input cannot be used until this is mended. */
  FAULT,
  /** The input is used as it stands; the person should look at this place. */
  WARNING
}
