/** The gaps between neighbouring windows, those of one width together. */
import { gapOrigin } from '../../core/layout/gaps';
import type { Gap, Layout } from '../../core/layout/layout';
import { columns } from '../print/text';
import type { Section } from './section';
import type { Words } from './words';

export function gapsSection({ gaps, windows }: Layout, { length, width }: Words): Section {
  const alike = new Map<string, { gap: Gap; between: string[] }>();
  for (const gap of gaps) {
    const key = [gap.axis, gapOrigin(gap), length(gap.gap), length(gap.bridge), length(gap.faceBridge)].join('|');
    const between = gap.between.map((index) => windows[index]?.name).join('–');
    const group = alike.get(key);
    if (group) group.between.push(between);
    else alike.set(key, { gap, between: [between] });
  }
  const rows = [...alike.values()].map(({ gap, between }) => [
    length(gap.gap),
    length(gap.bridge),
    length(gap.faceBridge),
    gap.axis === 'across' ? 'across' : 'up',
    between.join(', '),
    gapOrigin(gap),
  ]);
  const heads = ['gap', 'bridge', 'on the face', 'runs', 'between windows', 'how'];
  return {
    heading: 'Gaps, and the board they leave in the top layer',
    lines: rows.length === 0 ? [] : columns([heads, ...rows], { indent: 2, width }),
  };
}
