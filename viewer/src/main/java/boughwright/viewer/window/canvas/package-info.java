// SPDX-License-Identifier: Apache-2.0
/** The tree in three dimensions: camera, picking, dragging, what is painted over it. */
package boughwright.viewer.window.canvas;
