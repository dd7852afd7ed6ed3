import type { Report } from './progress.ts';

/** What a learning platform gave us back from the last visit. */
export interface Resumed {
  /** Our suspended line, empty on a first visit. */
  readonly line: string;
  /** Page of the course last shown, relative to the course; empty on a first visit. */
  readonly page: string;
  /** Who the learner is, in the platform's words; empty where it does not say. */
  readonly learner: string;
}

/** A learning platform, whichever standard it speaks. */
export interface Platform {
  start: () => Promise<Resumed>;
  report: (report: Report, line: string, page: string) => Promise<void>;
  end: () => Promise<void>;
}
