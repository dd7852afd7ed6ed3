const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/**
 * CRC-32 of a text's UTF-8 bytes as eight hexadecimal figures (ISO/IEC 3309, polynomial 0x04C11DB7 reflected). It
 * tells a damaged or carelessly edited record from a whole one; it is no signature.
 */
export function checksum(text: string): string {
  let crc = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) crc = (crc >>> 8) ^ (table[(crc ^ byte) & 255] ?? 0);
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
