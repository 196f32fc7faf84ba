// SPDX-License-Identifier: Apache-2.0
/** Choosing before any bend: the front, the planting angle, the structure, the apex. */
package boughwright.viewer.window.choose;
