// SPDX-License-Identifier: Apache-2.0
#version 330 core
layout(location = 0) in vec3 position;
uniform mat4 viewProjection;
// Pushes what is drawn away from the viewer, in clip space over w.
uniform float behind;

void main() {
  gl_Position = viewProjection * vec4(position, 1.0);
  gl_Position.z += behind * gl_Position.w;
}
