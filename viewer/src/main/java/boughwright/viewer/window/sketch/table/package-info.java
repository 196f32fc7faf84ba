// SPDX-License-Identifier: Apache-2.0
/** The segments as a table that is edited like a spreadsheet. */
package boughwright.viewer.window.sketch.table;
