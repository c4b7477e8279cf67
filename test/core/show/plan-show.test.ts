/** A show as a whole: known answers, pictures told apart, pictures bound to a frame, patterns. */
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../src/core/geometry/box';
import { readJob } from '../../../src/core/job/read';
import { parseJobText } from '../../../src/core/job/text';
import { layOut } from '../../../src/core/layout/lay-out';
import { money } from '../../../src/core/money';
import { startShelf } from '../../../src/core/shelf/start-shelf';
import { isHung } from '../../../src/core/show/print-list';
import { planShow } from '../../../src/core/show/plan-show';
import { usesText } from '../../../src/core/show/show-words';
import { codesOf, frameOf, frames, list, pattern, pictures, placeOf, plain, plan, shelf, whyOf } from './shows';

const INCH = 25.4;

describe('known answers', () => {
  // An 8 x 10 in 11 x 14 leaves 1 5/8 and 2 1/8; a 5 x 7 in 8 x 10 leaves 1 5/8 (practitioners' cases, common practice).
  const show = pictures('Fern,8 in,10 in', 'Moss,8 in,10 in', 'Kite,5 in,7 in', 'Snail,7 in,5 in');

  it('each picture takes the cheapest that it fits, either way round, with the borders of the trade', () => {
    const answer = plan(show, plain, frames('Small,8 in,10 in,10,', 'Large,11 in,14 in,16.50,'));
    expect(answer.places.map((place) => frameOf(answer, place.picture.title))).toEqual([
      'Large',
      'Large',
      'Small',
      'Small',
    ]);
    const [fern, kite, snail] = [placeOf(answer, 'Fern'), placeOf(answer, 'Kite'), placeOf(answer, 'Snail')];
    if (!isHung(fern) || !isHung(kite) || !isHung(snail)) throw new Error('all have a frame');
    expect(fern.borders.cut.left / INCH).toBeCloseTo(1.625, 9);
    expect(fern.borders.cut.top / INCH).toBeCloseTo(2.125, 9);
    for (const side of SIDES) expect(kite.borders.cut[side] / INCH).toBeCloseTo(1.625, 9);
    expect([snail.blank.width / INCH, snail.blank.height / INCH]).toEqual([10, 8]);
    expect(answer.chosen.cost).toEqual({ by: 'money', amount: money('53') });
    expect(answer.fewest).toEqual({ held: 4, least: 2, sizes: 2 });
    expect(answer.tradeOff.map(({ held }) => held)).toEqual([2, 4, 4, 4, 4, 4]);
    expect(answer.toBuy.map(({ frame, needed, price }) => [frame.name, needed, price])).toEqual([
      ['Small', 2, { by: 'money', amount: money(20) }],
      ['Large', 2, { by: 'money', amount: money(33) }],
    ]);
  });

  it('fewer sizes cost more, and the table says what one more saves', () => {
    const wide = pattern({ borders: { range: { least: '1 1/2 in' } } });
    const answer = plan(show, wide, frames('Small,8 in,10 in,10,', 'Large,11 in,14 in,16.50,'), { aim: 'sizes' });
    expect(answer.fewest).toEqual({ held: 4, least: 1, sizes: 1 });
    expect(answer.chosen).toMatchObject({ held: 4, proven: true, cost: { amount: money(66) } });
    expect(answer.places.every(({ picture }) => frameOf(answer, picture.title) === 'Large')).toBe(true);
    const [one, two, three] = answer.tradeOff;
    expect([one?.saves, two?.saves, three?.saves]).toEqual([undefined, { by: 'money', amount: money(13) }, undefined]);
    expect(usesText(three!.uses)).toBe('2 of 8x10 in, 2 of 11x14 in');
  });

  it('two frames of one size are one size, and the cheaper is taken while there are some', () => {
    const both = frames('Ash,11 in,14 in,12,1', 'Oak,14 in,11 in,15,', 'Pine,16 in,20 in,1,');
    const show = pictures('Fern,8 in,10 in', 'Moss,8 in,10 in', 'Heron,8 in,10 in');
    const ordered = plan(show, plain, both, { most: 1 });
    expect(ordered.sizes.map(({ name }) => name)).toEqual(['11x14 in', '16x20 in']);
    expect(ordered.toBuy.map(({ frame, needed, toOrder }) => [frame.name, needed, toOrder])).toEqual([['Ash', 3, 2]]);
    const there = plan(show, plain, both, { most: 1, onShelfOnly: true });
    expect(there.toBuy.map(({ frame, needed }) => [frame.name, needed])).toEqual([
      ['Ash', 1],
      ['Oak', 2],
    ]);
    expect(there.chosen.cost).toEqual({ by: 'money', amount: money(42) });
  });

  it('with frames only as they are there, a picture makes room for one that fits that frame alone', () => {
    const few = frames('Small,8 in,10 in,16,2', 'Large,11 in,14 in,10,1');
    const wide = pattern({ borders: { range: { least: '1 1/2 in' } } });
    const show = pictures('Kite,5 in,7 in', 'Fern,8 in,10 in', 'Snail,5 in,7 in');
    const answer = plan(show, wide, few, { onShelfOnly: true });
    expect(['Kite', 'Fern', 'Snail'].map((title) => frameOf(answer, title))).toEqual(['Small', 'Large', 'Small']);
    expect(answer.chosen.cost).toEqual({ by: 'money', amount: money(42) });
    expect(frameOf(plan(show, wide, few), 'Kite')).toBe('Large');
  });

  it('where frames run out as many are held as can be, and the others are told', () => {
    const few = frames('Small,8 in,10 in,16,2', 'Large,11 in,14 in,10,0');
    const answer = plan(pictures('Kite,5 in,7 in', 'Snail,5 in,7 in', 'Heron,5 in,7 in'), plain, few, {
      onShelfOnly: true,
    });
    expect(answer.chosen.held).toBe(2);
    const left = answer.places.filter(({ state }) => state === 'left');
    expect(left).toMatchObject([{ why: expect.stringContaining('all used') as string, custom: { width: 196.85 } }]);
    expect(answer.fewest).toEqual({ held: 2, least: 1, sizes: 1 });
  });

  it('copies are counted, hung one by one, and share their mat', () => {
    const show = list('title,width,height,count\nFern,8 in,10 in,3\nKite,5 in,7 in,\n');
    const answer = plan(show, plain, frames('Small,8 in,10 in,10,', 'Large,11 in,14 in,16,'));
    expect(answer.pictures).toBe(4);
    expect(answer.places.map(({ copy }) => copy)).toEqual([1, 2, 3, 1]);
    expect(answer.chosen.cost).toEqual({ by: 'money', amount: money(58) });
    const jobs = answer.places.filter(isHung).map(({ written }) => written);
    expect(new Set(jobs).size).toBe(2);
  });
});

