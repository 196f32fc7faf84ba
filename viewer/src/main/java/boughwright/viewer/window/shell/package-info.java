// SPDX-License-Identifier: Apache-2.0
/** The window round it all: frame, menus, files, recovery, help. */
package boughwright.viewer.window.shell;
