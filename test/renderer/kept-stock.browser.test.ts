/** The kept stock in two windows at once: what both take counts, and what one takes back leaves the other's. */
import { describe, expect, it } from 'vitest';
import type { HostClient, KeptFile, Reply } from '../../src/bridge';
import { stockWork } from '../../src/core/sheets/stock-work';
import { countOf, type StockSheet } from '../../src/core/sheets/stock-sheet';
import type { Showing } from '../../src/core/units';
import { KeptList } from '../../src/renderer/files/kept-list.svelte';
import { stockKind } from '../../src/renderer/files/list-kinds';
import { keepRow } from '../../src/renderer/files/keep-stock';
import { useSheets } from '../../src/renderer/files/use-sheets';
import { planBoard } from '../../src/core/sheets/planned-board';
import { boardStock } from '../../src/core/sheets/board-stock';
import { USUAL_KEEP } from '../../src/core/sheets/remnants';
import type { Workbench } from '../../src/renderer/workbench';

const showing: Showing = { unit: 'in', inchStep: 16, metricStep: 0.5 };
const START = 'board,kind,width,height,count\nWarm white,sheet,32 in,40 in,9\nWarm white,remnant,16 in,20 in,1\n';

/** One file that any number of windows read and save, as the host's rules have it. */
class Disk {
  text = START;
  lastUse: string | undefined;
  saves = 0;
  /** Done once, between a window's reading and its saving. */
  meanwhile: (() => Promise<void>) | undefined;

  readonly host = { call: (name: string, request: never) => this.#call(name, request) } as unknown as HostClient;

  async #call(name: string, request: { text: string; stamp?: string; lastUse?: string }): Promise<Reply<KeptFile>> {
    if (name === 'saveKept') {
      const work = this.meanwhile;
      this.meanwhile = undefined;
      await work?.();
      if (request.stamp !== this.text)
        return { ok: false, failure: { code: 'changed-on-disk', message: 'changed by another' } };
      this.text = request.text;
      if (request.lastUse !== undefined) this.lastUse = request.lastUse === '' ? undefined : request.lastUse;
      this.saves += 1;
    }
    const { text, lastUse } = this;
    return { ok: true, value: { path: '/state/stock.csv', text, stamp: text, ...(lastUse === undefined ? {} : { lastUse }) } }; // prettier-ignore
  }
}

async function newWindow(disk: Disk): Promise<KeptList<StockSheet>> {
  const list = new KeptList(
    disk.host,
    stockKind(() => 'in'),
  );
  await list.load();
  return list;
}

const row = (list: KeptList<StockSheet>, kind: StockSheet['kind']) => list.list.find((one) => one.kind === kind);
const countsOf = ({ list }: KeptList<StockSheet>) => list.map((one) => [one.kind, countOf(one)]);
const take = (list: KeptList<StockSheet>, kind: StockSheet['kind'], count: number) =>
  list.changeBy(stockWork([{ row: row(list, kind)!, takes: count, puts: 0 }], showing));
const never = () => Promise.reject(new Error('nothing is asked about'));

describe('two windows', () => {
  it('that take of one row both count', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    expect(await Promise.all([take(one, 'sheet', 2), take(other, 'sheet', 3)])).toEqual(['done', 'done']);
    await one.load();
    expect(countsOf(one)).toEqual([['sheet', 4], ['remnant', 1]]); // prettier-ignore
  });

  it('take back by difference', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    await take(one, 'sheet', 2);
    await take(other, 'remnant', 1);
    await take(other, 'sheet', 1);
    expect(countsOf(other)).toEqual([['sheet', 6]]);
    expect(await one.takeBack(never)).toBe('done');
    expect(countsOf(one)).toEqual([['sheet', 8]]);
    expect(one.canTakeBack).toBe(false);
    // What the other did is the other's to take back, one change with each press.
    expect(await one.takeBack(never)).toBe('given up');
    expect(await other.takeBack(never)).toBe('done');
    expect(await other.takeBack(never)).toBe('done');
    expect(countsOf(other)).toEqual([['sheet', 9], ['remnant', 1]]); // prettier-ignore
  });

  it('do not take what the other has used up: it is told, and nothing is changed', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    await take(one, 'remnant', 1);
    expect(await take(other, 'remnant', 1)).toMatchObject({ problems: [{ code: 'stock-used-up', value: '0' }] });
    expect([disk.saves, countsOf(other)]).toEqual([1, [['sheet', 9]]]);
    expect(other.canTakeBack).toBe(false);
  });

  it('stop after some tries where another goes on changing the list', async () => {
    const disk = new Disk();
    const list = await newWindow(disk);
    const again = () => {
      disk.text += ' ';
      disk.meanwhile = () => Promise.resolve(again());
    };
    again();
    expect(await take(list, 'sheet', 1)).toEqual({
      failure: 'Another program goes on changing the stock; close it and try again.',
    });
    expect(disk.saves).toBe(0);
  });
});

