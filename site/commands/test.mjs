// `npm test`: installs what is missing (a browser too), then every check in order; the first that fails ends it.
import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';

import { ensureBrowser } from './browser.mjs';
import { ensurePackages, root } from './packages.mjs';
import { TIMES_FILE } from './times.mjs';

/** In order; what stands in one row runs at once. */
const steps = [
  [['types of the content', 'npx', ['--no-install', 'astro', 'sync']]],
  [
    ['types', 'npm', ['run', '-s', 'check:types']],
    ['lint', 'npm', ['run', '-s', 'lint']],
  ],
  [['unit, reference and property tests', 'npm', ['run', '-s', 'unit']]],
  [['every number of the rules noticed when changed', 'npm', ['run', '-s', 'test:mutate']]],
  [['build', 'npx', ['--no-install', 'astro', 'build']]],
  [['learning-platform packages', 'npm', ['run', '-s', 'package']]],
  [['browser tests', 'npm', ['run', '-s', 'browser']]],
];

try {
  ensurePackages();
  ensureBrowser();
} catch (problem) {
  process.stderr.write(`Could not prepare the tests: ${problem.message}\n`);
  process.exit(1);
}
const env = { ...process.env, CI: 'true' };

/** Runs a step alone in its row as it prints; of several at once each prints when it has ended. */
function run([name, command, args], alone) {
  const begun = Date.now();
  return new Promise((done) => {
    const child = spawn(command, args, {
      cwd: root,
      env,
      stdio: ['ignore', ...Array(2).fill(alone ? 'inherit' : 'pipe')],
    });
    let told = '';
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (piece) => (told += piece));
    const end = (holds) => done({ name, holds, told, seconds: Math.round((Date.now() - begun) / 1000) });
    child.on('error', (problem) => {
      told += problem.message;
      end(false);
    });
    child.on('close', (code) => end(code === 0));
  });
}

let passed = 0;
const times = [];
for (const row of steps) {
  const title = row.map(([name]) => name).join(' and ');
  const begun = Date.now();
  process.stdout.write(`\n== ${title}\n`);
  const ended = await Promise.all(row.map((step) => run(step, row.length === 1)));
  for (const { name, holds, told, seconds } of ended) {
    process.stdout.write(`${told}== ${name}: ${holds ? `${seconds} s` : 'failed'}\n`);
    if (holds) passed += 1;
  }
  times.push([title, Math.round((Date.now() - begun) / 1000)]);
  const failed = ended.filter(({ holds }) => !holds).length;
  if (failed > 0) {
    process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
    process.exit(1);
  }
}
writeFileSync(TIMES_FILE, JSON.stringify(times));
process.stdout.write(`\n${passed} passed, 0 failed\n`);
