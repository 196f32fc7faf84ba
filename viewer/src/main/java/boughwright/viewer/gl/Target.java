// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.FloatBuffer;
import org.lwjgl.system.MemoryUtil;

/** An image in memory that is drawn into, with one sample per pixel or several, then read. */
final class Target implements AutoCloseable {
  static final int SAMPLES = 4;

  private final int width;
  private final int height;
  private final boolean several;
  private final int resolved = glGenFramebuffers();
  private final int flat = glGenRenderbuffers();
  private final int flatDepth = glGenRenderbuffers();
  private final int drawn;
  private final int colour;
  private final int depth;

  /** With several samples per pixel. */
  Target(int width, int height) {
    this(width, height, SAMPLES);
  }

  /**
   * @param samples for each pixel; 1 for the quickest drawing
   */
  Target(int width, int height, int samples) {
    this.width = width;
    this.height = height;
    int possible = Math.min(samples, glGetInteger(GL_MAX_SAMPLES));
    several = possible > 1;
    glBindFramebuffer(GL_FRAMEBUFFER, resolved);
    attach(flat, GL_RGBA8, 0, GL_COLOR_ATTACHMENT0);
    attach(flatDepth, GL_DEPTH_COMPONENT24, 0, GL_DEPTH_ATTACHMENT);
    requireComplete();
    drawn = several ? glGenFramebuffers() : resolved;
    colour = several ? glGenRenderbuffers() : flat;
    depth = several ? glGenRenderbuffers() : flatDepth;
    if (several) {
      glBindFramebuffer(GL_FRAMEBUFFER, drawn);
      attach(colour, GL_RGBA8, possible, GL_COLOR_ATTACHMENT0);
      attach(depth, GL_DEPTH_COMPONENT24, possible, GL_DEPTH_ATTACHMENT);
      requireComplete();
    }
  }

  private void attach(int buffer, int format, int samples, int where) {
    glBindRenderbuffer(GL_RENDERBUFFER, buffer);
    glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, width, height);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, where, GL_RENDERBUFFER, buffer);
  }

  private static void requireComplete() {
    int status = glCheckFramebufferStatus(GL_FRAMEBUFFER);
    if (status != GL_FRAMEBUFFER_COMPLETE) {
      throw new IllegalStateException("framebuffer status " + Integer.toHexString(status));
    }
  }

  boolean isSized(int otherWidth, int otherHeight) {
    return width == otherWidth && height == otherHeight;
  }

  /** Makes this the image that is drawn into, empty. */
  void begin() {
    glBindFramebuffer(GL_FRAMEBUFFER, drawn);
    glViewport(0, 0, width, height);
    glClearColor(0, 0, 0, 0);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
  }

  /**
   * Keeps the depth of what has been drawn so far, for {@link #readDepth}; with one sample what is
   * drawn later counts too.
   */
  void keepDepth() {
    resolve(GL_DEPTH_BUFFER_BIT);
    glBindFramebuffer(GL_FRAMEBUFFER, drawn);
  }

  private void resolve(int what) {
    if (several) {
      glBindFramebuffer(GL_READ_FRAMEBUFFER, drawn);
      glBindFramebuffer(GL_DRAW_FRAMEBUFFER, resolved);
      glBlitFramebuffer(0, 0, width, height, 0, 0, width, height, what, GL_NEAREST);
    }
  }

  /** The kept depth, row by row from the top: 0 nearest to the viewer, 1 nothing there. */
  float[] readDepth() {
    glBindFramebuffer(GL_FRAMEBUFFER, resolved);
    FloatBuffer depths = MemoryUtil.memAllocFloat(width * height);
    try {
      glReadPixels(0, 0, width, height, GL_DEPTH_COMPONENT, GL_FLOAT, depths);
      float[] rows = new float[width * height];
      for (int y = 0; y < height; y++) {
        depths.get((height - 1 - y) * width, rows, y * width, width);
      }
      return rows;
    } finally {
      MemoryUtil.memFree(depths);
      glBindFramebuffer(GL_FRAMEBUFFER, 0);
    }
  }

  /** The image, row by row from the top, as premultiplied 0xAARRGGBB. */
  int[] read() {
    resolve(GL_COLOR_BUFFER_BIT);
    glBindFramebuffer(GL_FRAMEBUFFER, resolved);
    int[] rows = new int[width * height];
    glReadPixels(0, 0, width, height, GL_BGRA, GL_UNSIGNED_INT_8_8_8_8_REV, rows);
    glBindFramebuffer(GL_FRAMEBUFFER, 0);
    int[] row = new int[width];
    for (int y = 0; y < height / 2; y++) {
      int other = (height - 1 - y) * width;
      System.arraycopy(rows, y * width, row, 0, width);
      System.arraycopy(rows, other, rows, y * width, width);
      System.arraycopy(row, 0, rows, other, width);
    }
    return rows;
  }

  @Override
  public void close() {
    glDeleteFramebuffers(resolved);
    glDeleteRenderbuffers(flat);
    glDeleteRenderbuffers(flatDepth);
    if (several) {
      glDeleteFramebuffers(drawn);
      glDeleteRenderbuffers(colour);
      glDeleteRenderbuffers(depth);
    }
  }
}
