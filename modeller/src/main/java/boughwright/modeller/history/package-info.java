// SPDX-License-Identifier: Apache-2.0
/** What was done to a document, so that it can be undone and done again. */
package boughwright.modeller.history;
