// SPDX-License-Identifier: Apache-2.0
/** The open document and what a person does with it; no panel, no picture. */
package boughwright.viewer.window.work;
