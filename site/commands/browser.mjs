// Finds or installs a browser for the tests: a system Chromium; on Debian as root, Debian's; else the test tool's own.
import { existsSync } from 'node:fs';

import { must } from './packages.mjs';

const systemPaths = ['/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** Makes sure that a Chromium can be started; throws a sentence when none can be had. */
export function ensureBrowser() {
  if (systemPaths.some((path) => existsSync(path))) return;
  const debianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (debianRoot) {
    process.stderr.write("Installing Debian's Chromium for the browser tests (once) …\n");
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    must('apt-get', ['update', '-qq'], { env });
    must('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { env });
    return;
  }
  must('npx', ['--no-install', 'playwright', 'install', 'chromium']);
}
