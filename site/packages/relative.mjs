// Makes a site built under a sentinel base run from any folder, as a learning platform unpacks it wherever it likes and
// serves no folder's index by itself.

/** The base the site is built under; found and replaced in every text file. */
export const SENTINEL = '/__ridge_to_bed__/';

/** Files of text, in which links stand. */
export const isText = (path) => /\.(html|css|js|json|webmanifest|svg)$/.test(path);

const up = (path) => '../'.repeat(path.split('/').length - 1) || './';

/** A link to a folder becomes a link to its index. */
const toIndex = (link) => link.replace(/^([^?#]*\/)(?=$|[?#])/, '$1index.html');

/** The text of one file with its links made relative to where it lies. */
export function relative(path, text) {
  if (path.endsWith('.html'))
    return text
      .replace(/(href|src|content)="\/__ridge_to_bed__\/([^"]*)"/g, (_, name, rest) => {
        const link = up(path) + rest;
        return `${name}="${name === 'href' ? toIndex(link) : link}"`;
      })
      .replaceAll(SENTINEL, up(path));
  if (path.endsWith('.js')) return text.replace(/(["'`])\/__ridge_to_bed__\/\1/g, '(globalThis.ridgeToBedBase??"/")');
  return text.replaceAll(SENTINEL, up(path));
}

/**
 * Put before the script that every page loads first: it finds the folder the course lies in, and sends links that were
 * made on the page to a folder's index.
 */
export const BASE_FINDER = `(() => {
  globalThis.ridgeToBedBase = new URL('.', document.currentScript.src).pathname;
  addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
    if (!link || link.origin !== location.origin) return;
    const to = new URL(link.href);
    if (to.pathname.endsWith('/')) link.href = to.pathname + 'index.html' + to.search + to.hash;
  }, true);
})();
`;