describe('taking back', () => {
  it('goes a step further with each press, to the letter, until nothing is left', async () => {
    const disk = new Disk();
    const list = await newWindow(disk);
    await take(list, 'remnant', 1);
    const between = disk.text;
    await take(list, 'sheet', 2);
    expect(await list.takeBack(never)).toBe('done');
    expect(disk.text).toBe(between);
    expect(await list.takeBack(never)).toBe('done');
    expect([disk.text, list.canTakeBack]).toEqual([START, false]);
    expect(await list.takeBack(never)).toBe('given up');
    expect([disk.text, disk.saves]).toEqual([START, 4]);
  });

  it('leaves what came later where an earlier change is named, and that one then stands no more', async () => {
    const disk = new Disk();
    const list = await newWindow(disk);
    await take(list, 'sheet', 2);
    const first = list.lastChange!;
    await list.change({ keep: [{ ...row(list, 'remnant')!, note: 'by the window' }] }, never);
    expect(await list.takeBack(never, first)).toBe('done');
    expect([list.stands(first), list.canTakeBack]).toEqual([false, true]);
    expect(countsOf(list)).toEqual([['sheet', 9], ['remnant', 1]]); // prettier-ignore
    expect(row(list, 'remnant')?.note).toBe('by the window');
    expect(await list.takeBack(never)).toBe('done');
    expect(row(list, 'remnant')?.note).toBeUndefined();
  });

  it('asks where another has changed the very same row since', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    await one.change({ keep: [{ ...row(one, 'sheet')!, count: 12 }] }, never);
    await take(other, 'sheet', 1);
    await one.load();
    const asked: (number | undefined)[] = [];
    const stay = (theirs: readonly StockSheet[]) => (asked.push(...theirs.map(countOf)), Promise.resolve(false));
    expect(await one.takeBack(stay)).toBe('given up');
    expect([asked, countsOf(one)[0], one.canTakeBack]).toEqual([[11], ['sheet', 11], true]);
  });
});

