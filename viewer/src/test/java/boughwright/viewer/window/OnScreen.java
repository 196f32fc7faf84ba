// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * On a test class that shows windows or moves the mouse: there is one screen and one keyboard, so
 * such classes take turns while others run two at a time.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("screen")
public @interface OnScreen {}
