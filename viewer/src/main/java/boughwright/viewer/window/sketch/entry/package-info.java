// SPDX-License-Identifier: Apache-2.0
/** What a person types or draws, read and proposed; knows no control. */
package boughwright.viewer.window.sketch.entry;
