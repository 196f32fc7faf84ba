// SPDX-License-Identifier: Apache-2.0
#version 330 core
layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;
layout(location = 2) in vec3 colour;
layout(location = 3) in vec4 grain;
uniform mat4 viewProjection;
// Pushes what is drawn away from the viewer, in clip space over w.
uniform float behind;
uniform mat3 toView;
out vec3 vPosition;
out vec3 vNormal;
out vec3 vViewNormal;
out vec3 vColour;
out vec4 vGrain;

void main() {
  vPosition = position;
  vNormal = normal;
  vViewNormal = toView * normal;
  vColour = colour;
  vGrain = grain;
  gl_Position = viewProjection * vec4(position, 1.0);
  gl_Position.z += behind * gl_Position.w;
}
