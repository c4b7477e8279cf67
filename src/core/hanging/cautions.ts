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
    words: 'Not above a bed, a sofa or a seat.',
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
    words: 'Earthquakes, 20 to 50 lb (9.1 to 22.7 kg): a closed hook screwed into a stud, all four corners held.',
    source: ECA,
  },
  {
    topic: 'earthquake-light',
    when: both(quake, not(over(QUAKE_HEAVY))),
    words: 'Earthquakes, under 20 lb (9.1 kg; weigh it): a closed hook, and removable putty at all four corners.',
    source: ECA,
  },
  {
    topic: 'earthquake',
    when: quake,
    words:
      'Eye-hooks through the wall covering into studs, 1 to 2 in (25 to 50 mm) long at least, two for a large picture. Never over beds or sofas.',
    source: FEMA,
  },
  {
    topic: 'children',
    when: among('children'),
    words:
      'Children: hang it out of their reach, or on closed hooks and security fittings, with acrylic in place of glass; no edge at the height of their heads.',
  },
  {
    topic: 'heat',
    when: among('above heat'),
    words: 'Not above a radiator, stove or fireplace: heat and soot spoil picture, mat and glue.',
    source: 'Smithsonian Museum Conservation Institute, as quoted',
  },
  {
    topic: 'glass',
    when: ({ glazing }) => glazing?.material === 'glass',
    words:
      'Glass: carry it upright; eye protection and gloves that grip where it may fly. After an earthquake mind your feet: broken frame glass cuts many.',
    source: 'hazardsincollections.org.uk (general); Earthquake Country Alliance',
  },
  {
    topic: 'lifting',
    when: always,
    words:
      'One frame at a time, both hands at its sides, the picture towards you, never by the top or the wire. Clear the way, never hurry; two people for what is large or heavy.',
    source: `${ORANGE}; ${RECOLLECTIONS}`,
  },
  {
    topic: 'cables',
    when: always,
    words:
      'Before you nail or drill, look for cables and pipes with a detector; they run up, down and across from sockets, switches, taps and lamps. Not sure: current off, or ask an electrician.',
  },
  {
    topic: 'studs',
    when: among('stud wall'),
    words: 'Stud wall: fix to the studs; between them only what is light, with anchors made for it.',
    source: `${ORANGE}; ${FEMA}`,
  },
  {
    topic: 'plaster',
    when: among('plaster'),
    words:
      'Old plaster breaks, and hides laths and wires: tape the place, drill rather than hammer, fix to what lies behind. Old paint may hold lead and old boards asbestos: have them tested first.',
  },
  {
    topic: 'masonry',
    when: among('masonry'),
    words:
      'Masonry: drill into brick or block, not the joint, with plugs that suit it, eye protection and a dust mask. A listed or rented wall needs leave.',
  },
  {
    topic: 'tools',
    when: always,
    words:
      'Eye protection to cut wire, nail and drill: ends fly. Cut away from hands and picture. A ladder that is held, not a chair.',
  },
  {
    topic: 'fittings',
    when: always,
    words:
      'D-rings, not screw eyes; multi-strand wire, not fishing line; a hook, never a bare nail. Screws into sound wood, not through it.',
    source: ORANGE,
  },
  {
    topic: 'ratings',
    when: always,
    words:
      'A maker’s rating counts only in a wall that it is rated for; check the fixings once a year. Local codes, the building’s owner and a licensed builder come before this sheet. What hangs over people, or is old, fragile or valuable: a professional or a conservator.',
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
