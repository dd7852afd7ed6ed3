import { readFileSync } from 'node:fs';

import { describe, expect, test } from 'vitest';

import { UNBUNDLED } from '../../site/packages/licences.mjs';
import { PERMISSIVE } from './permissive.ts';

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

describe('what the lockfile brings in', () => {
  test('each package is held to its contents, and to no one server', () => {
    expect(pathsWhere(({ integrity }) => !integrity?.startsWith('sha512-'))).toEqual([]);
    expect(pathsWhere(({ resolved }) => resolved !== undefined)).toEqual([]);
  });
  test('only the named packages may run anything when they are installed', () => {
    expect(pathsWhere(({ hasInstallScript }) => hasInstallScript === true).sort()).toEqual(
      Object.keys(allowScripts).sort(),
    );
  });
  test('what the site ships is under a permissive licence', () => {
    const shipped = [...Object.keys(dependencies), ...UNBUNDLED];
    const licences = shipped.map((name) => [name, packages[`node_modules/${name}`]?.license ?? 'none']);
    expect(licences.filter(([, licence]) => !PERMISSIVE.test(licence ?? ''))).toEqual([]);
  });
});
