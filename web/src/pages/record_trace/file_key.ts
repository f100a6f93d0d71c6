// The key of a file's trace: the same file dropped again has the same key, and the server then changes nothing.
//
// It is made from the name, the size and a digest of every byte, not from the day the file was written: copied to
// another device the file is still the same. Where the page is not served over https (or from this machine) browsers
// offer no digest; then a plain one is worked out here. Both only have to tell files apart.
export async function fileKey(file: File, subtle: SubtleCrypto | undefined = globalThis.crypto?.subtle): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const head = new TextEncoder().encode(`${file.name}\n${file.size}\n`);
  const all = new Uint8Array(head.length + bytes.length);
  all.set(head);
  all.set(bytes, head.length);
  const digest = subtle ? new Uint8Array(await subtle.digest('SHA-256', all)).slice(0, 16) : plainDigest(all);
  const hex = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

// FNV-1a (Fowler, Noll, Vo; 32 bits, prime 16777619), four times from different beginnings: 128 bits.
export function plainDigest(bytes: Uint8Array): Uint8Array {
  const digest = new DataView(new ArrayBuffer(16));
  for (let lane = 0; lane < 4; lane += 1) {
    let hash = (0x811c9dc5 ^ Math.imul(lane, 0x9e3779b9)) >>> 0;
    for (const byte of bytes) hash = Math.imul(hash ^ byte, 16777619) >>> 0;
    digest.setUint32(4 * lane, hash);
  }
  return new Uint8Array(digest.buffer);
}
