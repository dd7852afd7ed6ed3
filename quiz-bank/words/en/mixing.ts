import type { Words } from '../../engine/say.ts';

export const mixing: Record<string, Words> = {
  'mixing/part-bag-water': {
    story:
      'The bag says: {bag} of powder, {water} of water. You need only a small batch and weigh out {part} of powder.',
    ask: 'How much water goes in the bucket?',
    why: '{part} of {bag} is {share} of the bag, so it takes {share} of the water: {water}. Measure it; a guess makes every batch another mortar.',
  },
  'mixing/stiff-batch': {
    'story-0': 'A batch was mixed {age} ago. The bag gives it {pot}. It has gone stiff in the bucket.',
    'story-1':
      'Back from another room you find your bucket stiff. It was mixed {age} ago, and the bag says {pot} from mixing.',
    'story-2': 'The mortar drags on the trowel now. It was mixed {age} ago; its pot life on the bag is {pot}.',
    ask: 'What do you do?',
    stir: 'Stir it up again as it is and go on',
    discard: 'Throw it away and mix fresh',
    water: 'Add a splash of water, a cup at the most, and stir',
    deeper: 'Go on with a deeper notch',
    'why-live':
      '{age} is well inside {pot}. It has only stood still; stirring brings it back. Water would make it weaker, and the ridges would slump.',
    'why-dead':
      'After {age} it is past its {pot} and has begun to set. Stirring or water breaks what has grown; nothing brings it back.',
  },
  'mixing/what-the-ridge-says': {
    ask: 'What do you do?',
    'sees-slumps-0': 'You comb a strip. Within a minute the ridges sag and run together.',
    'sees-slumps-1': 'The ridges won’t stay up: {minutes} min after combing the strip is nearly flat.',
    'sees-good-0':
      'The ridges stand sharp. A tile lifted after {minutes} min is wet nearly all over, and the finger comes away with mortar on it.',
    'sees-good-1':
      'Ridges stand, your finger comes away wet, and the tile you lift has mortar over nearly all of its back.',
    'sees-dry-0':
      'Straight from the bucket the ridges tear and crumble at the edges. A tile lifted at once carries mortar only in crumbs.',
    'sees-dry-1':
      'The mortar was just mixed. It drags, the ridges break up behind the teeth, and a lifted tile is hardly wetted.',
    'sees-skinned-0':
      'The ridges stand well and look damp, but you combed them a while ago and your finger comes away clean.',
    'sees-skinned-1':
      'You were called away. The ridges still look good. You touch one and no mortar sticks to the finger.',
    'do-slumps': 'Work more powder into it before you comb on',
    'do-good': 'Go on setting as you are',
    'do-dry': 'Mix a fresh batch with the measured water',
    'do-skinned': 'Scrape it off and comb it fresh',
    'do-water': 'Wet it with a splash of clean water, work that in and go on',
    'do-deeper': 'Go on with the next bigger notch',
    'why-slumps':
      'A mix that slumps has too much water for its powder: no ridge, no lane, no way out for the air. Powder brings it back while it is fresh.',
    'why-good': 'It stands and it wets: that is the mix you want.',
    'why-dry':
      'A mix that tears holds too little water for its powder. It is not the notch, and a splash on top is no mixing.',
    'why-skinned':
      'A clean finger is a skin. The mortar under it is wet, but the tile meets only the skin, and water on top makes a weak film.',
  },
  'mixing/enough-water': {
    story:
      'The sheet says {bagLow} to {bagHigh} of water for a {bag} bag. A helper has {part} of powder ready and has poured {poured} into the bucket.',
    ask: 'Right amount of water? And why?',
    yes: 'Right',
    no: 'Not right',
    inside: 'It lies between {low} and {high}',
    short: 'It is under {low}',
    over: 'It is over {high}',
    easier: 'Wetter is always easier to spread',
    why: 'For {part} of powder the sheet comes to {low} to {high}. {poured} was poured.',
  },
  'mixing/lift-the-bag': {
    story:
      'A load of {mass} is to be lifted from {place}, close to the body and without turning. The lifting equation starts from {limit} at knuckle height and leaves {factor} of that from the floor.',
    ask: 'One person alone? And why?',
    yes: 'One person',
    no: 'Two, or a smaller load',
    floor: 'the floor',
    bench: 'a bench at knuckle height',
    under: 'It is within {limit}, the most from {where}',
    over: 'It is over {limit}, the most from {where}',
    knees: 'A straight back and bent knees make up for the weight of it',
    why: 'From {place} the most is {limit}, and this is {mass}.',
    caution: 'That is the best case. Reach, turning and the number of bags lower it; follow the rules where you work.',
  },
};
