// `npm run fuzz`: many more strange texts for every reader, from a new seed unless one is given (FUZZ_SEED, FUZZ_TEXTS).
import { spawnSync } from 'node:child_process';
import { randomInt } from 'node:crypto';

import { ensurePackages, root } from './packages.mjs';

ensurePackages();
const FUZZ_SEED = process.env.FUZZ_SEED ?? String(randomInt(2 ** 31));
const FUZZ_TEXTS = process.env.FUZZ_TEXTS ?? '200000';
process.stdout.write(`FUZZ_SEED=${FUZZ_SEED} FUZZ_TEXTS=${FUZZ_TEXTS}\n`);
const done = spawnSync('npx', ['--no-install', 'vitest', 'run', 'tests/fuzz'], {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, FUZZ_SEED, FUZZ_TEXTS },
});
process.exit(done.status ?? 1);
