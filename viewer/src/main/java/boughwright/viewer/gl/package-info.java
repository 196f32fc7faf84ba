// SPDX-License-Identifier: Apache-2.0
/**
 * Draws scenes with OpenGL 3.3 core into an image in memory, with or without a display; the only
 * user of LWJGL.
 *
 * <p>May import {@code scene}. Knows no AWT. Everything that holds OpenGL objects is closed by the
 * thread that opened it.
 */
package boughwright.viewer.gl;
