/** Text small enough for an address or a square code, and safe to take back from anyone. */
import { deflateSync, Inflate } from 'fflate';

/** A link longer than this comes from no form of ours. */
const MOST_CHARACTERS = 12_000;
/** What a packed text may grow to; a text that swells past it is refused while it swells. */
const MOST_BYTES = 200_000;
/** Small steps, so that a swelling text is stopped early. */
const STEP = 512;

const toAddress = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');

function fromAddress(text: string): Uint8Array | null {
  if (!/^[\w-]*$/.test(text)) return null;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}

/** Packs text so that it can stand in an address after `#`: letters, figures, `-` and `_`. */
export function pack(text: string): string {
  const bytes = deflateSync(new TextEncoder().encode(text), { level: 9 });
  let letters = '';
  // In pieces: an argument list has a limit, a long job has not.
  for (let at = 0; at < bytes.length; at += 3 * 1024) letters += toAddress(bytes.subarray(at, at + 3 * 1024));
  return letters;
}

/** Unpacks what `pack` made; null for anything else, however long, cut off or swelling it is. */
export function unpack(packed: string): string | null {
  if (packed.length > MOST_CHARACTERS) return null;
  const bytes = fromAddress(packed);
  if (!bytes || bytes.length === 0) return null;
  const pieces: Uint8Array[] = [];
  let size = 0;
  let ended = false;
  const inflate = new Inflate((piece, final) => {
    size += piece.length;
    if (size <= MOST_BYTES) pieces.push(piece);
    ended = final;
  });
  try {
    for (let at = 0; at < bytes.length && size <= MOST_BYTES; at += STEP)
      inflate.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    if (!ended || size > MOST_BYTES) return null;
    const whole = new Uint8Array(size);
    let filled = 0;
    for (const piece of pieces) {
      whole.set(piece, filled);
      filled += piece.length;
    }
    return new TextDecoder('utf-8', { fatal: true }).decode(whole);
  } catch {
    return null;
  }
}
