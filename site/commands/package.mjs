// `npm run package`: the course as packages for learning platforms, in dist-packages/. --modules a,b takes chosen modules;
// --pass 75 sets the pass mark.
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

import { course } from '../../lessons/course.ts';
import { cmi5Structure, scorm12Manifest } from '../packages/manifests.mjs';
import { BASE_FINDER, isText, relative, SENTINEL } from '../packages/relative.mjs';
import { must, root } from './packages.mjs';

const out = `${root}dist-packages`;

function settings() {
  const { values } = parseArgs({ options: { modules: { type: 'string' }, pass: { type: 'string' } } });
  const modules = values.modules ? values.modules.split(',').map((one) => one.trim()) : [];
  const known = course.map(({ slug }) => slug);
  const strange = modules.find((one) => !known.includes(one));
  if (strange) throw new Error(`--modules: "${strange}" is not a module; accepted are ${known.join(', ')}`);
  const pass = Number(values.pass ?? 80);
  if (!(pass >= 0 && pass <= 100)) throw new Error('--pass: give a percentage from 0 to 100');
  return { modules, pass };
}

const filesIn = (folder, at = '') =>
  readdirSync(join(folder, at)).flatMap((name) => {
    const path = at === '' ? name : `${at}/${name}`;
    return statSync(join(folder, path)).isDirectory() ? filesIn(folder, path) : [path];
  });

/** The site under a sentinel base, then every link made relative; no service worker inside a platform's frame. */
function buildCourse(folder) {
  must('npx', ['--no-install', 'astro', 'build', '--outDir', folder], { env: { ...process.env, BASE_PATH: SENTINEL } });
  rmSync(join(folder, 'sw.js'), { force: true });
  for (const path of filesIn(folder).filter(isText)) {
    const text = relative(path, readFileSync(join(folder, path), 'utf8'));
    writeFileSync(join(folder, path), path === 'preferences.js' ? BASE_FINDER + text : text);
  }
}

async function buildLaunch(folder, { modules, pass }) {
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    base: './',
    resolve: { tsconfigPaths: true },
    build: {
      outDir: folder,
      emptyOutDir: false,
      lib: { entry: `${root}site/packages/launch/launch.ts`, formats: ['es'], fileName: () => 'launch.js' },
    },
  });
  const page = readFileSync(`${root}site/packages/launch/index.html`, 'utf8');
  writeFileSync(
    join(folder, 'index.html'),
    page.replace('{modules}', modules.join(',')).replace('{pass}', String(pass)),
  );
  cpSync(`${root}site/packages/launch/launch.css`, join(folder, 'launch.css'));
}

async function zipFolder(folder, file) {
  const { zipSync } = await import('fflate');
  const entries = Object.fromEntries(
    filesIn(folder).map((path) => [path, new Uint8Array(readFileSync(join(folder, path)))]),
  );
  writeFileSync(file, zipSync(entries, { level: 6 }));
  return { files: Object.keys(entries).length, bytes: statSync(file).size };
}

try {
  const chosen = settings();
  const about =
    'The mortar bed under tile: what the notched trowel leaves, how the ridges collapse, and how to know that it is full.';
  const title = 'Ridge to Bed';
  rmSync(out, { recursive: true, force: true });
  const common = join(out, 'common');
  mkdirSync(common, { recursive: true });
  buildCourse(join(common, 'course'));
  await buildLaunch(common, chosen);
  for (const [name, manifest, write] of [
    ['scorm12', 'imsmanifest.xml', scorm12Manifest],
    ['cmi5', 'cmi5.xml', cmi5Structure],
  ]) {
    const folder = join(out, name);
    cpSync(common, folder, { recursive: true });
    writeFileSync(join(folder, manifest), write({ title, about, pass: chosen.pass, files: filesIn(folder) }));
    const { files, bytes } = await zipFolder(folder, join(out, `ridge-to-bed-${name}.zip`));
    process.stdout.write(`dist-packages/ridge-to-bed-${name}.zip: ${files} files, ${Math.round(bytes / 1000)} kB\n`);
  }
  rmSync(common, { recursive: true, force: true });
  if (!existsSync(join(out, 'scorm12', 'course', 'index.html')))
    throw new Error('the course is missing from the package');
} catch (problem) {
  process.stderr.write(`No package was made: ${problem.message}\n`);
  process.exitCode = 1;
}