describe('pictures that are told apart', () => {
  const from = frames('Small,8 in,10 in,10,', 'Large,11 in,14 in,16,');

  it('one that no frame takes: with the nearest, by how much it misses, and the size that would do', () => {
    const answer = plan(pictures('Chart,11 in,17 in', 'Stamp,1 in,1 1/2 in', 'Fern,8 in,10 in'), plain, from);
    expect(frameOf(answer, 'Fern')).toBe('Large');
    expect(whyOf(answer, 'Chart')).toBe('The nearest frame, “Large”, is no larger than its window.');
    expect(whyOf(answer, 'Stamp')).toContain('“Small”, leaves it a border of 4 3/8 in at the top');
    expect(whyOf(answer, 'Stamp')).toContain('the greatest is 3 in');
    expect(placeOf(answer, 'Chart')).toMatchObject({ custom: { width: 13.75 * INCH, height: 19.75 * INCH } });
    expect(codesOf(answer)).toContain('pictures-left');
  });

  it('the size made for it keeps every border in range, and is given on wish', () => {
    const weighted = pattern({
      borders: { rule: 'bottom-ratio', ratio: 1.25, range: { least: '1 1/2 in', greatest: '3 in' } },
    });
    const answer = plan(pictures('Chart,11 in,17 in', 'Fern,8 in,10 in'), weighted, from, { allowCustom: true });
    const chart = placeOf(answer, 'Chart');
    if (!isHung(chart)) throw new Error('it is made to size');
    expect(chart.state).toBe('made to size');
    const { top, bottom, left } = chart.borders.cut;
    expect(left).toBeCloseTo(1.5 * INCH, 9);
    // The least height on 1/16 in whose top is 1 1/2 in or more: 16 3/4 + 1 1/2 x 2.25 = 20 1/8.
    expect(chart.blank.height / INCH).toBeCloseTo(20.125, 9);
    expect(top).toBeGreaterThanOrEqual(1.5 * INCH - 1e-6);
    expect(bottom / top).toBeCloseTo(1.25, 9);
    expect(codesOf(answer)).toContain('custom-not-counted');
    expect(layOut(readJobOf(chart.written)).ok).toBe(true);
  });

  it('four equal borders ask for a size of their own, off the step', () => {
    const equal = pattern({ units: 'mm', borders: { rule: 'equal', range: { least: '40 mm' } } });
    const [chart] = plan(pictures('Chart,210.2 mm,297.3 mm', 'B,210.2 mm,297.3 mm'), equal, from).places;
    expect(chart).toMatchObject({ state: 'left' });
    expect(chart).toHaveProperty('custom.width', expect.closeTo(284.2, 9));
    expect(chart).toHaveProperty('custom.height', expect.closeTo(371.3, 9));
  });

  it('one whose overlap covers it all, a canvas, one with a frame of its own; the rest is planned', () => {
    const show = list(
      'title,width,height,kind,overlap,frame\nStrip,3 in,8 in,,2 in,\nSea,16 in,20 in,painting on canvas,,\nGift,8 in,10 in,,,Own\nFern,8 in,10 in,,,\n',
    );
    const answer = plan(show, plain, from);
    expect(frameOf(answer, 'Fern')).toBe('Large');
    expect(whyOf(answer, 'Strip')).toContain('Nothing is left of the window');
    expect(whyOf(answer, 'Sea')).toContain('without a mat');
    expect(placeOf(answer, 'Gift')).toMatchObject({ state: 'own' });
    expect(answer.chosen.held).toBe(1);
    expect(answer.fewest).toEqual({ held: 1, least: 1, sizes: 1 });
  });

  it('one that fits none of the sizes chosen is told which would do', () => {
    const answer = plan(pictures('Fern,8 in,10 in', 'Moss,8 in,10 in', 'Kite,5 in,7 in'), plain, from, { most: 1 });
    expect(whyOf(answer, 'Kite')).toBe('None of the sizes chosen takes it; 8x10 in would.');
    expect(answer.chosen.held).toBe(2);
  });

  it('a shelf without frames leaves all', () => {
    const answer = plan(pictures('Fern,8 in,10 in', 'Kite,5 in,7 in'), plain, shelf('kind,name\nboard,White\n'));
    expect(answer.places.map(({ state }) => state)).toEqual(['left', 'left']);
    expect(whyOf(answer, 'Fern')).toContain('no frame to choose from');
    expect(answer).toMatchObject({ fewest: { held: 0, least: 0 }, chosen: { held: 0, uses: [] }, toBuy: [] });
  });
});

