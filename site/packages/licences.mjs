// The licences of what the site ships of others stand beside it, as they ask. The bundler writes those of the scripts
// it bundles; the service worker and the typeface go past it, so theirs are added once the site is built.
import { appendFileSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The file that lists them, at the root of the built site. */
export const LICENCES = 'licences.txt';

/** Packages that reach a reader without passing the bundler. */
export const UNBUNDLED = [
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  '@fontsource-variable/atkinson-hyperlegible-next',
];

const packages = new URL('../../node_modules/', import.meta.url);
const textOf = (path) => readFileSync(new URL(path, packages), 'utf8');

/** One package under a heading as the bundler writes it: name, version, licence, then the licence's own text. */
function section(name) {
  const { version, license } = JSON.parse(textOf(`${name}/package.json`));
  return `\n## ${name} - ${version} (${license})\n\n${textOf(`${name}/LICENSE`).trim()}\n`;
}

/** An Astro integration; it has nothing to do while developing. */
export const licences = () => ({
  name: 'licences',
  hooks: {
    'astro:build:done': ({ dir }) =>
      appendFileSync(fileURLToPath(new URL(LICENCES, dir)), UNBUNDLED.map(section).join('')),
  },
});
