/** The layers of the mat from the top down: board, bevel, reveal, strip shown. */
import { bevelWords } from '../../core/layout/bevel-words';
import type { Layout, LayoutLayer } from '../../core/layout/layout';
import { columns } from '../print/text';
import type { Section } from './section';
import { givenRows, rowsText, sideRows, type Row, type Words } from './words';

export function layersSection({ layers, derivations }: Layout, words: Words): Section {
  const lines = layers.flatMap((layer, index) => {
    const bevel = derivations.find(({ name }) => name === `layers[${index}].bevel.run`);
    const rows: Row[] = [
      ...(bevel ? [['Bevel run', words.length(bevel.value), bevel.how] as const] : []),
      ...(index === 0 ? [] : givenRows('Reveal', layer.reveal, 'from its opening to the opening above', words)),
      ...sideRows('Strip shown', derivations, `layers[${index}].shownStrip`, words),
    ];
    const head = [String(layer.number), about(layer, words)];
    return [...columns([head], { indent: 2, width: words.width }), ...rowsText(rows, 5, words)];
  });
  return { heading: 'Layers, from the top', lines };
}

function about({ board, colour, thickness, bevel }: LayoutLayer, { length }: Words): string {
  return `“${board}” ${colour}, ${length(thickness)} thick, ${bevelWords(bevel)}`;
}
