import type { Stage } from '@site/islands/bench/bench.svelte.ts';
import type { TwinId } from '@site/islands/bench/compare/twins.ts';
import type { SweepId } from '@site/islands/bench/sweep/sweeps.ts';
import type { CauseId } from '@site/islands/bench/why/causes.ts';

/** Words of the bench for what comes after the pull: reasons, comparing, curves, carrying away. */
export const benchAfter = {
  why: {
    title: 'Guess, truth and why',
    exact: (truth: string) => `You said ${truth}, and ${truth} it is.`,
    low: (guess: string, truth: string, points: number) =>
      `You said ${guess}; it is ${truth}. The bed was better than you thought, by ${points} ${points === 1 ? 'point' : 'points'}.`,
    high: (guess: string, truth: string, points: number) =>
      `You said ${guess}; it is ${truth}. The bed was worse than you thought, by ${points} ${points === 1 ? 'point' : 'points'}.`,
    looked: 'You had looked into the bed before, so this was no blind guess.',
    ask: 'Find out what cost coverage',
    running: 'Running the bed again, one thing changed at a time',
    main: (cause: string, points: string) => `What would have helped most: ${cause.toLowerCase()} (${points} points).`,
    none: 'No single change would have brought a point: this bed is about as full as it gets.',
    caption: (base: string) => `The same bed, one thing changed at a time. As it was: ${base}.`,
    changed: 'Changed',
    then: 'Coverage then',
    points: 'Points',
    alone:
      'Each line is a run of its own with that one thing changed. The gains do not add up: two cures may fill the same void.',
    guessMark: 'The upright line through the bars is your guess.',
    causes: {
      mortar: 'Half as much mortar again',
      collapse: 'Ridges worked flat by six long strokes across',
      air: 'Air let out freely',
      bow: 'A flat tile',
      floor: 'A flat floor',
      skin: 'Fresh mortar',
      edge: 'Combed right to the edge',
      pattern: 'Straight ridges along the short side',
      relief: 'A smooth back',
      stiff: 'A mix that just holds a ridge',
      worn: 'New teeth',
    } satisfies Record<CauseId, string>,
  },
  compare: {
    title: 'Two beds side by side',
    lead: 'Keep this bed, change one thing, and see both with one eye.',
    keep: 'Keep this bed',
    drop: 'Let the kept bed go',
    swap: 'Change places',
    first: 'Kept',
    second: 'On the bench',
    same: 'The two beds are the same so far: change one thing.',
    count: (things: number) =>
      things === 1
        ? 'They differ in one thing.'
        : `They differ in ${things} things, so the difference has no single cause.`,
    says: (kept: string, now: string, points: number) =>
      `Kept: ${kept}; on the bench: ${now}${points === 0 ? ', the same' : `, ${Math.abs(points)} ${Math.abs(points) === 1 ? 'point' : 'points'} ${points > 0 ? 'more' : 'less'}`}.`,
    caption: 'What differs',
    yes: 'yes',
    no: 'no',
    twinsLabel: 'Keep this bed and make the same again, but',
    twins: {
      swirl: 'swirled',
      straight: 'combed straight',
      along: 'slid along the ridges',
      across: 'slid across the ridges',
      flat: 'with a flat tile',
      butter: 'with the back coated',
      fresh: 'on fresh mortar',
      flattened: 'with the ridges knocked flat',
    } satisfies Record<TwinId, string>,
  },
  sweep: {
    title: 'One control, end to end',
    lead: 'Every point is a bed of its own, computed with everything else held.',
    what: 'Control',
    go: 'Draw the curve',
    running: 'Running the beds of the curve',
    table: 'The curve as a table',
    label: (name: string) => `Coverage against ${name}; the table below has the same figures.`,
    caption: (name: string, runs: number) => `Coverage against ${name}, from ${runs} runs.`,
    marked: 'The dotted line is the bed on the bench.',
    markedBefore: 'The dotted line is the bed it was drawn for.',
    stale: 'Another bed is on the bench by now. This curve is of the one before; draw it anew.',
    names: {
      bow: 'Bow along the length',
      depth: 'Depth of the notch',
      angle: 'Angle of the blade',
      force: 'Hand’s force',
      strokes: 'Strokes across',
      direction: 'Direction of the ridges',
      age: 'Minutes since combing',
      butter: 'Coat on the back',
      yield: 'Stiffness of the mix',
    } satisfies Record<SweepId, string>,
  },
  carry: {
    title: 'Carry it away',
    lead: 'The address of this page holds the whole bed after the #. Nothing is sent anywhere.',
    link: 'Copy the link',
    png: 'Save the picture',
    json: 'Save the figures',
    print: 'Print',
    copied: 'The link is on the clipboard.',
    copyByHand: (address: string) => `The clipboard is closed to this page. The link is ${address}`,
    saved: (name: string) => `${name} is with your downloads.`,
    noPicture: 'The picture could not be made in this browser.',
    headings: { comb: 'A bed, combed', set: 'A bed, set', pulled: 'A bed, pulled' } satisfies Record<Stage, string>,
    name: 'Ridge to Bed, setting bench',
    again: 'This bed again, to work on:',
    aside: {
      left: 'The kept bed, left in the picture',
      above: 'The kept bed, above in the picture',
      none: 'The kept bed',
    },
    gain: (cause: string, points: string) => `${cause.toLowerCase()} ${points}`,
    gains: (all: string) => `One thing changed at a time, points of coverage: ${all}.`,
    shut: 'Not pulled yet: what the back took is not told.',
  },
} as const;
