// SPDX-License-Identifier: Apache-2.0
#version 330 core

void main() {}
