/** Measures of a moulding that can't be together: one rule for the frame of a job and for what lies on a shelf. */
import { missedLimit, type Missed } from '../limit-text';
import type { Problem } from '../problem';
import type { Showing } from '../units';

/** As far as it is known, mm; a measure that could not be read is NaN, and nothing is told of it. */
export interface Profile {
  /** Of the face. */
  readonly width?: number | undefined;
  readonly lip?: number | undefined;
  /** Front to back. */
  readonly depth?: number | undefined;
  /** From the back of the lip to the back of the frame. */
  readonly rabbetDepth?: number | undefined;
  /** Of a float frame, from its ledge to its front. */
  readonly insideDepth?: number | undefined;
  /** From the back of the lip to the front of each groove. */
  readonly grooves?: readonly number[];
}

export interface ProfileFault extends Required<Pick<Problem, 'code' | 'value' | 'limit' | 'remedy'>> {
  readonly of: 'width' | 'depth' | 'grooves';
  /** Of a groove, which of them. */
  readonly index?: number;
  /** Both measures in a sentence without capital and full stop, for either may be the slip. */
  readonly words: string;
}

export function profileFaults(profile: Profile, showing: Showing): ProfileFault[] {
  const { width = NaN, lip = NaN, depth = NaN, rabbetDepth = NaN, insideDepth = NaN, grooves = [] } = profile;
  const told = (mm: number, limit: number, bound: 'least' | 'most') => missedLimit(mm, limit, bound, showing);
  const shallower = (inside: number, what: string): ProfileFault[] => {
    if (!(depth < inside)) return [];
    const { value, limit } = told(depth, inside, 'least');
    return [
      {
        code: 'moulding-too-shallow',
        of: 'depth',
        value,
        limit,
        words: `the moulding is ${value} deep in all, less than ${what} of ${limit}; one of the two is wrong`,
        remedy: `measure both: the moulding from its front to its back, and ${what}`,
      },
    ];
  };
  return [
    ...(width < lip ? [narrower(told(width, lip, 'least'))] : []),
    ...shallower(rabbetDepth, 'its own rabbet'),
    ...shallower(insideDepth, 'its own inside depth'),
    ...grooves.flatMap((groove, index): ProfileFault[] => {
      const [back, what] = Number.isNaN(rabbetDepth) ? [depth, 'moulding'] : [rabbetDepth, 'rabbet'];
      return groove >= back ? [behind(told(groove, back, 'most'), what, index)] : [];
    }),
  ];
}

function narrower({ value, limit }: Missed): ProfileFault {
  return {
    code: 'moulding-narrower-than-lip',
    of: 'width',
    value,
    limit,
    words: `the moulding is ${value} wide, narrower than its own lip of ${limit}`,
    remedy: 'measure the face of the moulding from its outer edge to the sight edge',
  };
}

function behind({ value, limit }: Missed, what: string, index: number): ProfileFault {
  return {
    code: 'groove-behind-frame',
    of: 'grooves',
    index,
    value,
    limit,
    words: `groove ${index + 1} begins ${value} behind the lip, but the ${what} is only ${limit} deep; a groove has wood behind it`,
    remedy: 'measure both from the back of the lip: to the front of the groove, and to the back of the frame',
  };
}
