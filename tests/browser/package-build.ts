import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const LOCK = join(tmpdir(), `ridge-to-bed-packages-${process.ppid}`);
const pause = (ms: number): void => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);

/**
 * Makes the packages where there are none; one made before is tested as it stands. Workers of one run share a parent:
 * the first of them makes the packages, the others wait for it.
 */
export function ensurePackage(folder: string): void {
  for (;;) {
    try {
      mkdirSync(LOCK);
      break;
    } catch {
      pause(500);
    }
  }
  try {
    if (existsSync(`${folder}/index.html`)) return;
    const made = spawnSync('npm', ['run', '-s', 'package'], { stdio: ['ignore', 'inherit', 'inherit'] });
    if (made.status !== 0) throw new Error('npm run package did not make the packages');
  } finally {
    rmSync(LOCK, { recursive: true });
  }
}
