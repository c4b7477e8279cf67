/** Makes malformed jobs of good ones, by chance that can be repeated. */
import fc from 'fast-check';

/** A way into a value, and what is done there. */
type Place = readonly (string | number)[];
export type Mutation = (job: unknown, pick: (most: number) => number) => unknown;

const WRONG_VALUES: readonly unknown[] = [
  null, true, false, [], {}, '', ' ', 0, -0, -1, 0.5, 1e-320, 1e308, -1e308, 2 ** 53, 'NaN', 'Infinity', '-Infinity',
  '1e999', '0x10', '∞ in', 'undefined', '[object Object]', '11/0', '1.5/8', '1,000', '8x10"', '--3 in', '5 furlongs',
  "1'2'3", '6 1/2 1/2', '½½', '🌿', '٣ in', '\u0000', '\u202e', 'x'.repeat(5000), '9'.repeat(400), [[[[]]]],
  [null], { length: 3 }, { kind: 'row' }, { kind: 'window', kindly: 1 }, 'covers', 'shows -1 in', 'A99', 'Z4', ' x ', '1x',
  'x1', '4 x 5 x 6 in', '1e400 x 1e400 in', 'share with everybody',
]; // prettier-ignore

const WRONG_KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf', '', ' ', 'Size', 'size ', '0', '🌿', 'length', 'then']; // prettier-ignore

/** Each leaves the job that it is given as it was. */
export const MUTATIONS: Readonly<Record<string, Mutation>> = {
  'another value': (job, pick) => replaceAt(job, placeIn(job, pick), () => WRONG_VALUES[pick(WRONG_VALUES.length)]),
  'another key': (job, pick) =>
    inGroup(job, pick, (entries, index) =>
      entries.map(([key, value], place) => [place === index ? WRONG_KEYS[pick(WRONG_KEYS.length)]! : key, value]),
    ),
  'a key too many': (job, pick) =>
    inGroup(job, pick, (entries) => [...entries, [WRONG_KEYS[pick(WRONG_KEYS.length)]!, { polluted: true }]]),
  'a key too few': (job, pick) => inGroup(job, pick, (entries, index) => entries.filter((_, place) => place !== index)),
  'values swapped': (job, pick) => {
    const [one, other] = [placeIn(job, pick), placeIn(job, pick)];
    const [first, second] = [valueAt(job, one), valueAt(job, other)];
    return replaceAt(
      replaceAt(job, one, () => second),
      other,
      () => first,
    );
  },
  'a huge, negative or tiny number': (job, pick) =>
    replaceAt(job, placeIn(job, pick), (value) => {
      const factor = [1e6, -1, 0, 1e-9, 1e300][pick(5)]!;
      if (typeof value === 'number') return value * factor;
      return typeof value === 'string' ? value.replace(/\d+/, (digits) => String(Number(digits) * factor)) : factor;
    }),
  'a wrong reference': (job, pick) => withWindows(job, ['nobody', 0, -1, 99, 1.5, '__proto__', 'constructor'][pick(7)]),
  'an absurd grid': (job, pick) => ({
    ...(job as object),
    windows: { kind: 'grid', columns: [0, -3, 1e9, 2.5, 201][pick(5)], items: Array(3).fill('1') },
  }),
  'an absurd spread': (job, pick) => ({
    ...(job as object),
    windows: { kind: 'spread', picture: 1, count: [1, 0, 41, 1e9][pick(4)], shares: [1, -1, 0] },
  }),
  'groups too deep': (job, pick) => ({ ...(job as object), windows: nested([13, 40, 61, 400][pick(4)]!) }),
  'lists too deep': (job, pick) => ({ ...(job as object), notes: nestedLists([61, 400][pick(2)]!) }),
  'too many windows': (job) => ({ ...(job as object), windows: { kind: 'row', items: Array(2001).fill('1') } }),
  'too many pictures': (job) => ({ ...(job as object), pictures: Array(2001).fill({ size: 'A4' }) }),
  'all windows one over the other': (job, pick) => ({
    ...(job as object),
    free: Array(2 + pick(50)).fill({ size: '50 x 50 mm', at: { left: '60 mm', bottom: '60 mm' } }),
  }),
};

