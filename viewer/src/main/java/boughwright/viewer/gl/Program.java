// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.FloatBuffer;
import java.nio.charset.StandardCharsets;
import org.joml.Matrix3f;
import org.joml.Matrix4f;
import org.lwjgl.system.MemoryStack;

/** A shader program made from two resources of this package. */
final class Program implements AutoCloseable {
  private final int id;

  /**
   * @param vertex name of the vertex shader's resource
   * @param fragment name of the fragment shader's resource
   * @throws IllegalStateException if the driver refuses the shaders
   */
  Program(String vertex, String fragment) {
    id = glCreateProgram();
    int v = compile(GL_VERTEX_SHADER, vertex);
    int f = compile(GL_FRAGMENT_SHADER, fragment);
    glAttachShader(id, v);
    glAttachShader(id, f);
    glLinkProgram(id);
    glDeleteShader(v);
    glDeleteShader(f);
    if (glGetProgrami(id, GL_LINK_STATUS) == GL_FALSE) {
      throw new IllegalStateException(vertex + " + " + fragment + ": " + glGetProgramInfoLog(id));
    }
  }

  private static int compile(int type, String name) {
    int shader = glCreateShader(type);
    glShaderSource(shader, source(name));
    glCompileShader(shader);
    if (glGetShaderi(shader, GL_COMPILE_STATUS) == GL_FALSE) {
      throw new IllegalStateException(name + ": " + glGetShaderInfoLog(shader));
    }
    return shader;
  }

  private static String source(String name) {
    try (InputStream in = Program.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no resource " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void use() {
    glUseProgram(id);
  }

  void set(String name, int value) {
    glUniform1i(glGetUniformLocation(id, name), value);
  }

  void set(String name, float value) {
    glUniform1f(glGetUniformLocation(id, name), value);
  }

  void set(String name, float x, float y, float z) {
    glUniform3f(glGetUniformLocation(id, name), x, y, z);
  }

  void set(String name, Matrix4f matrix) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      FloatBuffer buffer = matrix.get(stack.mallocFloat(16));
      glUniformMatrix4fv(glGetUniformLocation(id, name), false, buffer);
    }
  }

  void set(String name, Matrix3f matrix) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      FloatBuffer buffer = matrix.get(stack.mallocFloat(9));
      glUniformMatrix3fv(glGetUniformLocation(id, name), false, buffer);
    }
  }

  @Override
  public void close() {
    glDeleteProgram(id);
  }
}
