// `npm test`: installs what is missing (a browser too), then every check in order; the first that fails ends it.
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';

import { ensureBrowser } from './browser.mjs';
import { ensurePackages, root } from './packages.mjs';
import { TIMES_FILE } from './times.mjs';

const steps = [
  ['types', 'npm', ['run', '-s', 'check']],
  ['lint', 'npm', ['run', '-s', 'lint']],
  ['unit, reference and property tests', 'npm', ['run', '-s', 'unit']],
  ['every number of the rules noticed when changed', 'npm', ['run', '-s', 'test:mutate']],
  ['build', 'npx', ['--no-install', 'astro', 'build']],
  ['learning-platform packages', 'npm', ['run', '-s', 'package']],
  ['browser tests', 'npm', ['run', '-s', 'browser']],
];

try {
  ensurePackages();
  ensureBrowser();
} catch (problem) {
  process.stderr.write(`Could not prepare the tests: ${problem.message}\n`);
  process.exit(1);
}
let passed = 0;
const times = [];
for (const [name, command, args] of steps) {
  const begun = Date.now();
  process.stdout.write(`\n== ${name}\n`);
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, CI: 'true' } });
  if (done.status !== 0) {
    process.stdout.write(`\n${name}: failed\n${passed} passed, 1 failed\n`);
    process.exit(1);
  }
  passed += 1;
  const seconds = Math.round((Date.now() - begun) / 1000);
  times.push([name, seconds]);
  process.stdout.write(`== ${name}: ${seconds} s\n`);
}
writeFileSync(TIMES_FILE, JSON.stringify(times));
process.stdout.write(`\n${passed} passed, 0 failed\n`);
