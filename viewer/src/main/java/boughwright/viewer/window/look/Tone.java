// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

/** Whether the window is light or dark. */
public enum Tone {
  LIGHT("Light"),
  DARK("Dark");

  private final String words;

  Tone(String words) {
    this.words = words;
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }
}
