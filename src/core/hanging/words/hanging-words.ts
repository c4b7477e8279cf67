/** Everything of how a frame hangs in words, part after part. */
import { showingOf } from '../../units';
import type { Hung } from '../hang';
import { unitOf, type HangingAsk } from '../hanging-ask';
import { hangerSection, placesSection, wireSection } from './frame-words';
import { carriedSection, leanSection, loadSection, swaySection } from './load-words';
import { wordsFor, type Section } from './section';
import { frameTable, guidanceSection, hookTable, wallSection, type HookTable } from './wall-words';

export interface HangingWords {
  /** The frame: hanger, places, wire, loads. */
  readonly frame: readonly Section[];
  readonly wall: Section;
  readonly frames: HookTable;
  readonly hooks: HookTable;
  readonly guidance: Section;
  /** Sentences, each with its source; what they are about tells them apart. */
  readonly cautions: readonly { readonly topic: string; readonly words: string }[];
}

export function hangingWords(ask: HangingAsk, { hanging, wall }: Hung): HangingWords {
  const words = wordsFor(ask, hanging.weight);
  const { knots, outOfLevel } = ask.job.hanging;
  const sections = [
    hangerSection(hanging, words),
    placesSection(ask, hanging, words),
    ...(hanging.wire ? [wireSection(knots, hanging.wire, words)] : []),
    loadSection(hanging, words),
    swaySection(hanging, outOfLevel, words),
    leanSection(hanging, ask.job.frame.mouldingDepth, words),
    carriedSection(hanging, words),
  ];
  return {
    frame: sections.filter(({ rows }) => rows.length > 0),
    wall: wallSection(wall, words, showingOf(ask.job, unitOf(ask))),
    frames: frameTable(wall, words),
    hooks: hookTable(wall, words),
    guidance: guidanceSection(),
    cautions: hanging.cautions.map(({ topic, words: said, source }) => ({
      topic,
      words: source === undefined ? said : `${said} (${source}.)`,
    })),
  };
}
