/** Head of a cut card: the layer drawn small beside what all of its cuts have in common. */
import type { CutCard } from '../../core/cutting/cut-card';
import type { CutPlan, LayerPlan, View } from '../../core/cutting/plan';
import { bevelWords } from '../../core/layout/bevel-words';
import { lengthText, showSetting, sizeText, type Showing } from '../../core/units';
import type { OutputContext } from '../context';
import { drawBlocks, type Block } from '../paper/flow';
import { paragraphBlock, type Setting } from '../paper/text-blocks';
import { viewLayer } from '../template/view-geometry';
import { boardWords } from './card-words';
import { drawCard, NAMES } from './card-drawing';

const HEIGHT = 70;
const GAP = 6;
const LABEL = 21;
/** Overcuts nearer than this are one, mm. */
const SAME = 1e-6;
const FACT = { size: 8.5 } as const;
/** Of a drawing as wide as the page, mm: the cuts begin on the same page. */
const MOST_HEIGHT = 130;
/** With more windows than this the drawing has the whole width, so that its numbers can be read. */
const CROWDED = 16;

/** @param card the cuts that are drawn and numbered. */
export function headBlocks(context: OutputContext, layer: LayerPlan, card: CutCard, setting: Setting): Block[] {
  const { typesetter, width } = setting;
  const crowded = layer.windows.length > CROWDED;
  const drawing = crowded ? width : (width - GAP) / 2;
  const told = { typesetter, width: crowded ? width : width - drawing - GAP };
  const lines = facts(context, layer, isOnFace(card)).map(([label, words]) => factBlock(label, words, told));
  const factsHeight = lines.reduce((sum, { height }) => sum + height, 2);
  const { width: across, height: up } = layer.blank;
  const drawingHeight = crowded
    ? Math.min(MOST_HEIGHT, (width * up) / across + 2 * NAMES)
    : Math.max(HEIGHT, factsHeight);
  const seen = viewLayer(layer, context.options.view);
  const picture: Block = {
    height: drawingHeight,
    draw: (surface, { x, y }) =>
      drawCard(
        surface,
        { left: x, right: x + drawing, top: y - 1, bottom: y - drawingHeight + 1 },
        seen,
        card,
        context.plan.waste,
      ),
  };
  if (crowded) return [...lines, picture];
  const beside: Block = {
    height: drawingHeight,
    draw: (surface, corner) => {
      picture.draw(surface, corner);
      drawBlocks(surface, lines, { x: corner.x + drawing + GAP, y: corner.y - 2 });
    },
  };
  return [beside];
}

/** True of a card of grooves and ruled lines. */
function isOnFace({ runs, byMarks }: CutCard): boolean {
  return (runs[0]?.cuts[0] ?? byMarks[0])?.made !== undefined;
}

function factBlock(label: string, words: string, { typesetter, width }: Setting): Block {
  const inner = paragraphBlock(words, { typesetter, width: width - LABEL }, FACT, 1);
  return {
    height: inner.height,
    draw: (surface, corner) => {
      surface.paragraph(label, corner, LABEL, { ...FACT, weight: 'bold' });
      inner.draw(surface, { ...corner, x: corner.x + LABEL });
    },
  };
}

function facts(
  { plan, showing, options }: OutputContext,
  layer: LayerPlan,
  onFace: boolean,
): (readonly [string, string])[] {
  const { blank, board, thickness, bevel, trim, number } = layer;
  const name = board === '' ? '' : `${board}, `;
  const trimmed = { width: blank.width - 2 * trim, height: blank.height - 2 * trim };
  const one = plan.layers.length === 1;
  return [
    ['Board', `layer ${number}${number === 1 && !one ? ' (top)' : ''}: ${name}${lengthText(thickness, showing)} thick`],
    ['Size', sizeText(trimmed, showing).replace(' x ', ' × ')],
    ...(onFace ? [] : [['Bevel', bevelWords(bevel)] as const]),
    ...cutterFacts(plan, showing),
    ...(onFace
      ? []
      : ([
          ['Blade', bladeWords(plan, layer, options.view)],
          ['Overcut', overcutWords(layer, options.view, showing)],
        ] as const)),
    ...(one || onFace ? [] : [['Way', wayWords(plan, layer)] as const]),
    ['Left, right', `as seen from the ${options.view}, as in the drawing; so are top and bottom`],
  ];
}

function cutterFacts({ cutter }: CutPlan, showing: Showing): (readonly [string, string])[] {
  if (!cutter) return [['Cutter', 'none said: the scale is taken to read true, and the guide to reach']];
  const { name, reach, scaleOffset = 0 } = cutter;
  const by = showSetting(Math.abs(scaleOffset), showing).withUnit;
  return [
    ['Cutter', name],
    ...(reach === undefined ? [] : [['Guide', `reaches ${lengthText(reach, showing)}`] as const]),
    [
      'Scale',
      scaleOffset === 0 ? 'reads true' : `reads ${by} ${scaleOffset > 0 ? 'more' : 'less'} than the guide is set to`,
    ],
  ];
}

function bladeWords({ waste }: CutPlan, { windows, bevel }: LayerPlan, view: View): string {
  const line = windows[0]?.cuts[view][0];
  const lean =
    !line || line.bevelSide === 'none'
      ? 'the blade stands upright'
      : `the blade goes in at ${bevel.angleDegrees}° and slants to the ${line.bevelSide}, towards the ${line.slopesTo}`;
  return `waste on the ${waste} of the travel; ${lean}`;
}

/** What the cuts of this view have, as their rows tell it. */
function overcutWords({ overcut, bevel, windows }: LayerPlan, view: View, showing: Showing): string {
  const overcuts = windows.flatMap(({ cuts }) => cuts[view].flatMap((cut) => [cut.overcutStart, cut.overcutEnd]));
  if (overcuts.every((mm) => mm === 0)) {
    return bevel.run === 0
      ? 'none: cuts that go straight down meet at the line itself'
      : `none from the ${view}: from this side the bevels meet at the corners by themselves`;
  }
  const { length, from } = overcut;
  // Where no square corner has it, such as on a curve that runs over its own start, each row says its own.
  if (!overcuts.some((mm) => Math.abs(mm - length) < SAME))
    return 'as each row says; try it on a scrap of the same board';
  const whose =
    from === 'job'
      ? 'as the job says'
      : from === 'cutter'
        ? 'as the cutter has it for this board'
        : 'reckoned from the board and its bevel';
  const where = overcuts.includes(0) ? 'at square corners whose rows have it' : 'at square corners';
  return `${showSetting(length, showing).withUnit} ${where}, ${whose}; try it on a scrap of the same board`;
}

function wayWords({ way }: CutPlan, { number, guideOn }: LayerPlan): string {
  if (way === 'apart') return 'each layer by itself';
  return number === 1
    ? 'first; the layers below are fixed behind it and cut from its edges'
    : `fixed behind, and cut from the edges of ${boardWords(guideOn)}`;
}
