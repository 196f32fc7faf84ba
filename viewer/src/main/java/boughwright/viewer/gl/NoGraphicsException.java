// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

/** No OpenGL 3.3 context can be had on this machine; the message is one line with a remedy. */
public class NoGraphicsException extends Exception {
  private static final long serialVersionUID = 1L;

  NoGraphicsException(String message, Throwable cause) {
    super(message, cause);
  }
}
