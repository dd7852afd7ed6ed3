import { BOTH, ISO_EN, NORTH_AMERICA, PRACTICE, inch, measure, published, ruleTable } from '../rule.ts';

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
    source: published('OSHA guidance on cement and skin; HSE sheet CIS26 and OSHA 29 CFR 1926.102 for the eyes'),
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
    source: published(
      'HSE report RR79, sheet G403 and page on dermatitis in construction; NIOSH 76-152 for eyes and air',
    ),
    standards: BOTH,
  },
  'safety.eyes': {
    title: 'Eyes',
    says: 'Eye protection is worn where chips fly or something caustic can splash, with side shields where things fly.',
    values: {},
    source: published('OSHA 29 CFR 1926.102', '(a)(1) and (a)(2)'),
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
    standards: BOTH,
  },
  'safety.saw': {
    title: 'Saw',
    says: 'The wet saw has its guard, a protected circuit, and water on the blade all the while; dry hands, eye and ear protection, no loose sleeves; follow its maker’s instructions.',
    values: {},
    source: published(
      'OSHA 29 CFR 1926',
      'guard 702(i), circuit 404(b)(1), water and instructions 1153 table 1, eyes 102(a), ears 52',
    ),
    disagreement:
      'Rules for other trades ask for dry hands at the plug (OSHA 29 CFR 1910.334) and no loose sleeves near moving parts (Oregon OAR 437-004-1030).',
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
  'safety.asbestos': {
    title: 'Asbestos in old floors',
    says: 'Resilient floor covering and its glue in a building of 1980 or older are taken to hold asbestos until a test shows otherwise.',
    values: {},
    source: published('OSHA 29 CFR 1926.1101', '(g)(8)(i)'),
    standards: NORTH_AMERICA,
  },
});
