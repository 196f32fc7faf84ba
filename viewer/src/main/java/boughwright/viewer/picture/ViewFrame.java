// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Camera;

/**
 * One view on a page.
 *
 * @param area where on the page [pixels]
 * @param camera from where, as large as the area
 * @param name what the view is called
 * @param more the rest of its caption
 * @param captionY baseline of the caption on the page [pixels]
 */
record ViewFrame(Rect area, Camera camera, String name, String more, double captionY) {}
