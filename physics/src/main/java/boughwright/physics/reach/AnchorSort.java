// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

/** What a line can be tied to. */
public enum AnchorSort {
  ROOT("root"),
  /** The limb that starts at the trunk base, or wood that is called trunk. */
  TRUNK("trunk"),
  BRANCH("branch"),
  /** A point that the file lists. */
  POINT("point"),
  /** The rim of the container. */
  RIM("rim");

  private final String word;

  AnchorSort(String word) {
    this.word = word;
  }

  /** The word a person types and reads. */
  public String word() {
    return word;
  }
}
