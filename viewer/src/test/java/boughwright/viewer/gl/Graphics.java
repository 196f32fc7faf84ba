// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** Opens renderers for tests; where a machine cannot draw, such tests are skipped, or fail. */
public final class Graphics {
  private Graphics() {}

  /**
   * A renderer of this thread. Without OpenGL the test is skipped, unless the environment variable
   * BOUGHWRIGHT_REQUIRE_GRAPHICS is 1.
   */
  public static SceneRenderer open() {
    try {
      return SceneRenderer.open();
    } catch (NoGraphicsException e) {
      if ("1".equals(System.getenv("BOUGHWRIGHT_REQUIRE_GRAPHICS"))) {
        return Assertions.fail(e);
      }
      return Assumptions.abort(e.getMessage());
    }
  }

  /** Skips or fails the test where there is no OpenGL. */
  public static void require() {
    open().close();
  }
}
