// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/** How the wood is taken to answer strain. */
public enum Response {
  /** Real wood: flows when crushed, cracks when stretched. */
  FIBRE,
  /** A straight line without limit. */
  ELASTIC
}
