/** Lengths: reading what people type at the bench, showing millimetres as fractions or decimals. */
export type Unit = 'in' | 'mm' | 'cm';
export type InchStep = 8 | 16 | 32 | 64;
export type MetricStep = 1 | 0.5 | 0.1;

export const UNIT_NAMES: Readonly<Record<Unit, string>> = { in: 'inches', mm: 'millimetres', cm: 'centimetres' };

/** 1 in = 25.4 mm exactly (international inch of 1 July 1959, US Federal Register notice, reprinted in NIST SP 447 App. 5). */
export const MM_PER_INCH = 25.4;
/** A shown value further than this from the true one is marked as rounded: a thousandth of an inch. */
export const ROUNDED_BEYOND = MM_PER_INCH / 1000;

/** How lengths are shown: in which unit and how finely. */
export interface Showing {
  readonly unit: Unit;
  readonly inchStep: InchStep;
  readonly metricStep: MetricStep;
}

/** A length as it was read, or why it could not be. */
export type LengthReading =
  | {
      readonly ok: true;
      /** Millimetres. */
      readonly mm: number;
      /** The unit it was written in, or the one a bare number was taken to be in; feet count as inches. */
      readonly unit: Unit;
      /** True when no unit was written. */
      readonly bare: boolean;
    }
  | { readonly ok: false; readonly message: string; readonly remedy: string };

/** A length ready for screen or paper. */
export interface Shown {
  /** Number without unit: `6 1/2`, `165.1`. */
  readonly text: string;
  /** Number with unit: `6 1/2 in`. */
  readonly withUnit: string;
  readonly unit: Unit;
  /** For setting a true fraction; decimals have no `fraction` and stand in `whole`. */
  readonly parts: {
    readonly sign: '' | '−';
    readonly whole: string;
    readonly fraction?: { readonly numerator: number; readonly denominator: number };
  };
  /** The length the text says, mm. */
  readonly value: number;
  /** True when that differs from the true length by more than a thousandth of an inch. */
  readonly rounded: boolean;
}

/** A whole number over a whole number, so that every way of writing one length reads as the same double. */
interface Ratio {
  readonly over: number;
  readonly under: number;
}

type WrittenUnit = Unit | 'ft';

/** Exact millimetres in one of each unit. */
const SCALE: Readonly<Record<WrittenUnit, Ratio>> = {
  in: { over: 254, under: 10 },
  ft: { over: 3048, under: 10 },
  cm: { over: 10, under: 1 },
  mm: { over: 1, under: 1 },
};

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅕': '1/5', '⅖': '2/5', '⅗': '3/5', '⅘': '4/5',
  '⅙': '1/6', '⅚': '5/6', '⅐': '1/7', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅑': '1/9', '⅒': '1/10',
}; // prettier-ignore

const UNIT_WORDS: Readonly<Record<string, WrittenUnit>> = {
  '"': 'in', in: 'in', inch: 'in', inches: 'in', "'": 'ft', ft: 'ft', foot: 'ft', feet: 'ft',
  mm: 'mm', millimetre: 'mm', millimetres: 'mm', millimeter: 'mm', millimeters: 'mm',
  cm: 'cm', centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm',
}; // prettier-ignore

const NUMBER = String.raw`\d+(?:[.,]\d+)?|[.,]\d+`;
const AMOUNT = String.raw`(?:(\d+)(?:\s+|-\s*))?(\d+)\s*/\s*(\d+)|(${NUMBER})`;
const WORDS = Object.keys(UNIT_WORDS)
  .sort((a, b) => b.length - a.length)
  .join('|');
const ONE = new RegExp(String.raw`^(?:${AMOUNT})\s*(${WORDS})?\.?$`, 'i');
const FEET_AND_INCHES = new RegExp(String.raw`^(${NUMBER})\s*(?:'|ft|feet|foot)\.?\s*(?:-\s*)?(.*\d.*)$`, 'i');
const LAST_UNIT = new RegExp(String.raw`(?:${WORDS})\.?$`, 'i');

const EXAMPLES = 'write it like 6 1/2, 6.5, 6½ in or 165.1 mm';

/**
 * Reads a length as it is written at the bench: mixed, Unicode and improper fractions, either decimal mark, primes,
 * curly quotes, feet and inches; `in`, `ft`, `mm`, `cm`. A bare number is taken to be in `unit`.
 * Refuses what could mean two things (`1,000`) or nothing (`1.5/8`), saying what would be right.
 */
