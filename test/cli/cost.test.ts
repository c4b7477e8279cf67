/** `cost` in the words of its help: the answer, its data and table, variants, papers, and what it refuses. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { readPdf } from '../outputs/read-pdf';
import { jobText, runHere } from './run-cli';

const folder = await makeTempFolder();
const FERN = 'resources/samples/2-fern-cyanotype.json';
const CHART = 'resources/samples/1-sea-chart.json';
const SHELF = ['--shelf', 'resources/shelf.csv'];
const PRICES = ['--prices', 'resources/prices.csv'];
const BOTH = [...SHELF, ...PRICES];

async function file(name: string, text: string): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

const plain = jobText({
  title: 'Plain',
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: 0, lip: 0, mouldingWidth: '2 in', name: 'Ash' },
  mat: { layers: [{ board: 'Soft white' }] },
  package: { mountBoard: { without: true }, backing: { material: 'none' }, dustCover: false, glazing: { material: 'none' }, hinging: { method: 'none' } }, // prettier-ignore
  hanging: { hanger: 'rings on hooks' },
});
const job = await file('plain.json', plain);
const shelf = await file(
  'shelf.csv',
  'kind,name,width,height,face,load,price,per\nmoulding,Ash,,,2 in,,1.80,ft\nboard,Soft white,32 in,40 in,,,11.00,sheet\nring,Ring,,,,20 lb,0.20,\nhook,Hook,,,,30 lb,0.35,\n',
);
const list = await file(
  'prices.csv',
  'what,value,per,name\ncurrency,EUR\nmitre waste,8 x face\nfirst opening,4.00\npart,0.60,m,points\nmargin,50 %\nrounding,up to 0.50\ntax,8 %,,Sales tax\n',
);
const GIVEN = ['--shelf', shelf, '--prices', list];

interface Answer {
  readonly ok: boolean;
  readonly jobs: readonly {
    readonly name: string;
    readonly lines: readonly { readonly what: string; readonly amount?: string; readonly basis: string }[];
    readonly notCounted: readonly string[];
    readonly total: string;
  }[];
  readonly together?: string;
  readonly compared?: readonly { readonly cells: readonly { readonly amount?: string; readonly more?: string }[] }[];
  readonly files?: readonly string[];
  readonly problems: readonly { readonly code: string; readonly at: string }[];
}

async function data(words: readonly string[], code = 0): Promise<Answer> {
  const ran = await runHere(['cost', ...words, '--json']);
  expect(ran.code).toBe(code);
  return JSON.parse(ran.out) as Answer;
}

describe('the answer', () => {
  it('in words is the sum that a pencil has', async () => {
    const { code, out, err } = await runHere(['cost', job, ...GIVEN]);
    expect([code, err]).toEqual([0, '']);
    // 88 in at 1.80 a foot (16 x 20 in of moulding 2 in wide: trade pages), 72 in round at 0.60 a metre, 2 x 0.20, 2 x 0.35.
    expect(out).toMatch(/Moulding +88 in +13\.20 +88 in of “Ash” at 1\.80 per ft: 2 x \(16 \+ 20\) \+ 8 x 2\n/);
    expect(out).toMatch(/Points +72 in +1\.10 +once round 16 x 20 in at 0\.60 per m\n/);
    expect(out).toMatch(/Openings +1 window +4\.00 +first at 4\.00\n/);
    // 11.00 + 13.20 + 1.10 + 0.70 + 0.40 + 4.00 = 30.40; as much again is 60.80, up to 61.00, 8 % of that 4.88.
    expect(out).toMatch(
      /Cost +30\.40 +everything is counted\n +Margin +30\.40 +margin 50 % = markup 100 %\n +Price +60\.80\n/,
    );
    expect(out).toMatch(
      /Rounding +0\.20 +up to a multiple of 0\.50\n +Price, rounded +61\.00\n +Sales tax +4\.88 +8 % of 61\.00\n +Total +EUR 65\.88/,
    );
  });

  it('as data has amounts as decimals in text', async () => {
    const { jobs, together } = await data([job, ...GIVEN]);
    expect(jobs[0]).toMatchObject({ name: 'Plain', total: '65.88', notCounted: [] });
    expect(jobs[0]!.lines.find(({ what }) => what === 'Rings')!.amount).toBe('0.4');
    expect(together).toBe('65.88');
  });

  it('as a table has a row for every line and sum', async () => {
    const { code, out } = await runHere(['cost', job, ...GIVEN, '--csv']);
    expect(code).toBe(0);
    const rows = out.trimEnd().split('\r\n');
    expect(rows[0]).toBe('job,title,group,what,quantity,basis,amount,currency');
    expect(rows).toContain('1,Plain,Fixings,Rings,"2 pieces",2 of “Ring” at 0.20 each,0.40,EUR');
    expect(rows.at(-1)).toBe('1,Plain,Sums,Total,"",tax on top of the price,65.88,EUR');
  });

  it('of a job from standard input', async () => {
    expect((await runHere(['cost', '-', ...GIVEN], { input: plain })).out).toContain('EUR 65.88');
  });

  it('tells what has no price as not counted', async () => {
    const { jobs, together } = await data([CHART, ...BOTH]);
    expect(jobs[0]!.notCounted).toContain('Moulding');
    expect(jobs[0]).toMatchObject({ isOpen: true, total: together });
    const { out } = await runHere(['cost', CHART, ...BOTH]);
    expect(out).toMatch(/Cost +at least \d+\.\d\d +without moulding/);
    expect(out).toMatch(/Total +at least EUR \d+\.\d\d /);
    const rows = (await runHere(['cost', CHART, ...BOTH, '--csv'])).out.trimEnd().split('\r\n');
    expect(rows.at(-1)).toMatch(/,Sums,Total,"",at least; .*,\d+\.\d\d,EUR$/);
    expect((await data([job, ...GIVEN])).jobs[0]).toMatchObject({ isOpen: false });
  });
});

describe('several jobs', () => {
  it('share their sheets and have a sum', async () => {
    const { jobs, together } = await data([job, job, ...GIVEN]);
    expect(jobs.map(({ lines }) => lines.find(({ what }) => what === 'Mat layer 1')!.amount)).toEqual(['5.5', '5.5']);
    expect(Number(together)).toBeCloseTo(Number(jobs[0]!.total) + Number(jobs[1]!.total), 9);
    expect((await runHere(['cost', job, job, ...GIVEN])).out).toMatch(/\n2 jobs together: EUR \d+\.\d\d\n/);
  });

  it('as variants pay their own sheets, and stand side by side', async () => {
    const { compared, jobs, together } = await data([job, FERN, ...GIVEN, '--compare']);
    expect(jobs[0]!.total).toBe('65.88');
    expect(together).toBeUndefined();
    expect(compared!.every(({ cells }) => cells.length === 2)).toBe(true);
    const { out } = await runHere(['cost', job, FERN, ...GIVEN, '--compare']);
    expect(out).toMatch(/^1 {2}Plain\n2 {2}Lady fern, cyanotype\n/);
    expect(out).toMatch(/Openings +4\.00 +4\.00 \(same\)\n/);
  });

  it('of different pictures are no variants, and it says how they are told together', async () => {
    const { code, err } = await runHere(['cost', CHART, FERN, ...BOTH, '--compare']);
    expect([code, err.includes('[variants-differ]')]).toEqual([0, true]);
    expect((await runHere(['cost', job, job, ...GIVEN, '--compare'])).err).toBe('');
    expect((await runHere(['cost', CHART, FERN, ...BOTH])).err).not.toContain('variants-differ');
  });

  it('say of which file a problem is', async () => {
    const wrong = await file('wrong.json', jobText({ pictures: [{ size: '8 x 10 in' }], frame: { size: '6 x 6 in' } }));
    const { ok, problems } = await data([job, wrong, ...GIVEN], 1);
    expect([ok, problems.some(({ at }) => at.startsWith(wrong))]).toEqual([false, true]);
  });
});

describe('ready-made against made to size', () => {
  it('stand side by side with the totals of the whole sheet', async () => {
    const { jobs } = await data([FERN, ...BOTH, '--against-custom', '--moulding', 'Walnut stick']);
    expect(jobs.map(({ name }) => name)).toEqual([
      'Ready-made “Ash 12x16”, 12 x 16 in',
      'Ready-made “Ash 14x18”, 14 x 18 in',
      'Ready-made “Ash 16x20”, 16 x 20 in',
      'Made to size of “Walnut stick”, 16 x 20 in',
    ]);
    expect(jobs.every(({ notCounted }) => notCounted.length === 0)).toBe(true);
    // 2 x (16 1/8 + 20 1/8) + 8 x 1 1/4 = 82 1/2 in, at 5.40 a foot.
    expect(jobs[3]!.lines.find(({ what }) => what === 'Moulding')!.amount).toBe('37.13');
  });
});

describe('papers', () => {
  it('are written where they are named, and never over a file unasked', async () => {
    const [proposal, sheet] = [join(folder, 'proposal.pdf'), join(folder, 'sheet.pdf')];
    const words = [job, ...GIVEN, '--proposal', proposal, '--sheet', sheet];
    const { files } = await data(words);
    expect(files).toEqual([proposal, sheet]);
    const bytes = await readFile(proposal);
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const again = await runHere(['cost', ...words]);
    expect([again.code, again.out]).toEqual([2, '']);
    expect(again.err).toContain('--replace');
    expect(await runHere(['cost', ...words, '--replace', '--without-prices'])).toMatchObject({ code: 0 });
    expect((await readFile(proposal)).equals(bytes)).toBe(false);
  });

  it('name the shop of the price list, and the customer of the words', async () => {
    const path = join(folder, 'named.pdf');
    const named = await file('named.csv', `${await readFile(list, 'utf8')}shop,Village library,,\n`);
    await data([job, '--shelf', shelf, '--prices', named, '--proposal', path, '--for', ' The school ']);
    const { pages } = readPdf(await readFile(path));
    const words = pages.flatMap((page) => page.words.map(({ text }) => text)).join(' ');
    expect(words).toContain('Village library');
    expect(words).toContain('For The school');
  });

  it('are refused in one place, and where there is no folder', async () => {
    const one = join(folder, 'one.pdf');
    expect(await runHere(['cost', job, ...GIVEN, '--proposal', one, '--sheet', one])).toMatchObject({
      code: 2,
      out: '',
    });
    expect(await runHere(['cost', job, ...GIVEN, '--proposal', join(folder, 'nowhere', 'one.pdf')])).toMatchObject({ code: 2, out: '' }); // prettier-ignore
  });
});

describe('without a shelf', () => {
  it('goes on, and says what is not counted for want of it', async () => {
    const { code, out } = await runHere(['cost', FERN, ...PRICES]);
    expect(code).toBe(0);
    expect(out).toMatch(/Moulding +1 frame +not counted/);
    expect(out).toMatch(/Mat layer 1 +1 piece +not counted/);
    expect(out).toMatch(/Openings +1 window +4\.00/);
  });
});

describe('what is refused', () => {
  it.each([
    [[FERN, ...SHELF], '--prices'],
    [[FERN, ...SHELF, '--prices', 'nowhere.csv'], 'is not there'],
    [[FERN, ...PRICES, '--shelf', 'nowhere.csv'], 'is not there'],
    [[FERN, ...BOTH, '--moulding', 'Elm'], '[moulding-unknown]'],
    [[FERN, ...BOTH, '--compare'], '[variants-too-few]'],
    [[FERN, CHART, ...BOTH, '--against-custom'], '[variants-too-many]'],
    [[FERN, CHART, ...BOTH, '--against-custom', '--compare'], 'cannot be used with'],
    [[FERN, ...BOTH, '--json', '--csv'], 'cannot be used with'],
    [[FERN, ...BOTH, '--without-prices'], 'Name its file with --proposal'],
    [[FERN, ...BOTH, '--paper', 'a5'], 'Allowed choices'],
    [[FERN, ...BOTH, '--for', 'The school'], 'only a proposal'],
    [[FERN, ...BOTH, '--proposal', 'p.pdf', '--for', 'a'.repeat(201)], '200 at the most'],
    [['nowhere.json', ...BOTH], 'is not there'],
  ])('%j', async (words, hint) => {
    const { code, err } = await runHere(['cost', ...words]);
    expect([code, err.includes(hint)]).toEqual([2, true]);
  });

  it('a broken job is told before a shelf or a price list that is not there', async () => {
    const broken = await file('broken.json', '{ "format": "matwright-job", "version": 1, "pictures": 3 }');
    const { code, err } = await runHere(['cost', broken, '--shelf', 'nowhere.csv', '--prices', 'nowhere-either.csv']);
    expect([code, err.includes('pictures'), err.includes('nowhere')]).toEqual([1, true, false]);
  });

  it('a decimal comma without quotes is told as what it is', async () => {
    const torn = await file('torn.csv', 'what,value,per,name\ncurrency,EUR\nfirst opening,4,00\noverhead,12,5 %\n');
    const { code, err } = await runHere(['cost', job, '--prices', torn]);
    const said = err.replace(/\s+/g, ' ');
    expect(code).toBe(2);
    expect(said).toContain(
      'Line 3, column “value”: “4,00” stands in two cells; write 4.00, or quote the cell: "4,00".',
    );
    expect(said).toContain('Line 4, column “value”: “12,5 %” stands in two cells; write 12.5 %, or quote the cell: "12,5 %".'); // prettier-ignore
  });

  it('a price list with a wrong cell says its file, line and column', async () => {
    const wrong = await file('wrong.csv', 'what,value\ncurrency,EUR\nhour,24 EUR\n');
    const { code, err } = await runHere(['cost', job, '--shelf', shelf, '--prices', wrong]);
    expect(code).toBe(2);
    expect(err).toContain(`${wrong} line 3, column value`);
    const { problems } = await data([job, '--shelf', shelf, '--prices', wrong], 2);
    expect(problems[0]!.code).toBe('amount-unreadable');
  });
});
