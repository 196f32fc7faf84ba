// SPDX-License-Identifier: Apache-2.0
/** How long pictures on the screen take; see docs/performance.md. */
package boughwright.viewer.bench;
