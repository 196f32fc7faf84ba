// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import java.nio.IntBuffer;
import org.lwjgl.PointerBuffer;
import org.lwjgl.opengl.CGL;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/**
 * A context of macOS without a window, from any thread. Written from Apple's manual of Core OpenGL;
 * unproven, no such machine was at hand.
 */
final class CglWay implements GraphicsContext.Way {
  @Override
  public String name() {
    return "CGL";
  }

  @Override
  public GraphicsContext open() throws GraphicsContext.GraphicsFailure {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer wanted =
          stack.ints(
              CGL.kCGLPFAOpenGLProfile,
              CGL.kCGLOGLPVersion_3_2_Core,
              CGL.kCGLPFAColorSize,
              24,
              CGL.kCGLPFADepthSize,
              24,
              0);
      PointerBuffer format = stack.mallocPointer(1);
      int error = CGL.CGLChoosePixelFormat(wanted, format, stack.mallocInt(1));
      if (error != CGL.kCGLNoError || format.get(0) == MemoryUtil.NULL) {
        throw new GraphicsContext.GraphicsFailure("it has no OpenGL 3.3");
      }
      PointerBuffer context = stack.mallocPointer(1);
      error = CGL.CGLCreateContext(format.get(0), MemoryUtil.NULL, context);
      CGL.CGLDestroyPixelFormat(format.get(0));
      if (error != CGL.kCGLNoError) {
        throw new GraphicsContext.GraphicsFailure("it makes no context, error " + error);
      }
      CGL.CGLSetCurrentContext(context.get(0));
      return new Open(context.get(0), GL.createCapabilities());
    }
  }

  private record Open(long context, GLCapabilities abilities) implements GraphicsContext {
    @Override
    public void makeCurrent() {
      CGL.CGLSetCurrentContext(context);
      GL.setCapabilities(abilities);
    }

    @Override
    public void close() {
      GL.setCapabilities(null);
      CGL.CGLSetCurrentContext(MemoryUtil.NULL);
      CGL.CGLDestroyContext(context);
    }
  }
}
