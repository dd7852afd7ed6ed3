// `npm run package`: the course as packages for learning platforms, in dist-packages/. --modules a,b takes chosen modules;
// --pass 75 sets the pass mark.
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

import { packageWords } from '../messages/en/package.ts';
import { choiceOf, launchPage, nameOf, titleOf } from '../packages/choice.ts';
import { LICENCES } from '../packages/licences.mjs';
import { cmi5Structure, scorm12Manifest } from '../packages/manifests.mjs';
import { BASE_FINDER, isText, relative, SENTINEL } from '../packages/relative.mjs';
import { must, root } from './packages.mjs';

const out = `${root}dist-packages`;

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

async function buildLaunch(folder, choice) {
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
      license: { fileName: LICENCES },
      lib: { entry: `${root}site/packages/launch/launch.ts`, formats: ['es'], fileName: () => 'launch.js' },
    },
  });
  const page = readFileSync(`${root}site/packages/launch/index.html`, 'utf8');
  writeFileSync(join(folder, 'index.html'), launchPage(page, choice));
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
  const { values } = parseArgs({ options: { modules: { type: 'string' }, pass: { type: 'string' } } });
  const choice = choiceOf(values);
  rmSync(out, { recursive: true, force: true });
  const common = join(out, 'common');
  mkdirSync(common, { recursive: true });
  buildCourse(join(common, 'course'));
  await buildLaunch(common, choice);
  for (const [name, manifest, write] of [
    ['scorm12', 'imsmanifest.xml', scorm12Manifest],
    ['cmi5', 'cmi5.xml', cmi5Structure],
  ]) {
    const folder = join(out, name);
    cpSync(common, folder, { recursive: true });
    writeFileSync(
      join(folder, manifest),
      write({
        title: titleOf(choice),
        about: packageWords.about,
        name: nameOf(choice),
        pass: choice.pass,
        files: filesIn(folder),
      }),
    );
    const { files, bytes } = await zipFolder(folder, join(out, `ridge-to-bed-${nameOf(choice)}-${name}.zip`));
    process.stdout.write(
      `dist-packages/ridge-to-bed-${nameOf(choice)}-${name}.zip: ${files} files, ${Math.round(bytes / 1000)} kB\n`,
    );
  }
  rmSync(common, { recursive: true, force: true });
  if (!existsSync(join(out, 'scorm12', 'course', 'index.html')))
    throw new Error('the course is missing from the package');
} catch (problem) {
  process.stderr.write(`No package was made: ${problem.message}\n`);
  process.exitCode = 1;
}
