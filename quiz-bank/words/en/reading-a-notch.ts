import type { Words } from '../../engine/say.ts';

/** Holes in braces are filled by the template of the same name. */
export const readingANotch: Record<string, Words> = {
  'reading-a-notch/bed-left': {
    story:
      'You comb with a {notch} trowel, the blade at {angle}° to the floor. The tile goes down and the ridges flatten out completely.',
    width: 'Gap between teeth',
    depth: 'Depth of the notch',
    tooth: 'Width of a tooth',
    'tooth-none': 'none, the points meet',
    height: 'Height of a ridge at this angle, as a share of that depth',
    ask: 'How thick is the bed then, on average?',
    picture: 'The blade of a {notch} trowel, to scale.',
    'why-square':
      'The teeth leave no mortar, so the ridge fills only its share of the width, and at this angle it stands {share} of the depth: {bed}.',
    'why-v':
      'A V is half air: its ridge holds half of what a block of that height would, and at this angle it stands {share} of the depth: {bed}.',
    'picture-why': 'The ridges in section and the flat bed they come to, {bed}.',
  },
  'reading-a-notch/same-mortar': {
    story: 'The plan wants a {notch} trowel. Yours is at another job.',
    ask: 'Which of these leaves the same mortar, held at the same angle?',
    picture: 'The blade of a {notch} trowel, to scale.',
    why: 'Held upright, {notch} leaves {bed} and {other} leaves {same}.',
    'why-not': '{notch} would leave {bed}.',
    'picture-why': 'Ridges of a {notch} trowel in section, with the bed they come to.',
  },
  'reading-a-notch/least-to-most': {
    story: 'Four trowels hang on the wall. You hold each at the same angle.',
    ask: 'Put them in order by the mortar they leave on the floor.',
    least: 'least',
    most: 'most',
    why: 'What counts is the area of one gap shared out over gap and tooth. At 60° that comes to:',
    'why-each': '{notch}: {bed}.',
  },
  'reading-a-notch/read-the-label': {
    story: 'The stamp on a trowel is worn off. You measure the blade: {measures}.',
    ask: 'What do you call it?',
    across: 'the gap is {length} across',
    deep: 'it is cut {length} deep',
    between: 'there is {length} of steel between two gaps',
    points: 'the gaps meet in points',
    why: 'The trade says width first, then depth: {width} by {depth}.',
    'why-tooth': 'A tooth that is not as wide as the gap is said last: {tooth}.',
  },
  'reading-a-notch/angle-and-least-bed': {
    story: 'A helper combs with a {notch} trowel, the blade at {angle}° to the floor.',
    tooth: 'Width of a tooth',
    'tooth-none': 'none, the points meet',
    ask: 'A bed must be at least {least} once the tile is down. Is there enough mortar on the floor, and why?',
    yes: 'Enough',
    no: 'Too little',
    picture: 'Ridges of a {notch} trowel at {angle}°, {height} high.',
    over: 'Spread flat, the ridges come to that much',
    under: 'Spread flat, the ridges come to less than that',
    deep: 'The notch is cut deeper than the bed has to be thick',
    shallow: 'The notch is not cut as deep as the bed has to be thick',
    square: 'It leaves what a square notch of the same width leaves: that much',
    'square-less': 'It leaves what a square notch of the same width leaves: less',
    high: 'The ridges stand higher than the bed has to be thick',
    low: 'The ridges don’t stand as high as the bed has to be thick',
    why: 'Ridge, gap and angle together leave {bed}. The least bed is {least}.',
    'picture-why': 'The same ridges with the flat bed they come to, {bed}.',
  },
  'reading-a-notch/worn-teeth': {
    story: 'Your {notch} trowel has done many floors. Its teeth are down to {left}.',
    ask: 'How much less mortar does it leave than on the day you bought it?',
    picture: 'The worn blade: {wear} has gone off the teeth.',
    why: '{wear} of {depth} is gone, and the ridge with it: {lost} less. The plan and the bags were figured for the full notch.',
  },
};