export function readLength(written: string | number, unit: Unit): LengthReading {
  const reading = typeof written === 'number' ? readNumber(written, unit) : readText(written, unit);
  if (!reading.ok || Math.abs(reading.mm) < LONGEST) return reading;
  return refuse('this is longer than anything at a bench', EXAMPLES);
}

/** A thousand kilometres, mm: far from any real length, and within what is shown exactly. */
const LONGEST = 1e9;

function readText(written: string, unit: Unit): LengthReading {
  const text = plainMarks(written);
  if (text === '') return refuse('nothing is written', EXAMPLES);
  const negative = /^[-−]/.test(text);
  const amount = text.replace(/^[-−+]\s*/, '');
  const reading = readAmount(amount, unit, written);
  return negative && reading.ok ? { ...reading, mm: 0 - reading.mm } : reading;
}

/** The unit at the end of a written length, just as it stands there; undefined when none is written. */
export function unitWord(written: string): string | undefined {
  return LAST_UNIT.exec(plainMarks(written))?.[0];
}

function readNumber(value: number, unit: Unit): LengthReading {
  if (!Number.isFinite(value)) return refuse(`${value} is not a length`, EXAMPLES);
  const plain = String(value);
  if (/e/i.test(plain)) return { ok: true, mm: (value * SCALE[unit].over) / SCALE[unit].under, unit, bare: true };
  return readText(plain, unit);
}

/** Quotes, primes, fraction signs and spaces brought to one form each. */
function plainMarks(written: string): string {
  return written
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (sign) => ` ${FRACTION_SIGNS[sign]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/''|[“”″〃]/g, '"')
    .replace(/[‘’′]/g, "'")
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/[‐‑–]/g, '-')
    .trim();
}

function readAmount(text: string, unit: Unit, written: string): LengthReading {
  const both = FEET_AND_INCHES.exec(text);
  if (both) return readFeetAndInches(both[1] ?? '', both[2] ?? '', written);
  const found = ONE.exec(text);
  if (!found) return explain(text, written);
  const [, whole, over, under, decimal, word] = found;
  const used = word === undefined ? unit : UNIT_WORDS[word.toLowerCase()];
  const ratio = decimal !== undefined ? readDecimal(decimal) : readFraction(whole, over ?? '', under ?? '');
  if ('message' in ratio) return refuse(ratio.message, ratio.remedy);
  const scale = SCALE[used ?? unit];
  const mm = (ratio.over * scale.over) / (ratio.under * scale.under);
  return { ok: true, mm, unit: used === 'ft' ? 'in' : (used ?? unit), bare: word === undefined };
}

function readFeetAndInches(feetText: string, inchText: string, written: string): LengthReading {
  const feet = readDecimal(feetText);
  if ('message' in feet) return refuse(feet.message, feet.remedy);
  const inches = ONE.exec(inchText);
  const word = inches?.[5]?.toLowerCase();
  if (!inches || (word !== undefined && UNIT_WORDS[word] !== 'in')) return explain(`${feetText}' ${inchText}`, written);
  const rest =
    inches[4] !== undefined ? readDecimal(inches[4]) : readFraction(inches[1], inches[2] ?? '', inches[3] ?? '');
  if ('message' in rest) return refuse(rest.message, rest.remedy);
  const over = feet.over * 12 * rest.under + rest.over * feet.under;
  return { ok: true, mm: (over * 254) / (feet.under * rest.under * 10), unit: 'in', bare: false };
}

interface Refusal {
  readonly message: string;
  readonly remedy: string;
}

function readDecimal(text: string): Ratio | Refusal {
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
    const either = `${text.replace(',', '')} or ${Number(text.replace(',', '.'))}`;
    return { message: `${text} could be ${either}`, remedy: `write ${either}` };
  }
  const [whole = '', part = ''] = text.split(/[.,]/);
  return { over: Number(whole + part), under: 10 ** part.length };
}

function readFraction(whole: string | undefined, overText: string, underText: string): Ratio | Refusal {
  const over = Number(overText);
  const under = Number(underText);
  if (under === 0) return { message: `${overText}/${underText} divides by nothing`, remedy: EXAMPLES };
  if (whole === undefined) return { over, under };
  if (over >= under) {
    const rest = over % under === 0 ? '' : ` ${over % under}/${under}`;
    return {
      message: `${whole} ${overText}/${underText} has a fraction of one or more beside a whole number`,
      remedy: `write ${Number(whole) + Math.floor(over / under)}${rest}, or ${overText}/${underText} alone`,
    };
  }
  return { over: Number(whole) * under + over, under };
}