describe('pictures bound to a frame', () => {
  const from = frames('Small,8 in,10 in,10,', 'Large,11 in,14 in,16,', 'Huge,16 in,20 in,30,', 'Given,12 in,16 in,,');
  const bound = (frame: string) => list(`title,width,height,frame\nFern,8 in,10 in,${frame}\nKite,5 in,7 in,\n`);

  it('take it, and its size counts among those chosen', () => {
    const answer = plan([...bound('large'), ...bound('Large').slice(0, 1)], plain, from, { most: 1 });
    expect([frameOf(answer, 'Fern'), frameOf(answer, 'Kite')]).toEqual(['Large', 'left']);
    expect(plan(bound('large'), plain, from, { aim: 'sizes' }).chosen.uses.length).toBe(2);
  });

  it('take it with borders out of range too, which is told', () => {
    const answer = plan(bound('Huge'), plain, from);
    expect(placeOf(answer, 'Fern')).toMatchObject({ state: 'framed', outOfRange: true });
    expect(codesOf(answer)).toContain('bound-frame-out-of-range');
  });

  it('take it without a price, which then is not in the sum', () => {
    const answer = plan(bound('Given'), plain, from);
    expect(frameOf(answer, 'Fern')).toBe('Given');
    expect(placeOf(answer, 'Fern')).not.toHaveProperty('cost');
    expect(answer.chosen.cost).toEqual({ by: 'money', amount: money(10) });
  });

  it('are told apart where it can’t take them', () => {
    const answer = plan(bound('Small'), plain, from);
    expect(whyOf(answer, 'Fern')).toContain('The frame it is bound to, “Small”');
  });

  it('are told that a float frame takes no mat', () => {
    const float = shelf('name,width,height,build,price\nFloat 16x20,16 in,20 in,float,9\nLarge,11 in,14 in,,16\n');
    const answer = plan(bound('float 16x20'), plain, float);
    expect(whyOf(answer, 'Fern')).toBe(
      'The frame it is bound to, “Float 16x20”, can’t be taken: a float frame takes no mat, it is for a canvas or panel only.',
    );
  });

  it('a name that is not on the shelf is an error with its place', () => {
    const result = planShow(bound('Larg'), plain, from);
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'show-frame-unknown', at: 'line 2, column frame' }] });
    expect(result.problems[0]?.message).toContain('Is “Large” meant?');
  });
});

