import { BOTH, FROM_MEMORY, ISO_EN, NORTH_AMERICA, PRACTICE, inch, measure, published, ruleTable } from '../rule.ts';

const niosh = published('NIOSH 94-110');

/** Where the work can hurt. Each defers to product instructions, local codes and licensed trades. */
export const safetyRules = ruleTable({
  'safety.silica': {
    title: 'Silica dust',
    says: 'Breathed silica stays under {limit} over a day, and measures begin at {action}; keep dust down with water or a vacuum, as the rules where you work require.',
    values: { limit: measure(50, 'µg/m³'), action: measure(25, 'µg/m³') },
    source: published('OSHA 29 CFR 1926.1153'),
    standards: BOTH,
  },
  'safety.mixing-dust': {
    title: 'Dust when mixing',
    says: 'Powder goes into water, poured low and mixed slowly, with a vacuum shroud or a respirator; sweep wet.',
    values: {},
    source: PRACTICE,
    standards: BOTH,
  },
  'safety.cement': {
    title: 'Wet cement',
    says: 'Wet mortar is caustic and burns may not hurt at first: gloves and safety glasses, no rings, wash at once with clean water, change wet clothes, and follow the product’s safety sheet.',
    values: {},
    source: published('OSHA guidance on cement and skin', undefined, 'the glasses from memory'),
    standards: BOTH,
  },
  'safety.chromium': {
    title: 'Chromium in cement',
    says: 'Soluble chromium VI stays under {limit} of dry cement; the reducer has a shelf life, so mind the bag’s date.',
    values: { limit: measure(2, 'ppm') },
    source: published('CLP Regulation', 'annex II, 2.3'),
    standards: ISO_EN,
  },
  'safety.epoxy': {
    title: 'Epoxy',
    says: 'Epoxy that has not set can make the skin allergic for good: the gloves its safety sheet names, safety glasses, fresh air, and none of it on the skin.',
    values: {},
    source: FROM_MEMORY,
    standards: BOTH,
  },
  'safety.lifting': {
    title: 'Lifting',
    says: 'Even in the best place a lift is at most {load}, and less from the floor, far from the body or turned.',
    values: {
      load: measure(23.13, 'kg'),
      reach: inch(10),
      bestHeight: inch(30),
      heightFactor: measure(0.0075, 'times'),
      travelBase: measure(0.82, 'times'),
      travelFactor: measure(1.8, 'times'),
      turnFactor: measure(0.0032, 'times'),
    },
    source: niosh,
    disagreement: 'The factor for turning is from memory.',
    standards: BOTH,
  },
  'safety.saw': {
    title: 'Saw',
    says: 'The wet saw has its guard and a protected circuit; dry hands, eye and ear protection, no loose sleeves; follow its maker’s instructions.',
    values: {},
    source: FROM_MEMORY,
    standards: BOTH,
  },
  'safety.heat': {
    title: 'Electrical heat under tile',
    says: 'Heating cable under a floor is on a protected circuit and connected by a licensed electrician, as the local code requires.',
    values: {},
    source: published('NEC', '424.44(G) and 424.45(E)', '2017 on'),
    standards: BOTH,
  },
  'safety.knees': {
    title: 'Knees',
    says: 'Setters kneel half the day and have more knee trouble for it: pads, breaks, and work at bench height where it can be.',
    values: {},
    source: published('NIOSH HETA 98-0308-2785'),
    standards: BOTH,
  },
  'safety.panels': {
    title: 'Heavy panels',
    says: 'Panels are moved on a frame by two or three people along a planned way.',
    values: {},
    source: published('Trade article on handling panels'),
    standards: BOTH,
  },
  'safety.saw-table': {
    title: 'Cutting with water',
    says: 'A stationary saw with its own water supply needs no respirator by the table for construction; a hand-held saw indoors needs one of protection factor {factor}.',
    values: { factor: measure(10, 'count') },
    source: published('OSHA 29 CFR 1926.1153', 'table 1'),
    standards: NORTH_AMERICA,
  },
});
