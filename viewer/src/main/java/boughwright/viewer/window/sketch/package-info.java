// SPDX-License-Identifier: Apache-2.0
/** Measuring the tree: table, dragging, typing, wounds, photos. */
package boughwright.viewer.window.sketch;
