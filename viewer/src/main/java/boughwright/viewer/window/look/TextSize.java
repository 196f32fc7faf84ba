// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

/** How large text is, on top of what the system asks for. */
public enum TextSize {
  USUAL(100),
  LARGER(125),
  LARGE(150),
  LARGEST(175);

  private final int percent;

  TextSize(int percent) {
    this.percent = percent;
  }

  public int percent() {
    return percent;
  }

  /** The size that has a percentage, or the usual one. */
  public static TextSize of(int percent) {
    for (TextSize size : values()) {
      if (size.percent == percent) {
        return size;
      }
    }
    return USUAL;
  }
}
