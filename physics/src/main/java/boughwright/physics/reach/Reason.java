// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

/** Why a line from a place to an anchor is no choice. */
public enum Reason {
  NOT_STIFF("the anchor would give way, being hardly stiffer than the branch"),
  TOO_SHORT("the anchor is too near for a line, its knots and what tightens it"),
  TOO_LONG("the anchor is too far away for a line"),
  BLOCKED("wood stands between the branch and the anchor"),
  BLOCKED_BENT("wood stands between the branch and the anchor once it is bent"),
  WRONG_WAY("the line pulls away from where the branch is wanted"),
  SLIDES("the line runs nearly along the branch and would slide"),
  NO_POSE("the branch would give way or snap over before it comes anywhere"),
  TOO_RISKY("the branch is near its limit before it comes anywhere");

  private final String words;

  Reason(String words) {
    this.words = words;
  }

  /** The reason as it is said. */
  public String words() {
    return words;
  }
}
