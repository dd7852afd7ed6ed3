import { readFileSync } from 'node:fs';

import { describe, expect, test } from 'vitest';

interface Locked {
  version: string;
  integrity?: string;
  resolved?: string;
  license?: string;
  dev?: boolean;
  optional?: boolean;
  hasInstallScript?: boolean;
}
const read = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8')) as unknown;
const { packages } = read('package-lock.json') as { packages: Record<string, Locked> };
const { dependencies, allowScripts } = read('package.json') as Record<
  'dependencies' | 'allowScripts',
  Record<string, string>
>;
const locked = Object.entries(packages).filter(([path]) => path !== '');
const pathsWhere = (holds: (one: Locked) => boolean): string[] =>
  locked.filter(([, one]) => holds(one)).map(([path]) => path.replace(/^.*node_modules\//, ''));

/** What a reader's browser may be given without more than the licence's own lines. */
const PERMISSIVE = /^(MIT|MIT-0|ISC|BSD-[23]-Clause|0BSD|Apache-2\.0|OFL-1\.1|BlueOak-1\.0\.0)$/;

describe('what the lockfile brings in', () => {
  test('each package is held to its contents, and to no one server', () => {
    expect(pathsWhere(({ integrity }) => !integrity?.startsWith('sha512-'))).toEqual([]);
    expect(pathsWhere(({ resolved }) => resolved !== undefined)).toEqual([]);
  });
  test('only the named packages may run anything when they are installed', () => {
    // `spawn-sync` comes with the keeper of SCORM's schemas; its script does nothing on a Node of today.
    expect(pathsWhere(({ hasInstallScript }) => hasInstallScript === true).sort()).toEqual(
      [...Object.keys(allowScripts), 'spawn-sync'].sort(),
    );
  });
  test('what the site ships is under a permissive licence', () => {
    const licences = Object.keys(dependencies).map((name) => [
      name,
      packages[`node_modules/${name}`]?.license ?? 'none',
    ]);
    expect(licences.filter(([, licence]) => !PERMISSIVE.test(licence ?? ''))).toEqual([]);
  });
});
