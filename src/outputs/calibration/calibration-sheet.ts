/** The calibration sheet: how to cut and measure a trial square, with room to write in what was measured. */
import type { PaperName, UnitName } from '../../bridge';
import type { Box } from '../../core/geometry/box';
import { MM_PER_INCH, lengthText, type Showing } from '../../core/units';
import type { Fonts } from '../context';
import { drawDocument, openTypesetter } from '../paper/document';
import { drawBlocks, flow, type Block } from '../paper/flow';
import { listPaper } from '../paper/page';
import { headingBlock, numberedBlocks, paragraphBlock, type Setting } from '../paper/text-blocks';
import { drawPlainFrame, plainBody } from '../template/sheet-frame';
import { CAUTIONS } from '../template/steps';
import { blanksBlock } from './blanks';
import { drawCorner, drawTrialSquare } from './trial-drawing';

export interface SheetChoices {
  readonly paper: PaperName;
  readonly units: UnitName;
  /** Printed at the head, where it is known. */
  readonly cutter?: string | undefined;
}

/** Side of the scrap and what the scale is set to: rest for a hand at the middle, borders that any rule measures. */
const TRIAL = {
  in: { scrap: 6 * MM_PER_INCH, scale: 2 * MM_PER_INCH },
  metric: { scrap: 150, scale: 50 },
} as const;
const DRAWING = 74;

export async function makeCalibrationSheet(choices: SheetChoices, fonts: Fonts): Promise<Uint8Array> {
  const paper = listPaper(choices.paper, choices.units);
  const body = plainBody(paper);
  const setting = { typesetter: openTypesetter(fonts), width: body.right - body.left };
  const pages = flow(sheetBlocks(choices, setting), body.top - body.bottom).map((blocks) => ({
    size: paper,
    step: 'Drawing the calibration sheet',
    draw: (surface: Parameters<Block['draw']>[0], { number, count }: { number: number; count: number }) => {
      drawPlainFrame(surface, {
        title: choices.cutter === undefined ? 'Trial square for a cutter' : `Trial square for ${choices.cutter}`,
        under: 'What its scale is off by, and how far its cuts must run past a corner',
        page: count === 1 ? 'Calibration' : `Page ${number} of ${count}`,
        place: 'drawings not to scale',
      });
      drawBlocks(surface, blocks, { x: body.left, y: body.top });
    },
  }));
  return (await drawDocument(pages, 'Calibration of a cutter', fonts, {})).bytes;
}

function sheetBlocks({ units }: SheetChoices, setting: Setting): Block[] {
  const { scrap, scale } = TRIAL[units === 'in' ? 'in' : 'metric'];
  const showing: Showing = { unit: units, inchStep: 64, metricStep: 0.1 };
  const text = (mm: number) => lengthText(mm, showing);
  const square = scrap - 2 * scale;
  const step = units === 'in' ? '1/64 in' : 'a fifth of a millimetre';
  return [
    headingBlock('Cut'),
    ...numberedBlocks(
      [
        `Take a scrap of the board you mean to cut, ${text(scrap)} by ${text(scrap)}, and see that it is square. Fit a sharp blade, and set its depth on another scrap.`,
        `Set the guide so that the scale reads ${text(scale)}. Leave it there for all four cuts: they leave a square of about ${text(square)}.`,
        'Mark the four cuts on the back. Cut each from corner to corner, and run past both corners by the overcut you use now, or by none; the same each time.',
      ],
      setting,
    ),
    headingBlock('Measure'),
    ...numberedBlocks(
      [
        `On the side that faced you, from each edge of the scrap to the cut, square to the edge, to ${step}.`,
        'On the face, at each corner: how far the cuts run over it. Write + where they do, − where they stop short and the corner hangs on, 0 where it is closed and clean. Where the two cuts of a corner differ, write their mean. The numbers of the corners only tell them apart.',
      ],
      setting,
    ),
    drawingsBlock(setting.width),
    blanksBlock(setting.width, units),
    headingBlock('What comes of it'),
    paragraphBlock(
      'Scale offset = what the scale read − the mean of the four borders. Overcut = the overcut used − the mean of the corners. Type what you measured into the calibration of the cutter, which reckons both and puts them in its measures; or give it to “matwright calibrate”. Do the same for each thickness of board that you cut.',
      setting,
    ),
    headingBlock('Take care', 9),
    paragraphBlock(CAUTIONS[0] ?? '', setting, { size: 8 }),
  ];
}

function drawingsBlock(width: number): Block {
  return {
    height: DRAWING,
    draw: (surface, { x, y }) => {
      const room: Box = { left: x, right: x + width * 0.46, top: y - 2, bottom: y - DRAWING + 2 };
      drawTrialSquare(surface, room);
      const side = (width * 0.5) / 2;
      [true, false].forEach((over, index) => {
        const left = x + width * 0.5 + index * side;
        drawCorner(surface, { left, right: left + side - 4, top: y - 2, bottom: y - DRAWING + 2 }, over);
      });
    },
  };
}