function refuse(message: string, remedy: string): LengthReading {
  return { ok: false, message, remedy };
}

/** Says what is wrong with a text that no pattern fits. */
function explain(text: string, written: string): LengthReading {
  const shown = written.length > 30 ? `${written.slice(0, 30)}…` : written;
  if (/\d[.,]\d+\s*\/|\/\s*\d*[.,]/.test(text)) {
    return refuse(`${shown} mixes a decimal and a fraction`, 'write one or the other, such as 1 5/8 or 1.625');
  }
  if (/\d[.,]\d+[.,]/.test(text)) return refuse(`${shown} has two decimal marks`, 'write no marks between thousands');
  if (/\d\s*[x×]\s*\d/i.test(text)) return refuse(`${shown} is a size; one length is wanted here`, EXAMPLES);
  if (!/\d/.test(text)) return refuse(`${shown} is not a length`, EXAMPLES);
  return refuse(`${shown} is not a length that can be read`, EXAMPLES);
}

/** How a job shows its lengths, or how it would in another unit. */
export function showingOf(
  job: { readonly units: Unit; readonly steps: { readonly in: InchStep; readonly mm: MetricStep } },
  unit: Unit = job.units,
): Showing {
  return { unit, inchStep: job.steps.in, metricStep: job.steps.mm };
}

/** The smallest difference shown, mm. */
export function stepLength(showing: Showing): number {
  return showing.unit === 'in' ? MM_PER_INCH / showing.inchStep : showing.metricStep;
}

/** Shows a length to the step: halves go up. Nothing shown is ever calculated with. */
export function showLength(mm: number, showing: Showing): Shown {
  return showSteps(nearestStep(mm, showing), mm, showing);
}

/** The length with its unit, and `≈` before it when rounding moved it by more than a thousandth of an inch. */
export function lengthText(mm: number, showing: Showing): string {
  const shown = showLength(mm, showing);
  return shown.rounded ? `≈ ${shown.withUnit}` : shown.withUnit;
}

/** The same for a message: what the step would show as nothing is told in decimals, since it is the very thing told of. */
export function spokenLength(mm: number, showing: Showing): string {
  if (Math.abs(mm) < 1e-6 || showLength(mm, showing).value !== 0) return lengthText(mm, showing);
  const { unit } = showing;
  const text = fineText(Math.abs(mm), unit);
  if (Number.parseFloat(text) === 0) return `under ${unit === 'mm' ? '0.01' : '0.001'} ${unit}`;
  return mm < 0 ? `−${text}` : text;
}

/** Width x height with the unit once, `10 x 8 in`, and `≈` before it when either was rounded. */
export function sizeText(size: { readonly width: number; readonly height: number }, showing: Showing): string {
  const width = showLength(size.width, showing);
  const height = showLength(size.height, showing);
  return `${width.rounded || height.rounded ? '≈ ' : ''}${width.text} x ${height.withUnit}`;
}

/** What lies no further than this from a mark of a rule is on it, mm: no more than doubles lose on their way. */
const ON_MARK = 1e-6;

/**
 * Shows a length that a cutter is set to: as `showLength`, but where the step would round it as a 64th of an inch that it
 * is, else in decimals (a thousandth of an inch, a hundredth of a millimetre), so that it never seems to differ from a
 * rounded number beside it.
 */
export function showSetting(mm: number, showing: Showing): Shown {
  const shown = showLength(mm, showing);
  if (!shown.rounded) return shown;
  const finest = nearest64th(mm, showing);
  if (finest && Math.abs(finest.value - mm) < ON_MARK) return finest;
  const { unit } = showing;
  const whole = decimalText(Math.abs(mm), unit, unit === 'mm' ? 2 : 3);
  const sign = mm < 0 ? '−' : '';
  const text = sign + whole;
  return { ...shown, text, withUnit: `${text} ${unit}`, parts: { sign, whole }, value: mm, rounded: false };
}

/** The finest mark of an inch rule beside a length that is shown in decimals of an inch; undefined where it isn't. */
export function markBeside(mm: number, showing: Showing): Shown | undefined {
  return /^−?\d+\.\d+$/.test(showSetting(mm, showing).text) ? nearest64th(mm, showing) : undefined;
}

