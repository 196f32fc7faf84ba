// SPDX-License-Identifier: Apache-2.0
/** Photos behind the tree: placing, scaling, tracing. */
package boughwright.viewer.window.sketch.photo;
