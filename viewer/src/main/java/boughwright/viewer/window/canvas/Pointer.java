// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

/**
 * Where the mouse is and what is held with it.
 *
 * @param x from the left edge of the canvas [user pixels]
 * @param y from its upper edge [user pixels]
 * @param shift whether Shift is held
 * @param control whether Ctrl (Cmd on macOS) is held
 * @param clicks clicks in a row, 0 while it only moves
 */
public record Pointer(double x, double y, boolean shift, boolean control, int clicks) {}
