import type { Draft } from './draft.ts';
import { pack, unpack } from '@sim/input/packed.ts';
import { readDraft, writeDraft } from './read-draft.ts';

/** Stands before the packed job, so that another kind of link, or a later version, is recognised. */
const MARK = '#job1.';

/** What the part of the address after `#` holds. */
export type LinkReading = { state: 'none' } | { state: 'read'; draft: Draft } | { state: 'broken' | 'other-version' };

/** The part of an address after and with `#` that carries the draft. */
export const linkHash = (draft: Draft): string => MARK + pack(writeDraft(draft));

/** Reads the job out of an address; a link that is cut off or altered is said to be so. */
export function readLink(hash: string): LinkReading {
  if (!/^#job\d+\./.test(hash)) return { state: 'none' };
  if (!hash.startsWith(MARK)) return { state: 'other-version' };
  const text = unpack(hash.slice(MARK.length));
  const draft = text === null ? null : readDraft(text);
  return draft ? { state: 'read', draft } : { state: 'broken' };
}
