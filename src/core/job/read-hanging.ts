/** Reads how the finished frame hangs. */
import { defaultLength } from './defaults';
import type { Hanging } from './hanging';
import { LARGEST, type Limits, type Reader } from './reader';
import type { WrittenLength } from './written';
import type { WrittenHanging } from './written-hanging';

/**
 * Breaking strength : load, where the job does not say. An analogy: 5 : 1 is asked of wire rope slings in 29 CFR 1926.251,
 * as quoted; no published standard of picture wire was found.
 */
const MARGIN = 5;

export function readHanging(written: WrittenHanging, reader: Reader): Hanging {
  const { hanger = 'by size', hooks, wire = {}, hook = {}, fitting = {} } = written;
  const length = (value: WrittenLength | undefined, key: string, name: string, limits: Omit<Limits, 'name'> = {}) =>
    reader.optionalLength(value, `hanging.${key}`, { name, least: 0, most: LARGEST, ...limits });
  const above = { above: true };
  const usual = (name: 'knots' | 'standOff' | 'outOfLevel') => defaultLength(name, reader.units);
  const weight = reader.optionalMass(written.weight, 'hanging.weight', 'Weight of the finished frame');
  const breaksAt = reader.optionalMass(wire.breaksAt, 'hanging.wire.breaksAt', 'Where the wire breaks');
  return {
    hanger,
    ...said({ hooks }),
    ...said({
      hooksApart: length(written.hooksApart, 'hooksApart', 'Distance between the hooks', above),
      hangerDown: length(written.hangerDown, 'hangerDown', 'Distance of the hanger from the top'),
      hangerIn: length(written.hangerIn, 'hangerIn', 'Distance of a ring from the outer edge'),
      wireBelowTop: length(written.wireBelowTop, 'wireBelowTop', 'Distance of the wire from the top'),
    }),
    wire: { ...bought(wire, 'wire', 'the wire', reader), ...said({ breaksAt }), margin: wire.margin ?? MARGIN },
    knots: length(written.knots, 'knots', 'Wire for a knot', { most: 1000 }) ?? usual('knots'),
    hook: {
      ...bought(hook, 'hook', 'a hook', reader),
      ...said({ seat: length(hook.seat, 'hook.seat', 'Distance from nail to seat', { most: 200 }) }),
      standOff: length(hook.standOff, 'hook.standOff', 'Stand-off of the hook', { most: 200 }) ?? usual('standOff'),
    },
    fitting: {
      ...bought(fitting, 'fitting', 'what sits on the frame', reader),
      ...said({ width: length(fitting.width, 'fitting.width', 'Width of the fitting', { ...above, most: 500 }) }),
    },
    outOfLevel: length(written.outOfLevel, 'outOfLevel', 'Out of level', { most: 100 }) ?? usual('outOfLevel'),
    ...said({ weight }),
    bumpers: length(written.bumpers, 'bumpers', 'Thickness of the bumpers', { most: 100 }) ?? 0,
    surroundings: [...new Set(written.surroundings)],
  };
}

interface WrittenBought {
  readonly name?: string | undefined;
  readonly load?: string | undefined;
}

function bought({ name, load }: WrittenBought, key: string, what: string, reader: Reader) {
  return said({ name, load: reader.optionalMass(load, `hanging.${key}.load`, `Rated load of ${what}`) });
}

/** Without what is undefined. */
function said<T extends object>(values: T): { readonly [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as ReturnType<
    typeof said<T>
  >;
}
