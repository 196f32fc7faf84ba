// SPDX-License-Identifier: Apache-2.0
#version 330 core
in vec3 vPosition;
in vec3 vNormal;
in vec3 vViewNormal;
in vec3 vColour;
in vec4 vGrain;
uniform vec3 toLight;
uniform mat4 lightMatrix;
uniform sampler2DShadow shadows;
uniform float grainPerMetre;
// How many rows and columns of the shadow map are looked at to each side.
uniform int softness;
// What lies under the soil is seen faintly, in this tone.
uniform vec3 soil;
// How far dark things are made lighter, so that they are seen on a dark ground.
uniform float lift;
out vec4 outColour;

vec3 linear(vec3 c) {
  return mix(c / 12.92, pow((c + 0.055) / 1.055, vec3(2.4)), step(0.04045, c));
}

vec3 encoded(vec3 c) {
  c = clamp(c, 0.0, 1.0);
  return mix(12.92 * c, 1.055 * pow(c, vec3(1.0 / 2.4)) - 0.055, step(0.0031308, c));
}

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

// Bark: fine ridges that run along the limb, fading where the colour tells strain.
float bark() {
  vec3 p = vGrain.xyz * grainPerMetre * vec3(1.0, 1.0, 0.22) + 100.0;
  float ridges = 0.65 * noise(p) + 0.35 * noise(p * 2.1) - 0.5;
  float chroma = max(max(vColour.r, vColour.g), vColour.b) - min(min(vColour.r, vColour.g), vColour.b);
  float quiet = 1.0 - smoothstep(0.18, 0.42, chroma);
  return 1.0 + 0.30 * ridges * quiet * step(1e-6, dot(vGrain.xyz, vGrain.xyz));
}

float lit(vec3 n) {
  vec4 p = lightMatrix * vec4(vPosition + n * 0.0012, 1.0);
  vec3 q = p.xyz * 0.5 + 0.5;
  q.z -= 0.0006;
  vec2 texel = 1.0 / vec2(textureSize(shadows, 0));
  float sum = 0.0;
  for (int x = -softness; x <= softness; x++) {
    for (int y = -softness; y <= softness; y++) {
      sum += texture(shadows, vec3(q.xy + vec2(x, y) * texel * 1.2, q.z));
    }
  }
  float taps = float(2 * softness + 1);
  return sum / (taps * taps);
}

void main() {
  vec3 n = normalize(vNormal);
  vec3 v = normalize(vViewNormal);
  vec3 base = linear(mix(vColour, vec3(0.80, 0.82, 0.84), lift)) * bark();
  vec3 sky = vec3(0.60, 0.61, 0.64);
  vec3 ground = vec3(0.34, 0.31, 0.28);
  vec3 around = mix(ground, sky, 0.5 + 0.5 * n.z) * vGrain.w;
  float facing = max(0.0, dot(n, toLight));
  vec3 key = vec3(0.86, 0.83, 0.77) * facing * lit(n);
  float edge = 1.0 - clamp(v.z, 0.0, 1.0);
  vec3 c = base * (around + key) * mix(1.0, 0.55, smoothstep(0.70, 1.0, edge));
  c += vec3(0.020) * pow(edge, 3.0) * max(0.0, v.y);
  float under = smoothstep(0.0005, -0.0015, vPosition.z);
  float alpha = 1.0 - 0.60 * under;
  outColour = vec4(mix(encoded(c), soil, 0.35 * under) * alpha, alpha);
}
