import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Makes the packages where there are none; one made before is tested as it stands. */
export function ensurePackage(folder: string): void {
  if (existsSync(`${folder}/index.html`)) return;
  const made = spawnSync('npm', ['run', '-s', 'package'], { stdio: ['ignore', 'inherit', 'inherit'] });
  if (made.status !== 0) throw new Error('npm run package did not make the packages');
}
