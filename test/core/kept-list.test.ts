/** A kept list that two programs change at once: nothing that either did is lost, and what clashes is asked about. */
import { describe, expect, it } from 'vitest';
import { changeList, reversed, settle, type KeptThings } from '../../src/core/kept-list';

interface Thing {
  readonly name: string;
  readonly count?: number;
  readonly price?: string;
}
const THINGS: KeptThings<Thing> = {
  nameOf: ({ name }) => name,
  isSame: (one, other) => JSON.stringify(one) === JSON.stringify(other),
};
const ash = { name: 'Ash', count: 3, price: '9.50' };
const oak = { name: 'Oak', count: 1 };

describe('a change to what another changed meanwhile', () => {
  it('keeps what each changed of the same thing', () => {
    const { change, conflicts } = settle<Thing>([ash, oak], [{ ...ash, price: '11.11' }, oak], { keep: [{ ...ash, count: 2 }] }, THINGS); // prettier-ignore
    expect(conflicts).toEqual([]);
    expect(changeList<Thing>([{ ...ash, price: '11.11' }, oak], change, THINGS)).toEqual([
      { name: 'Ash', count: 2, price: '11.11' },
      oak,
    ]);
  });

  it('keeps a part that the other took away, and one that it added', () => {
    const without = { name: 'Ash', count: 3 };
    const { change } = settle<Thing>([ash], [without], { keep: [{ ...ash, count: 2 }] }, THINGS);
    expect(change.keep).toEqual([{ name: 'Ash', count: 2 }]);
    const added = settle<Thing>([oak], [{ ...oak, price: '4' }], { keep: [{ ...oak, count: 5 }] }, THINGS);
    expect(added.change.keep).toEqual([{ name: 'Oak', count: 5, price: '4' }]);
  });

  it('asks where both changed one part, or one took it out', () => {
    const theirs = { ...ash, count: 7 };
    expect(settle<Thing>([ash], [theirs], { keep: [{ ...ash, count: 2 }] }, THINGS).conflicts).toEqual([theirs]);
    expect(settle<Thing>([ash], [theirs], { remove: ['Ash'] }, THINGS).conflicts).toEqual([theirs]);
  });
});

describe('a change taken back', () => {
  it.each([
    [{ keep: [{ ...ash, count: 2 }] }],
    [{ keep: [{ name: 'Elm' }] }],
    [{ remove: ['Oak'] }],
    [{ keep: [{ name: 'Elm' }], remove: ['Ash', 'Oak'] }],
  ])('leaves the same things: %j', (change) => {
    const before: readonly Thing[] = [ash, oak];
    const changed = changeList<Thing>(before, change, THINGS);
    const back = changeList(changed, reversed(before, change, THINGS), THINGS);
    expect([...back].sort((a, b) => a.name.localeCompare(b.name))).toEqual(before);
  });

  it('leaves what another did to other things', () => {
    const change = { remove: ['Oak'] };
    const now = [{ ...ash, count: 9 }];
    expect(changeList<Thing>(now, reversed<Thing>([ash, oak], change, THINGS), THINGS)).toEqual([
      { ...ash, count: 9 },
      oak,
    ]);
  });
});
