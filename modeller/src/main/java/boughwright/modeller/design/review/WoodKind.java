// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

/** How a tree bears cuts. */
public enum WoodKind {
  CONIFER,
  BROADLEAF,
  /** Not known: what is careful for both counts. */
  UNKNOWN
}
