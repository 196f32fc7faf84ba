// SPDX-License-Identifier: Apache-2.0
/**
 * A fault in something a person gave us: where it is, what it is, and how to mend it.
 *
 * <p>Imports nothing else of the project.
 */
package boughwright.modeller.problem;
