import type { Platform } from './platform.ts';
import { MOST_SUSPENDED, type Report } from './progress.ts';

/** The run-time interface of SCORM 1.2 (ADL, SCORM 1.2 Run-Time Environment, 3.2): strings in, strings out. */
export interface Scorm12Api {
  LMSInitialize: (empty: '') => string | boolean;
  LMSGetValue: (element: string) => string;
  LMSSetValue: (element: string, value: string) => string | boolean;
  LMSCommit: (empty: '') => string | boolean;
  LMSFinish: (empty: '') => string | boolean;
}

interface Frame {
  API?: Scorm12Api;
  parent: Frame;
  opener?: Frame | null;
}

/** A platform nests its frames no deeper; without a limit a page that is its own parent would be walked for ever. */
const DEEPEST = 12;

function upwards(from: Frame): Scorm12Api | null {
  let frame = from;
  for (let depth = 0; depth < DEEPEST; depth++) {
    try {
      if (frame.API) return frame.API;
    } catch {
      return null; // a frame of another site: its inside is closed to us
    }
    if (frame.parent === frame) return null;
    frame = frame.parent;
  }
  return null;
}

/** Finds the platform's interface: in the frames around this page, then around the page that opened it. */
export function findScorm12(page: Frame): Scorm12Api | null {
  return upwards(page) ?? (page.opener ? upwards(page.opener) : null);
}

/** A time span as SCORM 1.2 wants it: HHHH:MM:SS.SS. */
export function scormTime(milliseconds: number): string {
  const hundredths = Math.max(0, Math.round(milliseconds / 10));
  const two = (value: number): string => String(value).padStart(2, '0');
  const seconds = Math.floor(hundredths / 100);
  const hours = Math.min(9999, Math.floor(seconds / 3600));
  return `${String(hours).padStart(4, '0')}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}.${two(hundredths % 100)}`;
}

/** `incomplete`, never `failed`: a learner who is not there yet may go on. */
const statusOf = ({ complete, passed, score }: Report): string =>
  passed ? 'passed' : complete && score === null ? 'completed' : 'incomplete';

/**
 * A platform that speaks SCORM 1.2.
 * @param now the clock, ms
 */
export function scorm12Platform(api: Scorm12Api, now: () => number): Platform {
  const begun = now();
  let ended = false;
  const set = (element: string, value: string): void => void api.LMSSetValue(element, value);
  return {
    start: () => {
      api.LMSInitialize('');
      const status = api.LMSGetValue('cmi.core.lesson_status');
      if (status === '' || status === 'not attempted') {
        set('cmi.core.lesson_status', 'incomplete');
        api.LMSCommit('');
      }
      return Promise.resolve({
        line: api.LMSGetValue('cmi.suspend_data'),
        page: api.LMSGetValue('cmi.core.lesson_location'),
        learner: api.LMSGetValue('cmi.core.student_id'),
      });
    },
    report: (report, line, page) => {
      if (ended) return Promise.resolve();
      if (line.length > MOST_SUSPENDED) throw new RangeError(`Suspend data of ${line.length} characters.`);
      set('cmi.core.lesson_status', statusOf(report));
      if (report.score !== null) {
        set('cmi.core.score.min', '0');
        set('cmi.core.score.max', '100');
        set('cmi.core.score.raw', String(Math.round(report.score * 100)));
      }
      set('cmi.suspend_data', line);
      set('cmi.core.lesson_location', page.slice(0, 255));
      api.LMSCommit('');
      return Promise.resolve();
    },
    end: () => {
      if (ended) return Promise.resolve();
      ended = true;
      set('cmi.core.session_time', scormTime(now() - begun));
      set('cmi.core.exit', 'suspend');
      api.LMSCommit('');
      api.LMSFinish('');
      return Promise.resolve();
    },
  };
}
