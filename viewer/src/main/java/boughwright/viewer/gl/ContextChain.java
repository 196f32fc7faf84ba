// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import boughwright.viewer.gl.GraphicsContext.GraphicsFailure;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.Platform;

/**
 * Tries the ways to an OpenGL context that this system has, the plainest first.
 *
 * <p>Linux: EGL without a surface, then GLFW without a display, then a hidden GLFW window. Windows:
 * a hidden GLFW window. macOS: CGL. Only the Linux ways have been run; those of Windows and macOS
 * are written from their manuals and unproven.
 */
final class ContextChain {
  private ContextChain() {}

  static GraphicsContext open() throws NoGraphicsException {
    Platform platform = Platform.get();
    if (platform == Platform.LINUX || platform == Platform.FREEBSD) {
      Configuration.OPENGL_CONTEXT_API.set("EGL");
    }
    return open(ways(platform), remedy(platform));
  }

  static GraphicsContext open(List<GraphicsContext.Way> ways, String remedy)
      throws NoGraphicsException {
    StringJoiner tried = new StringJoiner("; ");
    Throwable last = null;
    for (GraphicsContext.Way way : ways) {
      try {
        return way.open();
      } catch (GraphicsFailure | LinkageError | RuntimeException e) {
        tried.add(way.name() + ": " + firstLine(e));
        last = e;
      }
    }
    throw new NoGraphicsException(
        "no OpenGL 3.3 for drawing on this machine (" + tried + "). " + remedy, last);
  }

  private static List<GraphicsContext.Way> ways(Platform platform) {
    List<GraphicsContext.Way> ways = new ArrayList<>();
    switch (platform) {
      case LINUX, FREEBSD -> {
        ways.add(new EglWay());
        ways.add(new GlfwWay(GlfwWay.Kind.NO_DISPLAY));
        ways.add(new GlfwWay(GlfwWay.Kind.HIDDEN_EGL));
      }
      case WINDOWS -> ways.add(new GlfwWay(GlfwWay.Kind.HIDDEN));
      default -> ways.add(new CglWay());
    }
    return ways;
  }

  private static String remedy(Platform platform) {
    return switch (platform) {
      case LINUX, FREEBSD ->
          "Install Mesa's software drawing (Debian: apt-get install libegl1 libgl1-mesa-dri)";
      case WINDOWS -> "Install the driver of the graphics card";
      default -> "Update the system";
    };
  }

  private static String firstLine(Throwable e) {
    String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return message.lines().findFirst().orElse("").strip();
  }
}
