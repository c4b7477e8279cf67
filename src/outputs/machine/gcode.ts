/** The paths of one layer as G-code: words of RS-274/ISO 6983 that every control knows, none of one machine. */
import type { LayerPaths, ToolPath } from '../../core/cutting/tool-paths';
import type { Point } from '../../core/geometry/box';
import { directionOn, type Edge } from '../../core/geometry/edge';
import { arcsOf, chordsOf } from './approximate';
import { MACHINE_CAUTION } from '../../core/cutting/machine-caution';
import { lineWords } from './line-words';
import type { MachinePaths } from './machine-paths';
import { asciiText, degrees, lengthNumber, plainNumber } from './numbers';

/** What is written of, and how. */
interface Program extends MachinePaths {
  readonly title: string;
  readonly layerCount: number;
}

/** Ends of the knife's turn that differ by less are one, degrees. */
const SAME_ANGLE = 1e-4;

/**
 * Millimetres or inches, absolute (G90); centres of arcs from their start (I, J, the default of the standard). Z 0 is the
 * side of the board that faces the tool. The tool ends lifted, at the origin corner.
 */
export function gcodeText(layer: LayerPaths, program: Program): string {
  const { unit, choices } = program;
  const write = new Writer(program, choices.depth ?? layer.layer.thickness);
  write.comments(headOf(layer, program));
  // Plane, unit, no cutter compensation, no tool length offset, no canned cycle, absolute, feed in a minute.
  write.words('G17', unit === 'in' ? 'G20' : 'G21', 'G40', 'G49', 'G80', 'G90', 'G94');
  write.words(write.feed());
  write.lift();
  let { tool } = layer.paths[0] ?? { tool: '' };
  if (layer.layer.lines.length > 0 && program.table.view === 'front') write.comments([`Begin with: ${tool}`]);
  for (const path of layer.paths) {
    if (path.tool !== tool) {
      write.comments([`Change to: ${path.tool}${tool.startsWith('pen') ? ', when the ink is dry' : ''}`]);
      tool = path.tool;
      write.words('M0');
    }
    write.comments([`${path.number}: window ${path.window}, ${path.cuts.join(', ')}`]);
    write.path(path);
  }
  write.words('G0', write.at({ x: 0, y: 0 }));
  write.words('M2');
  return write.text();
}

function inInches(mm: number): number {
  return Number(lengthNumber(mm, 'in'));
}

function headOf({ layer, blank, cutLength, travel }: LayerPaths, program: Program): string[] {
  const { table, unit, choices, title, layerCount } = program;
  const length = (mm: number) => `${lengthNumber(mm, unit)} ${unit}`;
  return [
    `Mat: ${asciiText(title, 80)}`,
    `Layer ${layer.number} of ${layerCount}, ${asciiText(layer.board, 40)}, ${length(blank.width)} x ${length(blank.height)}, cut from the ${table.view}`,
    ...MACHINE_CAUTION,
    ...lineWords(layer, table.view, unit),
    `X0 Y0 is the ${table.corner.replace('-', ' ')} corner of the board as it lies, Z0 the side that faces the tool`,
    `The waste lies on the ${table.waste} of the travel`,
    `Cut ${length(cutLength)}, travel ${length(travel)}, curves within ${length(choices.tolerance)}`,
    ...(choices.rotary
      ? [
          `${choices.rotary} turns the knife: degrees anticlockwise from X, 0 where it cuts towards +X`,
          `In the board it turns at ${plainNumber(choices.feed, 3)} degrees a minute`,
        ]
      : []),
  ];
}

/** Lines of the program, and where the knife points. */
class Writer {
  private readonly lines: string[] = [];
  private angle = 0;
  /** How deep the tool goes on this path. */
  private down = 0;

  constructor(
    private readonly program: Program,
    private readonly depth: number,
  ) {}

  text(): string {
    return `${this.lines.join('\n')}\n`;
  }

