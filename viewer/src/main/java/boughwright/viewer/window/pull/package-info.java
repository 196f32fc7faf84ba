// SPDX-License-Identifier: Apache-2.0
/** Pulling a branch: the line that does it, its numbers, plans side by side. */
package boughwright.viewer.window.pull;