describe('a use that is kept on record', () => {
  const use = (list: KeptList<StockSheet>, count: number) =>
    list.changeBy(stockWork([{ row: row(list, 'sheet')!, takes: count, puts: 0 }], showing, 'use', [`takes ${count}`]));
  const wordsOf = ({ lastUse }: KeptList<StockSheet>) => (lastUse?.ok ? lastUse.value.words : undefined);

  it('is taken back after a restart, once, and what came by hand since stays', async () => {
    const disk = new Disk();
    await use(await newWindow(disk), 2);
    const list = await newWindow(disk);
    expect([wordsOf(list), list.canTakeBack, list.lastChange]).toEqual([['takes 2'], true, undefined]);
    await list.change({ keep: [{ ...row(list, 'remnant')!, note: 'bent' }] }, never);
    expect(await list.takeUseBack()).toBe('done');
    expect([countsOf(list)[0], row(list, 'remnant')?.note, disk.lastUse]).toEqual([['sheet', 9], 'bent', undefined]);
    expect(await list.takeUseBack()).toBe('given up');
  });

  it('is this window’s own as long as its change stands, and the one before it is the last again after', async () => {
    const disk = new Disk();
    const list = await newWindow(disk);
    await use(list, 2);
    await use(list, 3);
    expect(wordsOf(list)).toBeUndefined();
    expect(wordsOf(await newWindow(disk))).toEqual(['takes 3']);
    await list.takeBack(never);
    expect(wordsOf(await newWindow(disk))).toEqual(['takes 2']);
    await list.takeBack(never);
    expect([disk.text, disk.lastUse, list.canTakeBack]).toEqual([START, undefined, false]);
  });

  it('is not put back twice where another window was faster', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    await use(one, 2);
    await other.load();
    expect(await other.takeUseBack()).toBe('done');
    expect(await one.takeBack(never)).toEqual({
      failure: 'That use was taken back by another window or program meanwhile.',
    });
    expect(disk.text).toBe(START);
    await use(one, 1);
    const [third, fourth] = [await newWindow(disk), await newWindow(disk)];
    const outcomes = await Promise.all([third.takeUseBack(), fourth.takeUseBack()]);
    expect(outcomes.filter((one) => one === 'done')).toHaveLength(1);
    expect(disk.text).toBe(START);
  });

  it('leaves the record of a later one by another', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    await use(one, 2);
    await use(other, 3);
    expect(await one.takeBack(never)).toBe('done');
    expect(countsOf(one)[0]).toEqual(['sheet', 6]);
    expect(wordsOf(one)).toEqual(['takes 3']);
  });

  it('that can’t be read is told, and nothing is changed', async () => {
    const disk = new Disk();
    disk.lastUse = '{';
    const list = await newWindow(disk);
    expect(list.canTakeBack).toBe(true);
    expect(await list.takeUseBack()).toMatchObject({ problems: [{ code: 'use-record-unreadable' }] });
    expect([disk.text, disk.saves]).toEqual([START, 0]);
  });
});

describe('a row that another takes out meanwhile', () => {
  it('is asked about before it is put in anew, also under another size, and stays out at a no', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    const remnant = row(one, 'remnant')!;
    const { nameOf } = one.kind;
    await other.change({ remove: [nameOf(remnant)] }, never);
    const gone: string[] = [];
    const answer = (yes: boolean) => (_: unknown, out: readonly StockSheet[]) => (gone.push(...out.map(nameOf)), Promise.resolve(yes)); // prettier-ignore
    const changed = { ...remnant, width: 15 * 25.4 };
    const change = { keep: [changed], remove: [nameOf(remnant)], of: [nameOf(remnant)] };
    expect(await one.change(change, answer(false))).toBe('given up');
    // Asked again, since it is still not there.
    expect(await one.change(change, answer(false))).toBe('given up');
    expect([gone.length, countsOf(one)]).toEqual([2, [['sheet', 9]]]);
    expect(await one.change(change, answer(true))).toBe('done');
    expect(countsOf(one)).toEqual([['sheet', 9], ['remnant', 1]]); // prettier-ignore
  });

  it('is asked about as well where a change of it is taken back', async () => {
    const disk = new Disk();
    const [one, other] = [await newWindow(disk), await newWindow(disk)];
    const remnant = row(one, 'remnant')!;
    await one.change({ keep: [{ ...remnant, note: 'bent' }] }, never);
    await other.load();
    await other.change({ remove: [one.kind.nameOf(remnant)] }, never);
    const asked: number[] = [];
    expect(await one.takeBack((theirs, gone) => (asked.push(theirs.length, gone.length), Promise.resolve(false)))).toBe('given up'); // prettier-ignore
    expect([asked, countsOf(one)]).toEqual([[0, 1], [['sheet', 9]]]);
  });
});

