/** The table of verbs, in the order in which help lists them. */
import type { Verb } from './verb';
import { calibrateVerb } from './verbs/calibrate';
import { check } from './verbs/check';
import { describe } from './verbs/describe';
import { exportVerb } from './verbs/export';
import { fit } from './verbs/fit';
import { outline } from './verbs/outline';
import { schema } from './verbs/schema';
import { show } from './verbs/show';
import { turn } from './verbs/turn';

export const VERBS: readonly Verb[] = [check, describe, exportVerb, fit, show, calibrateVerb, outline, schema, turn];
