/** Job files as text: what the user wrote survives, and faults are told with their place. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '../../../src/core/job/json-fault';
import { parseJobText, printJob } from '../../../src/core/job/text';
import type { WrittenJob } from '../../../src/core/job/written';
import { contents } from '../arbitrary-jobs';
import { written } from '../open';

function reopen(text: string): WrittenJob {
  const opened = parseJobText(text);
  if (!opened.ok) throw new Error(opened.problems[0]?.message);
  return opened.value.written;
}

describe('what is written survives open and save', () => {
  it('as it was typed, byte for byte', () => {
    const typed = ['11 1/4', '6-1/2', '6½', '0\'6 1/2"', '16.5 cm', '165.1 mm', '12,5 mm', ' 8 ', 7.25];
    const job = written({
      pictures: typed.map((thickness, index) => ({ size: '20x30', thickness: '1/64', overlap: index % 2 ? 0.25 : String(thickness) })),
      borders: { rule: 'equal', all: '0\'6 1/2"' },
      notes: 'Tab\there, "quotes", ¼ and 🌿\nsecond line',
    }); // prettier-ignore
    const text = printJob(job);
    expect(reopen(text)).toEqual(job);
    expect(printJob(reopen(text))).toBe(text);
  });

  it('is plain JSON, ends with a line break, and keeps short groups on one line', () => {
    const text = printJob(written({ pictures: [{ title: 'Fern', size: '8 x 10 in' }], frame: { size: '11 x 14 in' } }));
    expect(text).toBe(`{
  "format": "matwright-job",
  "version": 1,
  "pictures": [{ "title": "Fern", "size": "8 x 10 in" }],
  "frame": { "size": "11 x 14 in" }
}
`);
  });

  it('of any job, and printing again changes nothing', () => {
    fc.assert(
      fc.property(contents(), (job) => {
        const before = written(job);
        const text = printJob(before);
        expect(JSON.parse(text)).toEqual(before);
        const after = reopen(text);
        expect(after).toEqual(before);
        expect(printJob(after)).toBe(text);
      }),
    );
  });

  it('and keeps the order of keys', () => {
    const job: WrittenJob = { version: 1, pictures: [{ size: '8x10' }], format: 'matwright-job' };
    expect(Object.keys(reopen(printJob(job)))).toEqual(['version', 'pictures', 'format']);
  });
});

describe('what is not JSON', () => {
  const head = '{\n  "format": "matwright-job",\n';
  it.each([
    ['', 'The file is empty'],
    [' \n ', 'The file is empty'],
    ['hello', 'not JSON at line 1, character 1: "hello"'],
    [`${head}  "version": 1,\n}`, 'not JSON at line 4, character 1: "}"'],
    [`${head}  "version": }`, 'not JSON at line 3, character 14: "}"'],
    [`${head}  version: 1 }`, 'not JSON at line 3, character 3: "version: 1 }"'],
    [`${head}  "version": 01 }`, 'not JSON at line 3, character 15: "1 }"'],
    [`${head}  "version": 1 "title": "" }`, 'not JSON at line 3, character 16'],
    [`${head}  "title": "two\nlines" }`, 'not JSON at line 3, character 16'],
    [`${head}  "title": "\\q" }`, 'not JSON at line 3, character 13'],
    [`${head}  "pictures": [1, ] }`, 'not JSON at line 3, character 19: "] }"'],
    [`${head}  "pictures": [ }`, 'not JSON at line 3, character 17: "}"'],
    [`${head}  "version": 1\n} extra`, 'not JSON at line 4, character 3: "extra"'],
    [`${head}  'version': 1 }`, 'not JSON at line 3, character 3'],
    [`${head}  "version": NaN }`, 'not JSON at line 3, character 14: "NaN }"'],
    [`${head}  {"edge":0,"d":1}`, 'line 3, character 3: “{"edge":0,"d” should not be there.'],
    [`${head}  "a\\b": 1 \\u0041`, 'should not be there'],
    [`${head}  "title": "cut\n"`, 'line 3, character 16: the end of the line should not be there.'],
    [`${head}  "title": "a\tb"`, 'line 3, character 14: a tab should not be there.'],
    [head, 'breaks off at line 3, character 1'],
    [`${head}  "title": "cut sho`, 'breaks off at line 3, character 20'],
    [`${head}  "pictures": [{ "size": "8x10" }`, 'breaks off at line 3'],
  ])('%j', (text, words) => {
    const result = parseJobText(text);
    expect(result.ok).toBe(false);
    expect(result.problems).toHaveLength(1);
    expect(result.problems[0]).toMatchObject({ code: 'not-json', severity: 'error', at: '' });
    expect(result.problems[0]?.message).toContain(words);
  });

  it('a mark of byte order at the start is taken off', () => {
    expect(parseJobText(`\uFEFF${printJob(written({ pictures: [{ size: '8x10' }] }))}`).ok).toBe(true);
  });

  it('a file without end is refused', () => {
    expect(parseJobText(' '.repeat(20_000_001)).problems[0]?.code).toBe('file-too-large');
    expect(parseJobText('['.repeat(300_000)).problems[0]?.code).toBe('not-json');
  });

  it('is found wherever a character is lost, doubled or changed, and only then', () => {
    const text = printJob(written({ pictures: [{ title: 'a\\"ü', size: { width: 1.5, height: -2e3 } }], free: [] }));
    const parses = (json: string) => {
      try {
        JSON.parse(json);
        return true;
      } catch {
        return false;
      }
    };
    fc.assert(
      fc.property(
        fc.nat(text.length - 1),
        fc.constantFrom('', ',', '"', '}', ']', '\\', '0', ' ', '\n', 'x'),
        (at, put) => {
          const other = text.slice(0, at) + put + text.slice(at + 1);
          expect(jsonFault(other) === undefined).toBe(parses(other));
        },
      ),
      { numRuns: 2000 },
    );
    fc.assert(
      fc.property(fc.json(), (json) => {
        expect(jsonFault(json)).toBeUndefined();
      }),
    );
  });
});
