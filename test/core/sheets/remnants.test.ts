/** What is left of sheets: common practice, no source: under 2 in discard; at least 10 x 12 in keep as board; long strips keep. */
import { expect, it } from 'vitest';
import { keepingOf } from '../../../src/core/sheets/remnants';

const box = (width: number, height: number) => ({ left: 0, bottom: 0, right: width * 25.4, top: height * 25.4 });

it.each([
  [10, 12, 'board'],
  [12, 10, 'board'],
  [9.9, 12, 'waste'],
  [9, 30, 'strip'],
  [2, 24, 'strip'],
  [1.9, 40, 'waste'],
  [2, 23, 'waste'],
])('%s x %s in is kept as %s', (width, height, kept) => expect(keepingOf(box(width, height))).toBe(kept));
