// SPDX-License-Identifier: Apache-2.0
/**
 * The command line; works with no display.
 *
 * <p>A verb reads its options, collects every fault before it acts, and gives its answer as text
 * for a person or as JSON. Units appear here, each in the name of its option or key: mm, degrees,
 * N, Nm, kg, GPa. One handler ({@link boughwright.viewer.command.ProblemHandler}) turns what went
 * wrong into exit codes: 0 done, 1 a defect of the program, 2 bad input or usage. May import
 * everything above it but {@code gl}, and {@code window} only to start it.
 */
package boughwright.viewer.command;
