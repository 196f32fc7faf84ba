// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.viewer.gl.GraphicsContext.GraphicsFailure;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.lwjgl.opengl.GL;
import org.lwjgl.system.Platform;

class ContextChainTest {
  private record Closed(String name) implements GraphicsContext.Way {
    @Override
    public GraphicsContext open() throws GraphicsFailure {
      throw new GraphicsFailure("it is closed\nsecond line");
    }
  }

  private record Broken(String name) implements GraphicsContext.Way {
    @Override
    public GraphicsContext open() {
      throw new UnsatisfiedLinkError("no library");
    }
  }

  @Test
  void noWayOpen_isToldInOneLineWithARemedy() {
    List<GraphicsContext.Way> ways = List.of(new Closed("EGL"), new Broken("GLFW"));
    assertThatThrownBy(() -> ContextChain.open(ways, "Install a driver"))
        .isInstanceOf(NoGraphicsException.class)
        .hasMessage(
            "no OpenGL 3.3 for drawing on this machine (EGL: it is closed; GLFW: no library)."
                + " Install a driver");
  }

  @Test
  void firstOpenWay_isTaken() throws NoGraphicsException {
    GraphicsContext context =
        new GraphicsContext() {
          @Override
          public void makeCurrent() {}

          @Override
          public void close() {}
        };
    GraphicsContext.Way open =
        new GraphicsContext.Way() {
          @Override
          public String name() {
            return "open";
          }

          @Override
          public GraphicsContext open() {
            return context;
          }
        };
    assertThat(ContextChain.open(List.of(new Closed("shut"), open, new Broken("last")), ""))
        .isSameAs(context);
  }

  /** The second link of the chain on Linux, where the library has it. */
  @Test
  void glfwWithoutADisplay_opensOpenGl33() {
    Assumptions.assumeTrue(Platform.get() == Platform.LINUX);
    Graphics.require();
    GraphicsContext context;
    try {
      context = new GlfwWay(GlfwWay.Kind.NO_DISPLAY).open();
    } catch (GraphicsFailure | LinkageError e) {
      Assumptions.abort(e.getMessage());
      return;
    }
    try {
      context.makeCurrent();
      assertThat(GL.getCapabilities().OpenGL33).isTrue();
    } finally {
      context.close();
    }
  }
}
