// SPDX-License-Identifier: Apache-2.0
/** Tools that draw and move on the tree itself. */
package boughwright.viewer.window.sketch.draw;
