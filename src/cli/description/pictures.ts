/** The pictures: sheet, image, overlap; those of the same measures together. */
import type { Job, Picture } from '../../core/job/job';
import { showLength } from '../../core/units';
import { paragraph } from '../print/text';
import type { Section } from './section';
import { rowsText, type Row, type Words } from './words';

export function picturesSection({ pictures, layers }: Job, words: Words): Section {
  const alike = new Map<string, { names: string[]; lines: string[] }>();
  pictures.forEach((picture, index) => {
    const lines = rowsText(pictureRows(picture, layers.length === 0, words), 5, words);
    const key = lines.join('\n');
    const name = picture.title === '' ? String(index + 1) : `${index + 1} “${picture.title}”`;
    const group = alike.get(key);
    if (group) group.names.push(name);
    else alike.set(key, { names: [name], lines });
  });
  const lines = [...alike.values()].flatMap(({ names, lines }) => [
    ...paragraph(names.join(', '), 2, words.width),
    ...lines,
  ]);
  return { heading: 'Pictures', lines };
}

function pictureRows(picture: Picture, isBare: boolean, words: Words): Row[] {
  const { kind, sheet, image, margins, overlap, overlapFrom, thickness } = picture;
  const whole = image.width === sheet.width && image.height === sheet.height;
  const imageRow = (): Row => [
    'Image',
    words.size(image),
    whole ? 'fills the sheet' : `margins: ${words.sides(margins)}`,
  ];
  return [
    [
      isBare ? 'Size' : 'Sheet',
      words.size(sheet),
      [...(kind === 'other' ? [] : [kind]), `${thin(thickness, words)} thick`].join(', '),
    ],
    ...(whole && isBare ? [] : [imageRow()]),
    ['Mat', '', isBare ? 'none' : `${words.overlap(overlap)}, counted from the ${overlapFrom}`],
  ];
}

/** Paper is thinner than any step. */
function thin(mm: number, { showing, length }: Words): string {
  return showLength(mm, showing).rounded ? `${Number(mm.toPrecision(3))} mm` : length(mm);
}
