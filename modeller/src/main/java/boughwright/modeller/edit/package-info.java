// SPDX-License-Identifier: Apache-2.0
/**
 * Changes a person makes: document in, document out, nothing else touched. Knows no file and no
 * display unit.
 */
package boughwright.modeller.edit;