describe('patterns', () => {
  const from = startShelf('inch');
  const show = pictures('Fern,8 in,10 in', 'Kite,5 in,7 in');

  it('borders asked for with the show take the place of the pattern’s range, also in the jobs', () => {
    const answer = plan(show, plain, from, { range: { least: 2 * INCH } });
    expect(answer.range).toEqual({ least: 50.8, greatest: 76.2, measured: 'as cut' });
    for (const place of answer.places.filter(isHung)) {
      expect(place.written.borders?.range).toEqual({ least: '2 in', greatest: '3 in' });
      for (const side of SIDES) expect(place.borders.cut[side]).toBeGreaterThanOrEqual(2 * INCH - 1e-6);
    }
    expect(planShow(show, plain, from, { range: { least: 4 * INCH } })).toMatchObject({
      ok: false,
      problems: [{ code: 'length-out-of-range', at: 'borders.range.greatest' }],
    });
  });

  it('measured as seen, the lip of each frame counts', () => {
    const seen = pattern({ borders: { measured: 'as seen', range: { least: '1 1/2 in', greatest: '2 in' } } });
    const show = pictures('Fern,8 in,10 in', 'Moss,8 in,10 in');
    // 11 1/2 x 13 1/2 leaves 1 7/8 as cut all round: 1 11/16 in sight behind a lip of 1/4, 1 7/16 behind one of 1/2.
    const head = 'name,width,height,lip,price\n';
    expect(frameOf(plan(show, seen, shelf(`${head}Thin,11 1/2 in,13 1/2 in,1/4 in,1`)), 'Fern')).toBe('Thin');
    expect(frameOf(plan(show, seen, shelf(`${head}Wide,11 1/2 in,13 1/2 in,1/2 in,1`)), 'Fern')).toBe('left');
  });

  it('a caption in the pattern goes under every picture', () => {
    const captioned = pattern({
      pictures: [{ id: 'work', size: '8 x 10 in' }],
      windows: { kind: 'column', gap: '1 in', items: ['work', { kind: 'window', use: 'caption', size: '4 x 1 in' }] },
      borders: { range: { least: '1 in' } },
    });
    const answer = plan(show, captioned, from);
    const fern = placeOf(answer, 'Fern');
    if (!isHung(fern)) throw new Error('it has a frame');
    expect(fern.window.height / INCH).toBeCloseTo(9.75 + 1 + 1, 9);
    expect(readJobOf(fern.written).windows).toMatchObject({ kind: 'column' });
  });

  it.each([
    [{ pictures: [{ size: 'A4' }, { size: 'A5' }] }, 'pattern-pictures'],
    [{ pictures: [{ size: 'A4' }], windows: { kind: 'window', size: '4 x 4 in' } }, 'pattern-shows-no-picture'],
  ] as const)('%j is none', (contents, code) => {
    expect(() => pattern(contents as object)).toThrow();
    const opened = parseJobText(JSON.stringify({ format: 'matwright-job', version: 1, ...contents }));
    if (!opened.ok) throw new Error('a job all the same');
    expect(planShow(show, opened.value, from)).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it('what the list says of a picture stands before what the pattern says', () => {
    const mat = pattern({
      pictures: [
        {
          size: '8 x 10 in',
          overlap: 'covers 1/4 in',
          thickness: '1 mm',
          thickest: '2 mm',
          kind: 'print',
          file: 'a.png',
        },
      ],
    });
    const show = list(
      'title,width,height,overlap,thickness,kind\nFern,8 in,10 in,shows 1/8 in,0.2 mm,cyanotype\nKite,5 in,7 in,,,\n',
    );
    const [fern, kite] = plan(show, mat, from)
      .places.filter(isHung)
      .map(({ written }) => written.pictures?.[0]);
    expect(fern).toEqual({
      title: 'Fern',
      kind: 'cyanotype',
      size: '8 x 10 in',
      overlap: 'shows 1/8 in',
      thickness: '0.2 mm',
    });
    expect(kite).toEqual({
      title: 'Kite',
      kind: 'print',
      size: '5 x 7 in',
      overlap: 'covers 1/4 in',
      thickness: '1 mm',
      thickest: '2 mm',
    });
  });

  it('what the shelf says of a frame stands in the job', () => {
    const rich = shelf(
      'name,width,height,rabbet depth,lip,face,depth,build,corners,comes with,weight\nDeep,11 in,14 in,1 in,3/8 in,1 in,1 1/2 in,with back,closed,glazing; backing,2 kg\n',
    );
    const [fern] = plan(pictures('Fern,8 in,10 in', 'Moss,10 in,8 in'), plain, rich).places.filter(isHung);
    expect(fern?.written.frame).toEqual({
      name: 'Deep',
      readyMade: '11x14 in',
      lip: '3/8 in',
      mouldingWidth: '1 in',
      rabbetDepth: '1 in',
      mouldingDepth: '1 1/2 in',
      build: 'with back',
      corners: 'closed',
      comesWith: ['glazing', 'backing'],
      weight: '2 kg',
    });
  });

  it('frames that can’t be used are left out with the reason', () => {
    const odd = shelf(
      'name,width,height,build,lip\nFloat,11 in,14 in,float,\nThick,11 in,14 in,,2 in\nGood,11 in,14 in,,\n',
    );
    const answer = plan(pictures('Fern,8 in,10 in', 'Moss,8 in,10 in'), plain, odd);
    expect(answer.leftOut.map(({ frame, why }) => [frame.name, why])).toEqual([
      ['Float', expect.stringContaining('canvas')],
      ['Thick', expect.stringContaining('narrower than its own lip')],
    ]);
    expect(codesOf(answer).filter((code) => code === 'frame-left-out')).toHaveLength(2);
  });

  it('frames that are only too shallow for every picture are told, with what they lack', () => {
    const odd = shelf('name,width,height,rabbet depth\nShallow,11 in,14 in,1/4 in\nDeep,11 in,14 in,1 in\n');
    const answer = plan(pictures('Fern,8 in,10 in', 'Moss,8 in,10 in'), plain, odd);
    expect(answer.leftOut.map(({ frame }) => frame.name)).toEqual(['Shallow']);
    const told = answer.problems.find(({ code }) => code === 'frame-left-out');
    expect(told?.message).toContain('its rabbet is 1/4 in deep');
    expect(answer.places.every((place) => place.state === 'framed' && place.frame?.name === 'Deep')).toBe(true);
  });
});

function readJobOf(written: unknown) {
  const read = readJob(written);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.job;
}
