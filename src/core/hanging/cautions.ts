/** Cautions of hanging: what to mind, when it has to be said, and where it comes from. */
import type { Hanging, Surrounding } from '../job/hanging';
import type { Package } from '../job/package';
import { HEAVY, QUAKE_HEAVY } from './limits';
import type { HangingWeight } from './weight';

export interface Caution {
  /** Stable kebab-case name. */
  readonly topic: string;
  /** Sentences. */
  readonly words: string;
  /** Published guidance it follows; undefined: common practice. */
  readonly source?: string;
}

/** What decides which cautions are said. */
export interface CautionAsk {
  readonly hanging: Hanging;
  readonly glazing: Package['glazing'];
  readonly weight: HangingWeight;
}

interface Rule extends Caution {
  readonly when: (ask: CautionAsk) => boolean;
}

const ECA = 'Earthquake Country Alliance, hanging objects';
const FEMA = 'FEMA, Mount Framed Pictures and Mirrors Securely, 2008';
const ORANGE = 'Orange County NC, art care guideline';
const RECOLLECTIONS = 'reCollections, Heritage Collections Council, Australia';

const always = () => true;
const among =
  (...names: readonly Surrounding[]) =>
  ({ hanging: { surroundings } }: CautionAsk) =>
    names.some((name) => surroundings.includes(name));
const over =
  (kg: number) =>
  ({ weight }: CautionAsk) =>
    (weight.kg?.greatest ?? 0) > kg;
const both =
  (...rules: readonly Rule['when'][]) =>
  (ask: CautionAsk) =>
    rules.every((rule) => rule(ask));
const not = (rule: Rule['when']) => (ask: CautionAsk) => !rule(ask);
const quake = among('earthquake country');

/** What may hurt someone first; what holds for every picture last. */
const RULES: readonly Rule[] = [
  {
    topic: 'over-bed',
    when: among('above a bed or seat'),
    words: 'Not above a bed, a sofa or a seat: hang it elsewhere.',
    source: FEMA,
  },
  {
    topic: 'professional',
    when: over(HEAVY),
    words: 'Over 50 lb (22.7 kg): have a professional hang it, in the studs or in masonry.',
    source: ECA,
  },
  {
    topic: 'earthquake-heavy',
    when: both(quake, over(QUAKE_HEAVY), not(over(HEAVY))),
    words:
      'Where the earth quakes, from 20 to 50 lb (9.1 to 22.7 kg): a closed hook screwed into a stud, and all four corners held to the wall.',
    source: ECA,
  },
  {
    topic: 'earthquake-light',
    when: both(quake, not(over(QUAKE_HEAVY))),
    words:
      'Where the earth quakes, under 20 lb (9.1 kg): a closed hook in place of an open one, and removable putty at all four corners. Weigh it first.',
    source: ECA,
  },
  {
    topic: 'earthquake',
    when: quake,
    words:
      'Eye-hooks go through the wall covering into studs, 1 to 2 in (25 to 50 mm) long at least, two of them for a large picture. Never over beds or sofas.',
    source: FEMA,
  },
  {
    topic: 'children',
    when: among('children'),
    words:
      'Where children are: out of their reach, or closed hooks and security fittings, acrylic in place of glass, and no edge at the height of a child’s head.',
  },
  {
    topic: 'heat',
    when: among('above heat'),
    words: 'Not above a radiator, a stove or a fireplace: heat and soot spoil picture, mat and glue.',
    source: 'Smithsonian Museum Conservation Institute, as quoted',
  },
  {
    topic: 'glass',
    when: ({ glazing }) => glazing?.material === 'glass',
    words:
      'Glass: eye protection and gloves that grip where it may fly; carry it upright. Cut feet from broken frame glass are among the commonest injuries of an earthquake.',
    source: 'hazardsincollections.org.uk (general); Earthquake Country Alliance',
  },
  {
    topic: 'lifting',
    when: always,
    words:
      'One frame at a time, both hands at its sides, never by the top or the wire, the picture towards you. Plan the way and clear it, never hurry, and have a second person for all that is large or heavy.',
    source: `${ORANGE}; ${RECOLLECTIONS}`,
  },
  {
    topic: 'cables',
    when: always,
    words:
      'Before you nail or drill, look for cables and pipes with a detector. They run straight up, down and across from sockets, switches, taps and lamps. Where you are not sure, have the current switched off or ask an electrician.',
  },
  {
    topic: 'studs',
    when: among('stud wall'),
    words: 'A stud wall: find the studs and fix to them; between studs only what is light, with anchors made for it.',
    source: `${ORANGE}; ${FEMA}`,
  },
  {
    topic: 'plaster',
    when: among('plaster'),
    words:
      'Old plaster breaks and hides laths and wires: drill rather than hammer, with tape over the place, and fix to what lies behind it. Dust of old paint may hold lead and old boards asbestos: have them tested first.',
  },
  {
    topic: 'masonry',
    when: among('masonry'),
    words:
      'Masonry: drill into brick or block rather than the joint, with plugs that suit it; wear eye protection and a dust mask. A listed or rented wall needs leave.',
  },
  {
    topic: 'tools',
    when: always,
    words:
      'Eye protection when wire is cut, nails are driven and holes drilled: ends fly. Blades and wire cutters away from hands and picture. Stand on a ladder that is held, not on a chair.',
  },
  {
    topic: 'fittings',
    when: always,
    words:
      'D-rings rather than screw eyes; multi-strand wire and no fishing line; a hook, never a bare nail. Screws go into sound wood and not through it.',
    source: ORANGE,
  },
  {
    topic: 'ratings',
    when: always,
    words:
      'The maker’s rated load counts, and only in a wall that it is rated for: look after the fixings once a year. Local codes, the owner of the building and a licensed builder come before this sheet. What hangs over people, or is old, fragile or valuable, is for a professional or a conservator.',
  },
];

/** Those that have to be said, the most pressing first. */
export function cautionsFor(ask: CautionAsk): Caution[] {
  return RULES.filter(({ when }) => when(ask)).map(({ topic, words, source }) => ({
    topic,
    words,
    ...(source === undefined ? {} : { source }),
  }));
}
