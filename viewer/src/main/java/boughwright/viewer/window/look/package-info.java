// SPDX-License-Identifier: Apache-2.0
/** How controls look and speak: theme, fonts, numbers that explain themselves, commands. */
package boughwright.viewer.window.look;
