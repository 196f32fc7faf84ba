// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

/** An OpenGL 3.3 core context without a window to be seen; used on the thread that opened it. */
interface GraphicsContext extends AutoCloseable {

  /** Makes it the context that OpenGL calls of this thread go to. */
  void makeCurrent();

  /** Lets the context go; then OpenGL calls of this thread go nowhere. */
  @Override
  void close();

  /** One way to a context. */
  interface Way {
    /** Name of the way, for messages. */
    String name();

    /**
     * Opens a context and makes it current.
     *
     * @throws GraphicsFailure if this way is not open on this machine
     */
    GraphicsContext open() throws GraphicsFailure;
  }

  /** One way to a context is not open; the next one is tried. */
  class GraphicsFailure extends Exception {
    private static final long serialVersionUID = 1L;

    GraphicsFailure(String message) {
      super(message);
    }

    GraphicsFailure(String message, Throwable cause) {
      super(message, cause);
    }
  }
}
