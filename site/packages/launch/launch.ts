/**
 * The outer page of a package: it alone talks to the learning platform; the course lives in the frame inside. The
 * learner's record is the course's own, read from the browser's database and told on as it changes.
 */
import { learnerRecord } from '@site/storage/record/record.ts';

import type { Platform } from './platform.ts';
import { allModules, joined, noProgress, progressOf, reportOf, resume, suspend } from './progress.ts';
import { findScorm12, scorm12Platform } from './scorm12.ts';

const frame = document.querySelector('iframe');
const note = document.querySelector('p');
const { modules = '', pass = '80' } = document.body.dataset;
const chosen = allModules.filter((slug) => modules === '' || modules.split(',').includes(slug));
const passShare = Number(pass) / 100;

async function platformHere(): Promise<Platform | null> {
  const scorm = findScorm12(window as never);
  if (scorm) return scorm12Platform(scorm, () => Date.now());
  const { cmi5Platform, isCmi5Launch } = await import('./cmi5.ts');
  return isCmi5Launch() ? cmi5Platform() : null;
}

/** The course's page on show, relative to the course. */
function pageNow(): string {
  try {
    const path = frame?.contentWindow?.location.pathname ?? '';
    return path.split('/course/')[1] ?? '';
  } catch {
    return ''; // a page that is not ours
  }
}

async function begin(): Promise<void> {
  const platform = await platformHere();
  const { line, page } = (await platform?.start()) ?? { line: '', page: '' };
  const earlier = line === '' ? noProgress : resume(line);
  if (frame) frame.src = /^[\w/-]+\.html$/.test(page) ? `course/${page}` : 'course/index.html';
  if (!platform) {
    // Opened without a platform: the course works, and says so to whoever set it up.
    if (note) note.hidden = false;
    return;
  }
  const tell = async (): Promise<void> => {
    const progress = joined(earlier, progressOf(learnerRecord().get().record));
    await platform.report(reportOf(progress, chosen, passShare), suspend(progress), pageNow());
  };
  // What does not get through is told again whole with the next change.
  const tellOn = (): void => void tell().catch(() => undefined);
  learnerRecord().subscribe(tellOn);
  frame?.addEventListener('load', tellOn);
  // Each change was told as it came; when the page goes there is time for one last word only.
  window.addEventListener('pagehide', () => void platform.end());
}

void begin();
