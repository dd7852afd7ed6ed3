// Installs the packages where they are missing or older than the lockfile. Runs on the host's Node, before any
// package exists, so it uses nothing but Node itself.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));
// Nothing is sent anywhere, the build tool's own statistics included.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

const stamp = `${root}node_modules/.installed-lock`;

/** Runs a command in the project's folder with its output shown on standard error; throws a sentence when it fails. */
export function must(command, args, options = {}) {
  const done = spawnSync(command, args, { cwd: root, stdio: ['ignore', 2, 2], ...options });
  if (done.status !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${done.status ?? done.signal}`);
}

/** Makes node_modules agree with package-lock.json; does nothing when it already does. */
export function ensurePackages() {
  const lock = createHash('sha256')
    .update(readFileSync(`${root}package-lock.json`))
    .digest('hex');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  process.stderr.write('Installing packages (once) …\n');
  must('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  writeFileSync(stamp, lock);
}
