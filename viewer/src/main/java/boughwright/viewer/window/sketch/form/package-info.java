// SPDX-License-Identifier: Apache-2.0
/** Forms for what is typed: the tree, a segment, a wound. */
package boughwright.viewer.window.sketch.form;
