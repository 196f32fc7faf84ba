// SPDX-License-Identifier: Apache-2.0
/**
 * Scenes as images with title, views, labels, legend and scale bar, with no window.
 *
 * <p>Draws wood through {@code gl} and words and lines through Java2D, which needs no display.
 * Sizes on the page are in pixels; text grows with the page. May import {@code scene} and {@code
 * gl}.
 */
package boughwright.viewer.picture;
