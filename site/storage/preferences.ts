import type { UnitSystem } from '@sim/units/format.ts';

export type Theme = 'light' | 'dark';

/** A value that islands may follow: Svelte's `$` works on it, and so does plain script. */
export interface Preference<T> {
  get: () => T;
  set: (value: T) => void;
  /** Calls back at once and on every change; returns the function that stops it. */
  subscribe: (follow: (value: T) => void) => () => void;
}

const page = typeof document === 'undefined' ? null : document.documentElement;

/** Kept where the browser allows it; elsewhere it lasts as long as the page. */
function keep(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // Storage is closed or full: the choice still holds on this page.
  }
}

function preference<T extends string>(key: string, name: 'units' | 'theme', fallback: T, allowed: T[]): Preference<T> {
  const known = (text: string | null | undefined): T => allowed.find((one) => one === text) ?? fallback;
  const followers = new Set<(value: T) => void>();
  let now = known(page?.dataset[name]);
  const show = (value: T): void => {
    now = value;
    if (page) page.dataset[name] = value;
    followers.forEach((follow) => follow(value));
  };
  if (page)
    window.addEventListener('storage', (event) => {
      if (event.key === key && event.newValue !== null) show(known(event.newValue));
    });
  return {
    get: () => now,
    set: (value) => {
      keep(key, value);
      show(value);
    },
    subscribe: (follow) => {
      followers.add(follow);
      follow(now);
      return () => followers.delete(follow);
    },
  };
}

/** Imperial or metric, as the reader chose; another tab's choice arrives here too. */
export const unitSystem: Preference<UnitSystem> = preference('rtb.units', 'units', 'imperial', ['imperial', 'metric']);

/** Light or dark page. */
export const theme: Preference<Theme> = preference('rtb.theme', 'theme', 'light', ['light', 'dark']);
