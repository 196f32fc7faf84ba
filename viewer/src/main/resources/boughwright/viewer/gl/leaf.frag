// SPDX-License-Identifier: Apache-2.0
#version 330 core
in vec3 vNormal;
in vec3 vViewNormal;
in vec3 vColour;
in vec4 vGrain;
uniform vec3 toLight;
// How many leaves lie on a metre of a pad.
uniform float leavesPerMetre;
// How much of what is behind a pad it covers.
uniform float fill;
out vec4 outColour;

float hash(vec3 p) {
  p = fract(p * vec3(0.1031, 0.1030, 0.0973));
  p += dot(p, p.yzx + 33.33);
  return fract((p.x + p.y) * p.z);
}

float noise(vec3 p) {
  vec3 i = floor(p);
  vec3 f = fract(p);
  f = f * f * (3.0 - 2.0 * f);
  return mix(
      mix(mix(hash(i), hash(i + vec3(1, 0, 0)), f.x),
          mix(hash(i + vec3(0, 1, 0)), hash(i + vec3(1, 1, 0)), f.x), f.y),
      mix(mix(hash(i + vec3(0, 0, 1)), hash(i + vec3(1, 0, 1)), f.x),
          mix(hash(i + vec3(0, 1, 1)), hash(i + vec3(1, 1, 1)), f.x), f.y),
      f.z);
}

// Matt leaves: light from above, a dapple of leaf beside leaf, a little thinner at the edge.
void main() {
  vec3 n = normalize(vNormal);
  float leaf = noise(vGrain.xyz * leavesPerMetre + 40.0) - 0.5;
  float light = 0.80 + 0.16 * n.z + 0.14 * max(0.0, dot(n, toLight)) + 0.26 * leaf;
  float edge = 1.0 - clamp(normalize(vViewNormal).z, 0.0, 1.0);
  float alpha = fill * (1.0 - 0.35 * smoothstep(0.75, 1.0, edge)) + 0.10 * leaf;
  outColour = vec4(clamp(vColour * light, 0.0, 1.0) * alpha, alpha);
}
