/** Options of `export` that concern files for machines. */
import { InvalidArgumentError, Option } from 'commander';
import type { MachineKind } from '../bridge';
import {
  MACHINE_DEFAULTS,
  MACHINE_LIMITS,
  ROTARY_AXES,
  type MachineMeasure,
  type MachineOptions,
} from '../core/cutting/machine-options';
import { CORNERS } from '../core/cutting/tool-paths';
import { readLength } from '../core/units';
import { MACHINE_CAUTION } from '../core/cutting/machine-caution';

export const MACHINE_KINDS = ['dxf', 'svg', 'hpgl', 'gcode', 'csv', 'json'] as const satisfies readonly MachineKind[];

export const MACHINE_HELP = `Machines cut by NAME-cuts.dxf, .svg, .csv, .json (all layers, apart), or by NAME-layer-1.nc
(gcode) and .plt (hpgl), one for each board. They are only made when --only names them. Lengths
are in inches, or in millimetres where --units is mm or cm; in svg and json always in
millimetres; in hpgl in whole units of 0.025 mm. Paths stand in the order of cutting and run so
that the bevel slopes the right way; of dxf's arcs and ellipses alone no direction can be told.
After the files stands how far the tool cuts and how far it travels lifted, from the corner and back.
${MACHINE_CAUTION[0]}
${MACHINE_CAUTION[1]}`;

/** What the words of the command line say, lengths in mm. */
export interface MachineWords {
  readonly origin?: MachineOptions['corner'];
  readonly curves?: MachineOptions['curves'];
  readonly tolerance?: number;
  readonly safeHeight?: number;
  readonly depth?: number;
  readonly feed?: number;
  readonly rotary?: 'A' | 'B' | 'C';
  readonly liftAngle?: number;
}

export function machineOptions(): Option[] {
  const { tolerance, safeHeight, feed, liftAngleDegrees } = MACHINE_DEFAULTS;
  return [
    new Option(
      '--origin <corner>',
      'machines: corner of the board, in the view, where x and y are 0; x runs right and y up, so they are negative from a right or an upper corner (default: lower-left)',
    ).choices(CORNERS),
    new Option('--curves <kind>', 'machines: keep arcs, or make lines of all curves (default: arcs)').choices([
      'arcs',
      'lines',
    ]),
    new Option(
      '--tolerance <length>',
      `machines: farthest that arcs or lines may lie from a curve (default: ${tolerance} mm)`,
    ).argParser(lengthOf('tolerance')),
    new Option(
      '--safe-height <length>',
      `gcode: height of the lifted tool over the board (default: ${safeHeight} mm)`,
    ).argParser(lengthOf('safeHeight')),
    new Option(
      '--depth <length>',
      'gcode: how far the tool goes down from the side that faces it (default: the thickness of each board)',
    ).argParser(lengthOf('depth')),
    new Option('--feed <length>', `gcode: way of the cutting tool in a minute (default: ${feed} mm)`).argParser(
      lengthOf('feed'),
    ),
    new Option(
      '--rotary <axis>',
      'gcode: axis that turns a knife into the direction of travel (default: none)',
    ).choices(ROTARY_AXES),
    new Option(
      '--lift-angle <degrees>',
      `gcode: lift a turned knife where the path turns by more (default: ${liftAngleDegrees})`,
    ).argParser(readAngle),
  ];
}

/** Only what was said; undefined of nothing. */
export function machineFrom(words: MachineWords): Partial<MachineOptions> | undefined {
  const said: Partial<MachineOptions> = {
    ...(words.origin === undefined ? {} : { corner: words.origin }),
    ...(words.curves === undefined ? {} : { curves: words.curves }),
    ...(words.tolerance === undefined ? {} : { tolerance: words.tolerance }),
    ...(words.safeHeight === undefined ? {} : { safeHeight: words.safeHeight }),
    ...(words.depth === undefined ? {} : { depth: words.depth }),
    ...(words.feed === undefined ? {} : { feed: words.feed }),
    ...(words.rotary === undefined ? {} : { rotary: words.rotary }),
    ...(words.liftAngle === undefined ? {} : { liftAngleDegrees: words.liftAngle }),
  };
  return Object.keys(said).length === 0 ? undefined : said;
}

/** A length with its unit: a bare number could be taken for inches or for millimetres, and the blade would follow it. */
function lengthOf(name: MachineMeasure): (words: string) => number {
  const [least, greatest] = MACHINE_LIMITS[name];
  const isWithin = (mm: number) => mm >= least && mm <= greatest;
  return (words) => {
    const reading = readLength(words, 'mm');
    if (!reading.ok) throw new InvalidArgumentError(`${reading.message}; ${reading.remedy}.`);
    if (reading.bare) {
      const inches = readLength(words, 'in');
      const could = [
        ...(isWithin(reading.mm) ? [`${words} mm`] : []),
        ...(inches.ok && isWithin(inches.mm) ? [`${words} in`] : []),
      ];
      const limits = `between ${least} mm and ${greatest} mm`;
      if (could.length === 0) throw new InvalidArgumentError(`a length ${limits} is wanted, with its unit.`);
      throw new InvalidArgumentError(`say the unit: ${could.join(' or ')} (${limits}).`);
    }
    if (!isWithin(reading.mm)) {
      throw new InvalidArgumentError(`${words} is not between ${least} mm and ${greatest} mm.`);
    }
    return reading.mm;
  };
}

function readAngle(words: string): number {
  const [least, greatest] = MACHINE_LIMITS.liftAngleDegrees;
  const value = /^\d+(\.\d+)?$/.test(words.trim()) ? Number(words) : NaN;
  if (value >= least && value <= greatest) return value;
  throw new InvalidArgumentError(`"${words}" is not a number of degrees between ${least} and ${greatest}.`);
}