/** A setting with its unit, and beside decimals of an inch the nearest mark of a rule: `19.685 in (≈ 19 11/16)`. */
export function settingBesideMark(mm: number, showing: Showing): string {
  const mark = markBeside(mm, showing);
  return `${showSetting(mm, showing).withUnit}${mark ? ` (≈ ${mark.text})` : ''}`;
}

function nearest64th(mm: number, showing: Showing): Shown | undefined {
  return showing.unit === 'in' ? showLength(mm, { ...showing, inchStep: 64 }) : undefined;
}

/**
 * Shows parts of a whole so that what is shown adds up to the whole as shown: all but the last are rounded,
 * the last takes what remains. Give them from the left or from the top.
 */
export function showTogether(lengths: readonly number[], total: number, showing: Showing): Shown[] {
  const steps = lengths.map((length) => nearestStep(length, showing));
  const last = steps.length - 1;
  const before = steps.slice(0, last).reduce((sum, step) => sum + step, 0);
  return steps.map((step, index) =>
    showSteps(index === last ? nearestStep(total, showing) - before : step, lengths[index] ?? 0, showing),
  );
}

/** The number in a unit with so many decimals, a point for the decimal mark and never `-0`. */
export function decimalText(mm: number, unit: Unit, digits: number): string {
  const value = (mm * SCALE[unit].under) / SCALE[unit].over;
  // What lies half way but for the last bits of a double goes up, as 1.96875 in would that was worked out in mm.
  const text = (value * (1 + 4 * Number.EPSILON)).toFixed(digits);
  return /^-0\.?0*$/.test(text) ? text.slice(1) : text;
}

/** `27.49 sq in`, `177.3 cm²` or `17735 mm²`, of square millimetres. */
export function areaText(squareMm: number, { unit }: Pick<Showing, 'unit'>): string {
  const one = SCALE[unit].over / SCALE[unit].under;
  const digits = { in: 2, cm: 2, mm: 0 }[unit];
  return `${(squareMm / one ** 2).toFixed(digits)} ${unit === 'in' ? 'sq in' : `${unit}²`}`;
}

/** To a thousandth of an inch or a hundredth of a millimetre, without zeros at its end: `0.249 in`. */
export function fineText(mm: number, unit: Unit): string {
  return `${Number(decimalText(mm, unit, unit === 'mm' ? 2 : 3))} ${unit}`;
}

function nearestStep(mm: number, showing: Showing): number {
  // What lies half way but for the last bits of a double counts as half way.
  const steps = Math.abs(mm) / stepLength(showing);
  const whole = Math.floor(steps + 0.5 + 1e-9);
  return mm < 0 && whole > 0 ? -whole : whole;
}

/** Millimetres of so many steps: the very double that reading the shown text gives. */
function lengthOf(steps: number, showing: Showing): number {
  if (showing.unit === 'in') return (steps * SCALE.in.over) / (showing.inchStep * SCALE.in.under);
  return tenthsOf(steps, showing) / 10;
}

/** Tenths of a millimetre are whole numbers for every metric step, so nothing like 0.30000000000000004 can appear. */
function tenthsOf(steps: number, showing: Showing): number {
  return Math.round(steps * showing.metricStep * 10);
}

function showSteps(steps: number, mm: number, showing: Showing): Shown {
  const value = lengthOf(steps, showing);
  const sign = steps < 0 ? '−' : '';
  const parts = {
    sign,
    ...(showing.unit === 'in'
      ? inchParts(Math.abs(steps), showing.inchStep)
      : { whole: metricText(Math.abs(steps), showing) }),
  } as const;
  const fraction =
    'fraction' in parts && parts.fraction ? `${parts.fraction.numerator}/${parts.fraction.denominator}` : '';
  const text = sign + [parts.whole, fraction].filter((part) => part !== '').join(' ');
  return {
    text,
    withUnit: `${text} ${showing.unit}`,
    unit: showing.unit,
    parts,
    value,
    rounded: Math.abs(value - mm) > ROUNDED_BEYOND,
  };
}

function inchParts(steps: number, step: InchStep): Omit<Shown['parts'], 'sign'> {
  const whole = Math.floor(steps / step);
  let numerator = steps % step;
  if (numerator === 0) return { whole: String(whole) };
  let denominator: number = step;
  while (numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return { whole: whole === 0 ? '' : String(whole), fraction: { numerator, denominator } };
}

function metricText(steps: number, showing: Showing): string {
  const digits = showing.unit === 'cm' ? 2 : 1;
  return (tenthsOf(steps, showing) / 10 ** digits).toFixed(digits).replace(/\.?0+$/, '');
}