describe('the text of the file', () => {
  const OWN = 'board,kind,width,height,count,price,rack\nWarm white,sheet,32 in,40 in,9,11.00,A1\nWarm white,remnant,16 in,20 in,1,,"B2, low"\n'; // prettier-ignore
  const start = async () => {
    const disk = new Disk();
    disk.text = OWN;
    return { disk, list: await newWindow(disk) };
  };

  it('keeps the columns that only the user knows, and cells as they were written', async () => {
    const { disk, list } = await start();
    await take(list, 'sheet', 2);
    expect(disk.text).toBe(OWN.replace('40 in,9,', '40 in,7,'));
    await take(list, 'remnant', 1);
    expect(disk.text).toBe(OWN.replace('40 in,9,', '40 in,7,').replace(/Warm white,remnant.*\n/, ''));
    // Changed by another between, so that the line itself has to be put back.
    disk.text = disk.text.replace('11.00', '12.00');
    await list.takeBack(never);
    expect(disk.text).toBe(OWN.replace('40 in,9,11.00', '40 in,7,12.00'));
  });

  it('of a row changed by hand keeps what it says beside, also under another size', async () => {
    const { disk, list } = await start();
    const bench = { stock: list, notice: { say: () => undefined } } as unknown as Workbench;
    const remnant = row(list, 'remnant')!;
    await keepRow(bench, { ...remnant, width: 15 * 25.4, note: 'a corner is bent' }, remnant);
    expect(disk.text).toBe(
      OWN.replace('price,rack', 'price,rack,note').replace('16 in,20 in,1,,"B2, low"', '"15 in",20 in,1,,"B2, low",a corner is bent'), // prettier-ignore
    );
    const sheet = row(list, 'sheet')!;
    const { count: _, ...uncounted } = sheet;
    await keepRow(bench, { ...uncounted, grain: 'width' }, sheet);
    expect(disk.text.split('\n').slice(0, 2)).toEqual([
      'board,kind,width,height,count,price,rack,note,grain',
      'Warm white,sheet,32 in,40 in,,11.00,A1,,width',
    ]);
    await list.takeBack(never);
    await list.takeBack(never);
    expect(disk.text).toBe(OWN);
  });
});

describe('using planned boards', () => {
  const plan = (list: readonly StockSheet[]) => {
    const { stock } = boardStock(list, [], 'in');
    const pieces = [{ id: 'mat', width: 32 * 25.4, height: 24 * 25.4, count: 1, mayTurn: true }];
    const ask = { pieces, stock, kerf: 0, trim: 0, aim: 'cost', seed: 1 } as const;
    return planBoard({ board: 'Warm white', isPriced: false, ask }, { goOn: () => false })!;
  };
  const benchOf = (stock: KeptList<StockSheet>) => {
    const said: string[] = [];
    const tell = ({ title, problems }: { title: string; problems?: readonly { code: string }[] }) => said.push(title, ...(problems ?? []).map(({ code }) => code)); // prettier-ignore
    const bench = { stock, notice: { say: (text: string) => said.push(text) }, dialogs: { tell } } as unknown as Workbench; // prettier-ignore
    return { bench, said };
  };

  it('takes the sheet and puts the rest back, in words', async () => {
    const stock = await newWindow(new Disk());
    const { bench, said } = benchOf(stock);
    const planned = [plan(stock.list)];
    expect(await useSheets(bench, { planned, stock: stock.list, rule: USUAL_KEEP, showing })).toBe(true);
    expect(said).toEqual(['Warm white: takes 1 sheet 32 x 40 in; puts back 1 remnant 16 x 32 in.']);
    expect(countsOf(stock)).toEqual([['sheet', 8], ['remnant', 1], ['remnant', 1]]); // prettier-ignore
    expect(await stock.takeBack(never)).toBe('done');
    expect(countsOf(stock)).toEqual([['sheet', 9], ['remnant', 1]]); // prettier-ignore
  });

  it('is told where others have the sheet', async () => {
    const disk = new Disk();
    const stock = await newWindow(disk);
    const before = stock.list;
    const planned = [plan(before)];
    await take(await newWindow(disk), 'sheet', 9);
    const { bench, said } = benchOf(stock);
    expect(await useSheets(bench, { planned, stock: before, rule: USUAL_KEEP, showing })).toBe(false);
    expect(said).toEqual(['The stock was not changed', 'stock-used-up']);
  });
});