/** A text of a job that was cut, glued or spoilt as text. */
export const SPOILINGS: Readonly<Record<string, (text: string, pick: (most: number) => number) => string>> = {
  'cut short': (text, pick) => text.slice(0, pick(text.length - 1)),
  'its head cut off': (text, pick) => text.slice(1 + pick(text.length - 2)),
  'a letter changed': (text, pick) => {
    const at = pick(text.length);
    return text.slice(0, at) + '{}[]",:\\\u0000x'[pick(10)] + text.slice(at + 1);
  },
  'nested without end': (text, pick) => {
    const depth = [1000, 20_000, 100_000][pick(3)]!;
    const [open, close] = [
      ['[', ']'],
      ['{"kind":"row","items":[', ']}'],
    ][pick(2)]!;
    return text.replace('{', `{ "windows": ${open!.repeat(depth)}${close!.repeat(depth)},`);
  },
  'said twice': (text) => text + text,
  'numbers that are none': (text, pick) => text.replace(/"version": ?1/, `"version": ${['NaN', 'Infinity', '-', '01', '1e', '0x1'][pick(6)]}`), // prettier-ignore
  'a comment': (text) => text.replace('{', '{ // a job\n'),
};

/** A job spoilt in one to three ways, as text, with the ways told. */
export function malformedJob(
  jobs: readonly unknown[],
): fc.Arbitrary<{ readonly ways: readonly string[]; readonly text: string }> {
  const mutation = fc.tuple(fc.constantFrom(...Object.keys(MUTATIONS)), fc.infiniteStream(fc.nat()));
  const mutated = fc.tuple(fc.constantFrom(...jobs), fc.array(mutation, { minLength: 1, maxLength: 3 })).map(([job, steps]) => ({
    ways: steps.map(([name]) => name),
    text: JSON.stringify(steps.reduce((value, [name, numbers]) => MUTATIONS[name]!(value, pickFrom(numbers)), job)) ?? '',
  })); // prettier-ignore
  const spoilt = fc
    .tuple(fc.constantFrom(...jobs), fc.constantFrom(...Object.keys(SPOILINGS)), fc.infiniteStream(fc.nat()))
    .map(([job, name, numbers]) => ({
      ways: [name],
      text: SPOILINGS[name]!(JSON.stringify(job, null, 1), pickFrom(numbers)),
    }));
  return fc.oneof({ arbitrary: mutated, weight: 4 }, { arbitrary: spoilt, weight: 1 });
}

function pickFrom(numbers: fc.Stream<number>): (most: number) => number {
  return (most) => (numbers.next().value as number) % Math.max(1, most);
}

function placesIn(value: unknown, at: Place = []): Place[] {
  if (value === null || typeof value !== 'object') return [at];
  return [at, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...at, key]))];
}

function placeIn(job: unknown, pick: (most: number) => number): Place {
  const places = placesIn(job);
  return places[pick(places.length)]!;
}

function valueAt(job: unknown, place: Place): unknown {
  return place.reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], job);
}

function replaceAt(job: unknown, [key, ...rest]: Place, replace: (value: unknown) => unknown): unknown {
  if (key === undefined) return replace(job);
  if (job === null || typeof job !== 'object') return job;
  if (Array.isArray(job)) return job.map((item: unknown, index) => (String(index) === key ? replaceAt(item, rest, replace) : item)); // prettier-ignore
  return Object.fromEntries(
    Object.entries(job).map(([name, item]) => [name, name === key ? replaceAt(item, rest, replace) : item]),
  );
}

type Entries = [string, unknown][];

function inGroup(
  job: unknown,
  pick: (most: number) => number,
  change: (entries: Entries, index: number) => Entries,
): unknown {
  const isGroup = (value: unknown) => value !== null && typeof value === 'object' && !Array.isArray(value);
  const groups = placesIn(job).filter((place) => isGroup(valueAt(job, place)));
  const place = groups[pick(groups.length)] ?? [];
  return replaceAt(job, place, (value) => {
    if (!isGroup(value)) return value;
    const entries = Object.entries(value as object) as Entries;
    // Not through assignment, by which `__proto__` would vanish before it is written.
    return Object.fromEntries(change(entries, pick(entries.length)));
  });
}

function withWindows(job: unknown, picture: unknown): unknown {
  return { ...(job as object), windows: { kind: 'row', items: [{ kind: 'window', picture }] } };
}

function nested(depth: number): unknown {
  let inner: unknown = '1';
  for (let level = 0; level < depth; level += 1) inner = { kind: level % 2 ? 'row' : 'column', items: [inner] };
  return inner;
}

function nestedLists(depth: number): unknown {
  let inner: unknown = [];
  for (let level = 0; level < depth; level += 1) inner = [inner];
  return inner;
}
