// SPDX-License-Identifier: Apache-2.0
/** What is remembered from one start to the next; nothing in it can stop the program. */
package boughwright.viewer.window.shell.kept;
