/** How grooves and ruled lines are made: on the face of the top layer, while the board is whole; always in the front view. */
import { boxAt, type Box } from '../geometry/box';
import type { Outline } from '../geometry/outline';
import type { Job } from '../job/job';
import type { Layout, PlacedLine } from '../layout/layout';
import { lineWord } from '../layout/line-words';
import type { Manner } from './manner';
import { orderCuts } from './order-cuts';
import { outlineCuts } from './outline-cuts';
import type { CutLine, LinePass, LinePlan, LineStep } from './plan';

/** When they are made, and how, in words. */
export const LINE_RULE =
  'Ruled lines and grooves are made on the face before any window is cut, while the board is whole: ruled lines first, and grooves when the ink is dry.';
export const GROOVE_RULE =
  'A groove is cut in two passes, one along each edge of its mouth and in opposite directions, so that the blade leans towards the middle both times; set it no deeper than is told, and try that on scrap. Then lift out the strip between the cuts.';

/** All lines of the mat, window by window. */
export function planLines(job: Job, layout: Layout): LinePlan[] {
  const board = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  return layout.windows.flatMap(({ name: window, lines }, windowIndex) =>
    lines.map((placed): LinePlan => {
      const { line, depth, middle, inner, outer } = placed;
      const { kind, distance, width } = line;
      return {
        name: nameOf(placed, lines),
        window,
        windowIndex,
        distance,
        width,
        ...(kind === 'groove'
          ? { kind, angleDegrees: line.angleDegrees, depth: depth ?? 0 }
          : { kind, colour: line.colour }),
        middle,
        inner,
        outer,
        passes: passesOf(placed, job, board),
      };
    }),
  );
}

/** `groove`, or `groove 2` where a window has several. */
function nameOf(placed: PlacedLine, lines: readonly PlacedLine[]): string {
  const word = lineWord(placed.line);
  const alike = lines.filter(({ line }) => lineWord(line) === word);
  return alike.length > 1 ? `${word} ${1 + alike.indexOf(placed)}` : word;
}

/**
 * A blade leans to one side of its travel: to the left where the waste of a window lies on the right. The edge nearer to the
 * window leans away from it and is travelled as the window is; the other edge leans towards it and is travelled the other
 * way round.
 */
function passesOf({ line, middle, inner, outer }: PlacedLine, job: Job, board: Box): LinePass[] {
  const { waste, cutter } = job.cutting;
  const lean = waste === 'right' ? 'left' : 'right';
  const reach = cutter?.reach === undefined ? {} : { reach: cutter.reach };
  const pass = (name: LinePass['name'], outline: Outline, manner: Manner): LinePass => ({
    name,
    cuts: outlineCuts(outline, board, manner),
  });
  if (line.kind === 'ruled')
    return [pass('line', middle, { waste, slopesTo: 'none', bevelSide: 'none', run: 0, ...reach })];
  const blade = { bevelSide: lean, run: line.width / 2, ...reach } as const;
  return [
    pass('inner', inner, { ...blade, waste, slopesTo: 'border' }),
    pass('outer', outer, { ...blade, waste: lean, slopesTo: 'window' }),
  ];
}

/** Every cut of a line, the first pass before the second. */
export function cutsOfLine({ passes }: Pick<LinePlan, 'passes'>): readonly CutLine[] {
  return passes.flatMap(({ cuts }) => cuts);
}

/** Such as `groove 1, inner left`. */
export function lineCutName(made: LinePlan, index: number): string {
  const names = made.passes.flatMap((pass) =>
    pass.cuts.map(({ name }) => `${made.name}, ${pass.name === 'line' ? '' : `${pass.name} `}${name}`),
  );
  return names[index] ?? made.name;
}

/** Lines by what makes them, so that pen and depth are set once for each: ruled lines first, then grooves. */
export function byTool<T extends Pick<LinePlan, 'kind'>>(lines: readonly T[], toolOf: (line: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const kind of ['ruled', 'groove'] as const) {
    for (const line of lines.filter((one) => one.kind === kind)) {
      const key = `${kind} ${toolOf(line)}`;
      const group = groups.get(key);
      if (group) group.push(line);
      else groups.set(key, [line]);
    }
  }
  return [...groups.values()];
}

/** What has to be changed between two lines that differ in it. */
export function settingOf(line: LinePlan): string {
  return line.kind === 'ruled' ? `${line.width} ${line.colour}` : `${line.angleDegrees} ${line.depth}`;
}

/** Tool by tool, each by the order for a guide. */
export function orderLines(lines: readonly LinePlan[]): LineStep[] {
  const steps = byTool(lines, settingOf).flatMap((group) => {
    const made = group.map((line) => ({ cuts: { front: cutsOfLine(line), back: [] } }));
    return orderCuts(made, 'front').map(({ window, cut, moveGuide, turnBoard, guideSetting }) => ({
      line: lines.indexOf(group[window] as LinePlan),
      cut,
      moveGuide,
      turnBoard,
      ...(guideSetting === undefined ? {} : { guideSetting }),
    }));
  });
  return steps.map((step, index) => ({ number: index + 1, ...step }));
}
