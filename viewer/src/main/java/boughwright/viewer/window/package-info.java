// SPDX-License-Identifier: Apache-2.0
/** The window. Its rooms import one way: look, work, canvas, sketch and choose and pull, shell. */
package boughwright.viewer.window;
