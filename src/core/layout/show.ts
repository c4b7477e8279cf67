/** Lengths and sizes of a job in words: for messages, and for edits that mend. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import {
  decimalText,
  fineText,
  lengthText,
  showingOf,
  showLength,
  showSetting,
  sizeText,
  spokenLength,
  stepLength,
} from '../units';

export interface Show {
  /** To the job's step, `≈` before it when rounded; in decimals where the step would show nothing. */
  readonly length: (mm: number) => string;
  /** The same of a length that missed a limit: in decimals where the step would show it as the limit itself. */
  readonly missing: (mm: number, limit: number) => string;
  /** To a thousandth of an inch or a hundredth of a millimetre, for what differs by less than a step. */
  readonly fine: (mm: number) => string;
  /** A limit, which is nobody's measure: never `≈`, in decimals where the step would round it. */
  readonly limit: (mm: number) => string;
  /** The least length on the step that is no less: what one would take who has to keep to a limit, mm. */
  readonly stepUp: (mm: number) => number;
  /** The greatest length on the step that is no more, mm. */
  readonly stepDown: (mm: number) => number;
  /** `10 x 8 in`. */
  readonly size: (size: Size) => string;
  /** To be typed as it is told: with what is exact in brackets where the step rounds. */
  readonly typed: (mm: number) => string;
  /** To write into the job: as shown when that is exact, otherwise in millimetres to a millionth. */
  readonly exact: (mm: number) => string;
}

/** What is solved for lies beside a step by less, mm. */
const ON_STEP = 1e-6;

export function showFor(job: Pick<Job, 'units' | 'steps'>): Show {
  const showing = showingOf(job);
  const exact = (mm: number) => {
    const shown = showLength(mm, showing);
    if (Math.abs(shown.value - mm) < 1e-9) return shown.withUnit.replace('−', '-');
    return `${Number(decimalText(mm, 'mm', 6))} mm`;
  };
  return {
    length: (mm) => spokenLength(mm, showing),
    missing: (mm, limit) => {
      const shown = spokenLength(mm, showing);
      const { unit } = showing;
      const same = Math.abs(mm - limit) > 1e-6 && showLength(mm, showing).text === showLength(limit, showing).text;
      return same ? `${decimalText(mm, unit, unit === 'mm' ? 2 : 3)} ${unit}` : shown;
    },
    fine: (mm) => fineText(mm, showing.unit),
    limit: (mm) => showSetting(mm, showing).withUnit,
    stepDown: (mm) => Math.floor((mm + ON_STEP) / stepLength(showing) + 1e-9) * stepLength(showing),
    stepUp: (mm) => Math.ceil((mm - ON_STEP) / stepLength(showing) - 1e-9) * stepLength(showing),
    size: (size) => sizeText(size, showing),
    typed: (mm) => {
      const shown = lengthText(mm, showing);
      return exact(mm) === shown ? shown : `${shown} (${exact(mm)})`;
    },
    exact,
  };
}
