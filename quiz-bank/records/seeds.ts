/** The seed of a name: FNV-1a, 32 bits, without the top bit so that it stays a positive whole number everywhere. */
export function seedOf(name: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(name)) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash >>> 1;
}
