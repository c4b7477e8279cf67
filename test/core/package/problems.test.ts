/** What a package gives to say of a job as a whole: never what stops the cutting of its mat, and nothing of jobs that are in order. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseJobText } from '../../../src/core/job/text';
import { layOut } from '../../../src/core/layout/lay-out';
import { packageProblems } from '../../../src/core/package/problems';
import { jsonIn } from '../../helpers/markdown';
import { contents } from '../arbitrary-jobs';
import { tryPlan, written, type Contents } from '../open';
import { opened } from './opened';

function problemsOf(text: string) {
  const read = parseJobText(text);
  const layout = read.ok ? layOut(read.value.job) : undefined;
  if (!read.ok || !layout?.ok) throw new Error('the job can’t be laid out');
  return packageProblems(read.value.job, layout.value);
}

describe('jobs that are in order', () => {
  const examples = jsonIn(readFileSync('resources/README.md', 'utf8')).map((job) => JSON.stringify(job));
  const samples = readdirSync('resources/samples').filter((name) => name.endsWith('.json')).map((name) => readFileSync(`resources/samples/${name}`, 'utf8')); // prettier-ignore

  it.each([...examples, ...samples].map((text, index) => [index + 1, text] as const))(
    'number %i says nothing',
    (_, text) => {
      expect(problemsOf(text)).toEqual([]);
    },
  );
});

describe('too deep a package', () => {
  const frame = (rabbetDepth?: string): Contents => ({
    pictures: [{ size: '8x10' }],
    frame: { size: '11x14', ...(rabbetDepth === undefined ? {} : { rabbetDepth }) },
  });
  const told = (contents: Contents) => {
    const { job, layout } = opened(contents);
    return packageProblems(job, layout);
  };

  it('as named is told more strongly than one that only may be', () => {
    expect(told(frame('1/2'))).toMatchObject([
      { code: 'package-too-deep', severity: 'warning', at: 'frame.rabbetDepth' },
    ]);
    expect(told(frame('9/16'))).toMatchObject([{ code: 'package-may-not-fit', severity: 'warning', limit: '9/16 in' }]);
    expect(told(frame('5/8'))).toEqual([]);
  });

  it('is not spoken of while the depth is not known', () => {
    expect(told(frame())).toEqual([]);
  });

  it('offers its best remedy as a fix', () => {
    const [problem] = told(frame('9/16'));
    expect(problem?.fix).toMatchObject({ label: expect.stringMatching(/^Take a backing/) as string });
    expect(problem?.remedy).toMatch(/; or /);
  });

  it('for its grooves is told at the groove', () => {
    const grooved = { ...frame(), frame: { size: '11x14', build: 'with back' as const, grooves: ['1/8', '3/16'] } };
    expect(told(grooved)).toMatchObject([{ code: 'package-too-deep', at: 'frame.grooves[1]' }]);
  });
});

describe('a groove', () => {
  const told = (frame: Contents['frame'], back: Contents['package'] = {}) => {
    const { job, layout } = opened({ pictures: [{ size: '8x10' }], frame: { size: '11x14', build: 'with back', ...frame }, package: back }); // prettier-ignore
    return packageProblems(job, layout);
  };

  it('that leaves no wood behind the back is told, with a back or a frame that would do', () => {
    // 11/16 in and a back of 3/16 in make 7/8 in of a rabbet of 3/4 in.
    const [problem] = told({ rabbetDepth: '3/4', grooves: ['11/16'] });
    expect(problem).toMatchObject({ code: 'back-not-held', severity: 'warning', at: 'frame.grooves[0]', limit: '3/4 in' }); // prettier-ignore
    // What lies before the back is 0.257 in at its thickest, and a back 0.206 in.
    expect(problem?.remedy).toBe('take a frame with a groove 5/16 in to 1/2 in behind the lip');
    const thin = { backing: { material: 'hardboard' as const, thickness: '1/8', thickest: '1/8' } };
    expect(told({ rabbetDepth: '3/4', grooves: ['5/8'] }, thin)).toMatchObject([{ code: 'back-not-held' }]);
    expect(told({ rabbetDepth: '13/16', grooves: ['5/8'] }, thin)).toEqual([]);
  });

  it('is not spoken of where another holds the back', () => {
    expect(told({ rabbetDepth: '3/4', grooves: ['1/2', '11/16'] })).toEqual([]);
  });
});

it('is never an error: the mat can be cut', () => {
  fc.assert(
    fc.property(contents('given'), fc.integer({ min: 10, max: 300 }), (job, tenths) => {
      const { planned } = tryPlan(written({ ...job, frame: { ...job.frame, rabbetDepth: `${tenths / 10} mm` } }));
      fc.pre(planned !== undefined);
      for (const { severity, message } of packageProblems(planned.job, planned.layout)) {
        expect(severity).not.toBe('error');
        expect(message).not.toMatch(/NaN|undefined|Infinity/);
      }
    }),
    { numRuns: 60, maxSkipsPerRun: 3 },
  );
});
