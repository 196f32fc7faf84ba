// SPDX-License-Identifier: Apache-2.0
/** Runs the benchmarks and prints their tables; compiled only in the Maven profile bench. */
package boughwright.physics.bench;
