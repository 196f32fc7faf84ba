// SPDX-License-Identifier: Apache-2.0
#version 330 core
in vec3 vViewNormal;
in vec3 vColour;
uniform vec3 tone;
// 1 where each vertex has a tone of its own.
uniform float own;
// How much of the paper is covered facing the viewer, and how much more at the edge.
uniform float fill;
uniform float rim;
// Distance of the hatching lines in pixels; 0 for none.
uniform float hatch;
uniform float hatchShift;
out vec4 outColour;

void main() {
  float edge = 1.0 - clamp(normalize(vViewNormal).z, 0.0, 1.0);
  float alpha = fill + rim * smoothstep(0.45, 1.0, edge);
  if (hatch > 0.0) {
    float along = mod(gl_FragCoord.x + gl_FragCoord.y + hatchShift, hatch) / hatch;
    float line = smoothstep(0.0, 0.15, along) - smoothstep(0.25, 0.40, along);
    alpha = 0.07 + 0.40 * smoothstep(0.55, 1.0, edge) + 0.22 * line;
  }
  outColour = vec4(mix(tone, vColour, own) * alpha, alpha);
}
