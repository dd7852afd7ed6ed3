/**
 * The outer page of a package: it alone talks to the learning platform; the course lives in the frame inside. The
 * learner's record is the course's own, read from the browser's database and told on as it changes.
 */
import { packageWords as words } from '@site/messages/en/package.ts';
import { finishModule } from '@site/storage/record/actions.ts';
import { learnerRecord } from '@site/storage/record/record.ts';
import { useShelfOf } from '@site/storage/shelf.ts';

import { barText } from './bar.ts';
import { cmi5Platform } from './cmi5.ts';
import type { Platform, Resumed } from './platform.ts';
import { allModules, joined, noProgress, progressOf, reportOf, resume, suspend } from './progress.ts';
import { findScorm12, scorm12Platform } from './scorm12.ts';
import { launchOf } from './xapi.ts';

const frame = document.querySelector('iframe');
const [alone, bar] = document.querySelectorAll('p');
const { modules = '', pass = '' } = document.body.dataset;
const chosen = allModules.filter((slug) => modules === '' || modules.split(',').includes(slug));
const passShare = Number(pass) / 100;

function platformHere(): Platform | null {
  const scorm = findScorm12(window as never);
  if (scorm) return scorm12Platform(scorm, () => Date.now());
  const launch = launchOf(location.search);
  return launch && cmi5Platform(launch);
}

/** No platform is told: the course works, and says so to whoever set it up. */
function workAlone(says: string): void {
  useShelfOf('');
  if (alone) {
    alone.hidden = false;
    alone.textContent = says;
  }
  if (frame) frame.src = `course/${firstPage('')}`;
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

/** Where the learner begins: the page left last, else the first module that counts, else the course's own first page. */
const firstPage = (page: string): string =>
  /^[\w/-]+\.html$/.test(page) ? page : modules === '' ? 'index.html' : `lessons/${chosen[0]}/index.html`;

async function begin(): Promise<void> {
  const platform = platformHere();
  if (!platform) {
    workAlone(words.noPlatform);
    return;
  }
  let resumed: Resumed;
  try {
    resumed = await platform.start();
  } catch {
    workAlone(words.noAnswer);
    return;
  }
  const { line, page, learner } = resumed;
  useShelfOf(learner);
  const earlier = line === '' ? noProgress : resume(line);
  const keeper = learnerRecord();
  await keeper.ready;
  // Done on another machine: the course shows it as done here too.
  const here = progressOf(keeper.get().record).done;
  for (const slug of earlier.done) if (!here.includes(slug)) await finishModule(keeper, slug, Date.now());
  if (frame) frame.src = `course/${firstPage(page)}`;

  const tell = async (): Promise<void> => {
    const progress = joined(earlier, progressOf(keeper.get().record));
    const report = reportOf(progress, chosen, passShare);
    if (bar) {
      bar.hidden = false;
      bar.textContent = barText(report, modules === '' ? [] : chosen, chosen.length, passShare);
    }
    await platform.report(report, suspend(progress), pageNow());
  };
  // What does not get through is told again whole with the next change.
  const tellOn = (): void => void tell().catch(() => undefined);
  keeper.subscribe(tellOn);
  frame?.addEventListener('load', tellOn);
  // Each change was told as it came; when the page goes there is time for one last word only.
  window.addEventListener('pagehide', () => void platform.end());
}

void begin();
