/**
 * Characters that hide, break or turn text: control characters, zero-width marks, marks that change the reading
 * direction, and half of a character pair.
 */
const HIDDEN = /[\u0000-\u001f\u007f-\u009f\u00ad\u200b-\u200f\u2028-\u202f\u2060-\u206f\ufeff\ufff9-\ufffb]|\p{Cs}/gu;

/** A stranger's text with every such character replaced (by nothing unless told), fit to be shown or kept. */
export const withoutHidden = (text: string, instead = ''): string => text.replace(HIDDEN, instead);