  comments(texts: readonly string[]): void {
    this.lines.push(...texts.map((text) => `(${asciiText(text, 200)})`));
  }

  words(...words: readonly string[]): void {
    this.lines.push(words.filter((word) => word !== '').join(' '));
  }

  at({ x, y }: Point): string {
    return `X${this.length(x)} Y${this.length(y)}`;
  }

  lift(): void {
    this.words('G0', `Z${this.length(this.program.choices.safeHeight)}`);
  }

  path({ edges, from, kind, depth }: ToolPath): void {
    // A pen only touches the face.
    this.down = kind === 'ruled line' ? 0 : (depth ?? this.depth);
    const { curves, tolerance } = this.program.choices;
    const pieces = edges.flatMap((edge) => (curves === 'arcs' ? arcsOf(edge, tolerance) : chordsOf(edge, tolerance)));
    this.words('G0', this.at(from));
    pieces.forEach((piece, index) => {
      if (index === 0) this.enter(piece);
      else this.turnInto(piece);
      this.cut(piece);
    });
    this.lift();
  }

  /** Turns the knife while it is lifted, then lowers it. */
  private enter(piece: Edge): void {
    const { rotary } = this.program.choices;
    if (rotary) {
      this.angle = shortWayTo(headingOf(piece), this.angle);
      this.words('G0', this.heading());
    }
    this.words('G1', `Z${this.length(0 - this.down)}`);
  }

  /** Turns the knife in the board where the path bends a little, lifted where it bends sharply. */
  private turnInto(piece: Edge): void {
    const { rotary, liftAngleDegrees } = this.program.choices;
    if (!rotary) return;
    const turn = turnBetween(this.angle, headingOf(piece));
    if (Math.abs(turn) > liftAngleDegrees) {
      this.lift();
      this.enter(piece);
    } else if (Math.abs(turn) > SAME_ANGLE) {
      this.angle += turn;
      this.turnInPlace();
    }
  }

  /** The feed of a move that only turns is in degrees a minute; as many as it is mm, whatever the unit. */
  private turnInPlace(): void {
    const { unit, choices } = this.program;
    const turns = `F${plainNumber(choices.feed, 3)}`;
    this.words('G1', this.heading(), unit === 'in' ? turns : '');
    if (unit === 'in') this.words(this.feed());
  }

  feed(): string {
    const { unit, choices } = this.program;
    return `F${plainNumber(unit === 'in' ? inInches(choices.feed) : choices.feed, 3)}`;
  }

  private cut(piece: Edge): void {
    if (piece.kind !== 'arc') return this.words('G1', this.at(piece.to));
    const { centre, from, sweep } = piece;
    const middle = `I${this.length(centre.x - from.x)} J${this.length(centre.y - from.y)}`;
    this.angle += degrees(sweep);
    this.words(sweep > 0 ? 'G3' : 'G2', this.at(piece.to), middle, this.heading());
  }

  private heading(): string {
    const { rotary } = this.program.choices;
    return rotary ? `${rotary}${plainNumber(this.angle, 4)}` : '';
  }

  private length(mm: number): string {
    return lengthNumber(mm, this.program.unit);
  }
}

/** Where an edge starts to go, degrees anticlockwise from x. */
function headingOf(edge: Edge): number {
  const { x, y } = directionOn(edge, 0);
  return degrees(Math.atan2(y, x));
}

/** The same heading the least turn away, but never on and on in one direction: a knife may hang on a cable. */
function shortWayTo(heading: number, from: number): number {
  const same = [heading - 360, heading, heading + 360].filter((angle) => Math.abs(angle) <= 360);
  return same.reduce((best, angle) => (Math.abs(angle - from) < Math.abs(best - from) ? angle : best), heading);
}

/** The shorter way round, degrees. */
function turnBetween(from: number, to: number): number {
  const turn = (to - from) % 360;
  return turn > 180 ? turn - 360 : turn <= -180 ? turn + 360 : turn;
}
