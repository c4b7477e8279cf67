/** The table of verbs, in the order in which help lists them. */
import type { Verb } from './verb';
import { calibrateVerb } from './verbs/calibrate';
import { care } from './verbs/care';
import { check } from './verbs/check';
import { cost } from './verbs/cost';
import { describe } from './verbs/describe';
import { exportVerb } from './verbs/export';
import { fit } from './verbs/fit';
import { frames } from './verbs/frames';
import { hangVerb } from './verbs/hang';
import { outline } from './verbs/outline';
import { pieces } from './verbs/pieces';
import { packageVerb } from './verbs/package';
import { schema } from './verbs/schema';
import { shelf } from './verbs/shelf';
import { sheets } from './verbs/sheets';
import { show } from './verbs/show';
import { stock } from './verbs/stock';
import { turn } from './verbs/turn';

export const VERBS: readonly Verb[] = [
  check,
  describe,
  exportVerb,
  frames,
  show,
  packageVerb,
  pieces,
  sheets,
  cost,
  care,
  hangVerb,
  shelf,
  stock,
  fit,
  calibrateVerb,
  outline,
  schema,
  turn,
];
