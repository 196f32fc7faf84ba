// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import java.nio.IntBuffer;
import org.lwjgl.PointerBuffer;
import org.lwjgl.egl.EGL;
import org.lwjgl.egl.EGL10;
import org.lwjgl.egl.EGL12;
import org.lwjgl.egl.EGL14;
import org.lwjgl.egl.EGL15;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** EGL on no surface at all: needs neither a display nor a window system. */
final class EglWay implements GraphicsContext.Way {
  /** EGL_PLATFORM_SURFACELESS_MESA of the extension of the same name. */
  private static final int SURFACELESS = 0x31DD;

  @Override
  public String name() {
    return "EGL";
  }

  @Override
  public GraphicsContext open() throws GraphicsContext.GraphicsFailure {
    long display = display();
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer major = stack.mallocInt(1);
      IntBuffer minor = stack.mallocInt(1);
      if (!EGL10.eglInitialize(display, major, minor)) {
        throw new GraphicsContext.GraphicsFailure("it does not start without a display");
      }
      EGL.createDisplayCapabilities(display, major.get(0), minor.get(0));
      long context = context(display, stack);
      if (!EGL10.eglMakeCurrent(display, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_SURFACE, context)) {
        EGL10.eglDestroyContext(display, context);
        throw new GraphicsContext.GraphicsFailure("it draws only on a surface");
      }
      return new Open(display, context, GL.createCapabilities());
    }
  }

  private static long display() throws GraphicsContext.GraphicsFailure {
    // LWJGL's own method refuses the default display, which is 0.
    long function = EGL.getCapabilities().eglGetPlatformDisplay;
    if (function == MemoryUtil.NULL) {
      throw new GraphicsContext.GraphicsFailure("version 1.5 is needed");
    }
    long display = JNI.callPPP(SURFACELESS, EGL14.EGL_DEFAULT_DISPLAY, MemoryUtil.NULL, function);
    if (display == EGL10.EGL_NO_DISPLAY) {
      throw new GraphicsContext.GraphicsFailure("it needs a display");
    }
    return display;
  }

  private static long context(long display, MemoryStack stack)
      throws GraphicsContext.GraphicsFailure {
    PointerBuffer configs = stack.mallocPointer(1);
    IntBuffer count = stack.mallocInt(1);
    IntBuffer wanted =
        stack.ints(
            EGL10.EGL_SURFACE_TYPE,
            EGL10.EGL_PBUFFER_BIT,
            EGL12.EGL_RENDERABLE_TYPE,
            EGL14.EGL_OPENGL_BIT,
            EGL10.EGL_NONE);
    if (!EGL12.eglBindAPI(EGL14.EGL_OPENGL_API)
        || !EGL10.eglChooseConfig(display, wanted, configs, count)
        || count.get(0) == 0) {
      throw new GraphicsContext.GraphicsFailure("it has no OpenGL");
    }
    long context =
        EGL10.eglCreateContext(
            display,
            configs.get(0),
            EGL10.EGL_NO_CONTEXT,
            stack.ints(
                EGL15.EGL_CONTEXT_MAJOR_VERSION,
                3,
                EGL15.EGL_CONTEXT_MINOR_VERSION,
                3,
                EGL15.EGL_CONTEXT_OPENGL_PROFILE_MASK,
                EGL15.EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
                EGL10.EGL_NONE));
    if (context == EGL10.EGL_NO_CONTEXT) {
      throw new GraphicsContext.GraphicsFailure("it has no OpenGL 3.3");
    }
    return context;
  }

  /** The display stays initialised: another context of this program may be using it. */
  private record Open(long display, long context, GLCapabilities abilities)
      implements GraphicsContext {
    @Override
    public void makeCurrent() {
      EGL10.eglMakeCurrent(display, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_SURFACE, context);
      GL.setCapabilities(abilities);
    }

    @Override
    public void close() {
      GL.setCapabilities(null);
      EGL10.eglMakeCurrent(
          display, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_CONTEXT);
      EGL10.eglDestroyContext(display, context);
    }
  }
}
