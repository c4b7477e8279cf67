/** What has to be said before any grade: whose hands a picture belongs in. */
import type { Concern, PictureKind } from '../job/job';
import { SOURCES, type Source } from './sources';
import { listed } from '../phrases';
import { nameOf, type Subject } from './subject';

export interface Caution {
  readonly words: string;
  readonly sources: readonly Source[];
}

/** No grade is a certificate: said with every one. */
export const NO_CERTIFICATE =
  'This compares what the job says with published guidance; it certifies nothing. What the job does not say, and how the work is done, it can’t know; makers’ statements are taken as they are given. No grade takes the place of a conservator.';

const BY_KIND: Readonly<Partial<Record<PictureKind, Caution>>> = {
  'pastel or charcoal': {
    words: 'pastel and charcoal smear at a touch and shake off: have a conservator mount them',
    sources: [SOURCES.lcHinges, SOURCES.practice],
  },
  document: {
    words: 'if it is parchment, or sealed, or its ink has eaten into it, it goes to a conservator',
    sources: [SOURCES.ccaha],
  },
  textile: {
    words:
      'cloth that sheds, is stained, torn or glued down, or whose colours run, goes to a textile conservator before it is framed',
    sources: [SOURCES.cciTextiles],
  },
};

/** Empty where the job says nothing that asks for a conservator. */
export function cautionsFor({ job, held }: Subject): Caution[] {
  const shown = [...new Set(held.map(({ placed }) => placed.index))].sort((a, b) => a - b);
  const concerned = grouped(shown, (index) => [...(job.pictures[index]?.concerns ?? [])].sort().join(', '));
  const kinds = grouped(shown, (index) => job.pictures[index]?.kind ?? '');
  const named = (indices: readonly number[]) =>
    listed(
      indices.map((index) => titleOf(job.pictures, index)),
      MOST_NAMED,
    );
  return [
    ...[...concerned].map(([concerns, indices]) => concernCaution(concerns, named(indices), indices.length > 1)),
    ...[...kinds].flatMap(([kind, indices]): Caution[] => {
      const caution = BY_KIND[kind as PictureKind];
      return caution ? [{ ...caution, words: `${start(named(indices))}: ${caution.words}.` }] : [];
    }),
  ];
}

function concernCaution(concerns: string, names: string, several: boolean): Caution {
  const words = listed(concerns.split(', ') as Concern[]);
  return {
    words: `${start(names)} ${several ? 'are' : 'is'} said to be ${words}: ask a conservator before anything is done.`,
    sources: [SOURCES.lcGuide, SOURCES.ccaha, SOURCES.cciFraming],
  };
}

/** Indices by what is said of them; nothing is no group. */
function grouped(indices: readonly number[], of: (index: number) => string): Map<string, number[]> {
  const groups = new Map<string, number[]>();
  for (const index of indices) {
    const key = of(index);
    if (key !== '') groups.set(key, [...(groups.get(key) ?? []), index]);
  }
  return groups;
}

function titleOf(pictures: Subject['job']['pictures'], index: number): string {
  const picture = pictures[index];
  return picture ? nameOf(picture, index) : `picture ${index + 1}`;
}

/** More than these are counted. */
const MOST_NAMED = 5;

function start(names: string): string {
  return names.charAt(0).toUpperCase() + names.slice(1);
}
