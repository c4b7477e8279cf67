/** Reads the decorative lines round windows: those of the mat as a whole, and those that a window says itself. */
import { DEFAULT_BEVEL_DEGREES, DEFAULT_INK, defaultLength } from './defaults';
import type { FaceLine } from './job';
import { MOST_BEVEL_DEGREES } from './read-mat';
import type { Reader } from './reader';
import type { WrittenLine } from './written-lines';

/** A steeper slope makes a slit and no groove, degrees from the face's normal. */
export const LEAST_GROOVE_DEGREES = 15;
/** Wider ones are no lines, mm. */
const WIDEST_GROOVE = 25;
const WIDEST_PEN = 10;
const FARTHEST = 1000;

export class LineReader {
  private readonly ofMat: readonly FaceLine[];
  /** Of grooves that do not say their own. */
  private readonly usualDegrees: number;

  /** @param bevelDegrees what the cutter's blade leans by, where that is known. */
  constructor(
    mat: readonly WrittenLine[],
    private readonly reader: Reader,
    bevelDegrees: number = DEFAULT_BEVEL_DEGREES,
  ) {
    this.usualDegrees = grooveDegrees(bevelDegrees);
    this.ofMat = this.list(mat, 'mat.lines');
  }

  /** The lines of a window; where it says none, those of the mat. */
  ofWindow(written: readonly WrittenLine[] | undefined, at: string): readonly FaceLine[] {
    return written ? this.list(written, `${at}.lines`) : this.ofMat;
  }

  private list(written: readonly WrittenLine[], at: string): readonly FaceLine[] {
    return written.map((line, index) => this.line(line, `${at}[${index}]`));
  }

  private line(written: WrittenLine, at: string): FaceLine {
    const { reader } = this;
    const groove = written.kind === 'groove';
    const name = groove ? 'groove' : 'ruled line';
    const width = reader.length(
      written.width,
      `${at}.width`,
      { name: `Width of the ${name}`, least: 0, above: true, most: groove ? WIDEST_GROOVE : WIDEST_PEN },
      defaultLength(groove ? 'grooveWidth' : 'ruledWidth', reader.units),
    );
    const distance = reader.length(
      written.distance,
      `${at}.distance`,
      { name: `Distance of the ${name} from the window`, least: 0, above: true, most: FARTHEST },
      defaultLength('lineDistance', reader.units),
    );
    if (written.kind === 'ruled') return { kind: 'ruled', at, distance, width, colour: written.colour ?? DEFAULT_INK };
    const angleDegrees = reader.number(
      written.angle,
      `${at}.angle`,
      'Angle of the groove',
      LEAST_GROOVE_DEGREES,
      MOST_BEVEL_DEGREES,
      this.usualDegrees,
    );
    return { kind: 'groove', at, distance, width, angleDegrees };
  }
}

/** As the blade leans, unless it stands too steep for a groove. */
export function grooveDegrees(bevelDegrees: number): number {
  return bevelDegrees >= LEAST_GROOVE_DEGREES ? bevelDegrees : DEFAULT_BEVEL_DEGREES;
}
