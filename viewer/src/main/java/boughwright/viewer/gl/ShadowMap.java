// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.viewer.scene.Box;
import boughwright.viewer.scene.ViewAngle;
import java.nio.ByteBuffer;
import org.joml.Matrix4f;
import org.joml.Vector3f;

/** How far the key light reaches, seen from the light. */
final class ShadowMap implements AutoCloseable {
  private final int size;

  private final int frame = glGenFramebuffers();
  private final int texture = glGenTextures();

  /**
   * @param size pixels to each side
   */
  ShadowMap(int size) {
    this.size = size;
    glBindTexture(GL_TEXTURE_2D, texture);
    glTexImage2D(
        GL_TEXTURE_2D,
        0,
        GL_DEPTH_COMPONENT24,
        size,
        size,
        0,
        GL_DEPTH_COMPONENT,
        GL_UNSIGNED_INT,
        (ByteBuffer) null);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_MODE, GL_COMPARE_REF_TO_TEXTURE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_FUNC, GL_LEQUAL);
    glBindFramebuffer(GL_FRAMEBUFFER, frame);
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, texture, 0);
    glDrawBuffer(GL_NONE);
    glReadBuffer(GL_NONE);
    glBindFramebuffer(GL_FRAMEBUFFER, 0);
  }

  /** Where the key light stands: over the viewer's left shoulder, whatever the view. */
  static Vector3f toLight(ViewAngle angle) {
    Vector3 way =
        angle.right().times(-0.52).plus(angle.up().times(0.62)).plus(angle.toViewer().times(0.60));
    return new Vector3f((float) way.x(), (float) way.y(), (float) way.z()).normalize();
  }

  /** Scene frame to the light's clip space, with all of a box inside. */
  static Matrix4f lightMatrix(Vector3f toLight, Box box) {
    Point3 c = box.centre();
    Vector3f centre = new Vector3f((float) c.x(), (float) c.y(), (float) c.z());
    Vector3f eye = new Vector3f(centre).add(toLight);
    Vector3f up = Math.abs(toLight.z) > 0.99 ? new Vector3f(0, 1, 0) : new Vector3f(0, 0, 1);
    float half = (float) Math.max(1e-3, box.diagonal() / 2 * 1.02);
    return new Matrix4f()
        .setOrtho(-half, half, -half, half, 1 - half, 1 + half)
        .lookAt(eye, centre, up);
  }

  /** Makes this the image that is drawn into, empty. */
  void begin() {
    glBindFramebuffer(GL_FRAMEBUFFER, frame);
    glViewport(0, 0, size, size);
    glClear(GL_DEPTH_BUFFER_BIT);
  }

  void bind() {
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, texture);
  }

  @Override
  public void close() {
    glDeleteFramebuffers(frame);
    glDeleteTextures(texture);
  }
}
