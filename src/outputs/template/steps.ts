/** What the overview tells the person at the bench: the steps, and the cautions. */
import type { ViewName } from '../../bridge';
import { BLADE_CAUTION, GLASS_CAUTION } from '../../core/sheets/sheet-cautions';

export interface StepSetting {
  readonly view: ViewName;
  readonly tiled: boolean;
  readonly layers: number;
  readonly waste: 'right' | 'left';
  /** True when there are grooves or ruled lines on the face. */
  readonly lines: boolean;
  /** True when some cut runs past its corners. */
  readonly overcut: boolean;
  /** Towards which side of its travel the blade leans into the board; undefined when layers differ. */
  readonly bevelSide?: 'left' | 'right' | 'none';
}

export function steps(setting: StepSetting): readonly string[] {
  const face = setting.view === 'back' ? 'BACK' : 'FRONT';
  const lean = leaning(setting.bevelSide);
  return [
    'Print at 100\u00a0% ("actual size"), never "fit to page". Print this page first.',
    'Measure the check bars, across and up. If one reads wrong, the right percentage is 100 × true ÷ measured: 93.75 mm for 100 mm asks for 106.67\u00a0%. Print again.',
    ...(setting.tiled ? joining(setting.layers) : []),
    setting.view === 'back'
      ? 'Lay the board face down and fasten the template on its BACK, edge on edge, with tape that lifts off. The drawing is a mirror image; its words are not.'
      : 'Lay the board face up and fasten the template on its FRONT, edge on edge, with tape that lifts off. For cutting from the back print the back view.',
    ...(setting.lines ? [onTheFace(setting.view)] : []),
    'Prick each corner through the middle of its ring into the board, take the paper off, and join the pricks in pencil. Check with a square and measure the borders.',
    `Cut on the ${face} from corner to corner, along the arrow, with the waste on the ${setting.waste}. ${lean} ${setting.overcut ? 'The dashed ends past a corner are the overcut that lets the bevels meet.' : 'Start and stop at the corners.'}`,
    `Cut on scrap of the same board first: it sets ${setting.overcut ? 'depth and overcut' : 'the depth'}.`,
  ];
}

function leaning(side: StepSetting['bevelSide']): string {
  if (side === undefined) return 'Which way the blade slants is written for each cut in the cutting list.';
  if (side === 'none') return 'The blade stands upright.';
  return `Seen along the cut, the blade goes into the board slanting to the ${side}.`;
}

function onTheFace(view: ViewName): string {
  return view === 'back'
    ? 'Grey dots show where grooves and ruled lines lie on the other side. They are made on the FACE before the windows are cut: by the front view of this template, and by the list.'
    : 'Grooves (two thin lines, a dashed one between) and ruled lines (long dashes) are made on this side before the windows are cut: ruled lines first, then grooves to the depth in the list.';
}

function joining(layers: number): readonly string[] {
  const each = layers > 1 ? 'Keep the layers apart. ' : '';
  return [
    `${each}Trim the right and upper neighbour on its join line, lay it over the other page so that rings, letters and lines meet, and tape. Start at the lower left.`,
    'Every scale counts from the origin, the lower left corner of the blank: check with a long rule that errors do not add up.',
  ];
}

export const CAUTIONS: readonly string[] = [
  BLADE_CAUTION,
  'Pictures: keep blades, pencils and tape away from the picture; fit it when the mat is done. Whatever is old, valuable, flaking, or on loan is for a conservator to judge before it is matted.',
  GLASS_CAUTION,
  'On the wall: weigh the framed picture, take fixings rated for far more that suit the wall, and follow local codes; ask a trained person for what is heavy or hangs over people.',
];
