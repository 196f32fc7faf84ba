// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import org.lwjgl.glfw.GLFW;
import org.lwjgl.glfw.GLFWErrorCallback;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.system.MemoryUtil;

/**
 * A GLFW window that is never shown. The Windows kind is written from the manual and unproven.
 *
 * @param kind which window system and which maker of contexts
 */
record GlfwWay(Kind kind) implements GraphicsContext.Way {

  /** Which window system and which maker of contexts. */
  enum Kind {
    /** No window system, contexts from EGL. */
    NO_DISPLAY,
    /** The display's window system, contexts from EGL. */
    HIDDEN_EGL,
    /** The display's window system and its own contexts. */
    HIDDEN
  }

  @Override
  public String name() {
    return kind == Kind.NO_DISPLAY ? "GLFW without a display" : "GLFW with a hidden window";
  }

  @Override
  public GraphicsContext open() throws GraphicsContext.GraphicsFailure {
    GLFWErrorCallback silent = GLFWErrorCallback.create((error, description) -> {});
    GLFW.glfwSetErrorCallback(silent);
    if (kind == Kind.NO_DISPLAY) {
      GLFW.glfwInitHint(GLFW.GLFW_PLATFORM, GLFW.GLFW_PLATFORM_NULL);
    } else {
      GLFW.glfwInitHint(GLFW.GLFW_PLATFORM, GLFW.GLFW_ANY_PLATFORM);
    }
    if (!GLFW.glfwInit()) {
      release();
      throw new GraphicsContext.GraphicsFailure("there is no display");
    }
    GLFW.glfwDefaultWindowHints();
    GLFW.glfwWindowHint(GLFW.GLFW_VISIBLE, GLFW.GLFW_FALSE);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MAJOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MINOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_PROFILE, GLFW.GLFW_OPENGL_CORE_PROFILE);
    if (kind != Kind.HIDDEN) {
      GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_CREATION_API, GLFW.GLFW_EGL_CONTEXT_API);
    }
    long window = GLFW.glfwCreateWindow(16, 16, "", MemoryUtil.NULL, MemoryUtil.NULL);
    if (window == MemoryUtil.NULL) {
      GLFW.glfwTerminate();
      release();
      throw new GraphicsContext.GraphicsFailure("it has no OpenGL 3.3");
    }
    GLFW.glfwMakeContextCurrent(window);
    return new Open(window, GL.createCapabilities());
  }

  private static void release() {
    GLFWErrorCallback callback = GLFW.glfwSetErrorCallback(null);
    if (callback != null) {
      callback.free();
    }
  }

  private record Open(long window, GLCapabilities abilities) implements GraphicsContext {
    @Override
    public void makeCurrent() {
      GLFW.glfwMakeContextCurrent(window);
      GL.setCapabilities(abilities);
    }

    @Override
    public void close() {
      GL.setCapabilities(null);
      GLFW.glfwMakeContextCurrent(MemoryUtil.NULL);
      GLFW.glfwDestroyWindow(window);
      GLFW.glfwTerminate();
      release();
    }
  }
}
