/** The browser's older way, the only one where a site is served without TLS: what is marked is copied. */
function copyMarked(text: string): boolean {
  const before = document.activeElement;
  const box = document.createElement('textarea');
  box.value = text;
  box.readOnly = true;
  // Out of sight, and where it is: marking it must not move the page.
  box.style.cssText = 'position: fixed; inset: 0 auto auto 0; opacity: 0; pointer-events: none';
  document.body.append(box);
  box.select();
  try {
    // Deprecated, and no other call does it there.
    return document.execCommand('copy');
  } catch {
    return false;
  } finally {
    box.remove();
    if (before instanceof HTMLElement) before.focus({ preventScroll: true });
  }
}

/**
 * Puts a text on the clipboard; to be called while a press is answered.
 * @returns false where the browser keeps the clipboard shut: the text must then stand where it can be copied by hand
 */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyMarked(text);
  }
}
