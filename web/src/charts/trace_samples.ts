// The samples of one plate as they travel: base64 of 32-bit floats, little-endian, newtons.
export function readSamples(text: string): Float32Array {
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i += 1) bytes[i] = letters.charCodeAt(i);
  const view = new DataView(bytes.buffer);
  const samples = new Float32Array(bytes.length >> 2);
  for (let i = 0; i < samples.length; i += 1) samples[i] = view.getFloat32(4 * i, true);
  return samples;
}

// Both feet together, for the third line of the drawing.
export function bothPlates(one: Float32Array, other: Float32Array): Float32Array {
  return one.map((force, i) => force + (other[i] ?? 0));
}
