/** Checks what comes over the wire before any handler sees it: a screen is not trusted to send well-formed requests. */
import { z } from 'zod';
import type { CallName, HostCalls } from '../bridge';
import { MACHINE_LIMITS, ROTARY_AXES, type MachineMeasure } from '../core/cutting/machine-options';
import { CORNERS } from '../core/cutting/tool-paths';
import { boardsUsed, costPapersOptions } from './cost-requests';
import { sheetPapersOptions, sheetPlans } from './sheet-requests';

/** Longest path of the common systems (Linux: PATH_MAX, 4096 bytes). */
const path = z.string().min(1).max(4096);
const nothing = z.strictObject({});
const title = z.string().max(200);
const id = z.string().regex(/^[A-Za-z0-9-]{1,64}$/);
/** Longer texts are refused in words by the handlers; this only bounds what is carried. */
const text = z.string().max(20_000_000);

const within = (name: MachineMeasure) => z.number().min(MACHINE_LIMITS[name][0]).max(MACHINE_LIMITS[name][1]);

const machine = z.strictObject({
  corner: z.enum(CORNERS).optional(),
  curves: z.enum(['arcs', 'lines']).optional(),
  tolerance: within('tolerance').optional(),
  safeHeight: within('safeHeight').optional(),
  depth: within('depth').optional(),
  feed: within('feed').optional(),
  rotary: z.enum(ROTARY_AXES).optional(),
  liftAngleDegrees: within('liftAngleDegrees').optional(),
});

/** Of a file in a folder that is named apart: no way out of it on any system. */
// eslint-disable-next-line no-control-regex
const plainName = z.string().regex(/^[^./\\:*?"<>|\u0000-\u001f][^/\\:*?"<>|\u0000-\u001f]{0,200}$/);
const keptList = z.enum(['cutters', 'shelf', 'stock', 'prices']);
const paper = z.enum(['blank', 'letter', 'legal', 'tabloid', 'a4', 'a3']);
const units = z.enum(['in', 'mm', 'cm']);

const options = z.strictObject({
  paper,
  view: z.enum(['back', 'front']),
  units,
  only: z
    .array(
      z.enum([
        'template',
        'cut-card',
        'cut-list',
        'proof',
        'package-sheet',
        'hanging-sheet',
        'wall-template',
        'dxf',
        'svg',
        'hpgl',
        'gcode',
        'csv',
        'json',
      ]),
    )
    .max(13),
  turnEverySecondPage: z.boolean(),
  machine: machine.optional(),
});

type RequestSchemas = { readonly [K in CallName]: z.ZodType<HostCalls[K]['request']> };

const schemas: RequestSchemas = {
  info: nothing,
  samples: nothing,
  demoPrices: nothing,
  pickJob: z.strictObject({
    title: title.optional(),
    of: z.enum(['job', 'table', 'job or list']).optional(),
    many: z.boolean().optional(),
  }),
  pickSavePath: z.strictObject({ suggested: path, title: title.optional() }),
  pickFolder: z.strictObject({ suggested: path.optional() }),
  listFolder: z.strictObject({ folder: path.optional(), endings: z.array(z.string().max(20)).max(20) }),
  readJob: z.strictObject({ path }),
  saveJob: z.strictObject({ path, text, stamp: z.string().max(200).optional(), replace: z.boolean().optional() }),
  readKept: z.strictObject({ list: keptList }),
  saveKept: z.strictObject({
    list: keptList,
    text,
    stamp: z.string().max(200).optional(),
    setAside: z.boolean().optional(),
    lastUse: text.optional(),
  }),
  writeCalibrationSheet: z.strictObject({ path, paper, units, cutter: title.optional(), replace: z.boolean() }),
  writeFolder: z.strictObject({
    folder: path,
    files: z
      .array(z.strictObject({ name: plainName, text }))
      .min(1)
      .max(2000),
    replace: z.boolean(),
  }),
  readPicture: z.strictObject({ file: path, jobPath: path.optional() }),
  exportJob: z.strictObject({
    id,
    text,
    jobPath: path.optional(),
    folder: path,
    baseName: z.string().max(1000),
    options,
    shelf: text.optional(),
    replace: z.boolean(),
  }),
  exportSheets: z.strictObject({
    id,
    plans: sheetPlans,
    folder: path,
    baseName: z.string().max(1000),
    options: sheetPapersOptions,
    replace: z.boolean(),
  }),
  exportCosts: z.strictObject({
    id,
    jobs: z.array(text).min(1).max(100),
    shelf: text,
    prices: text,
    boards: boardsUsed.optional(),
    options: costPapersOptions,
    folder: path,
    baseName: z.string().max(1000),
    replace: z.boolean(),
  }),
  cancel: z.strictObject({ id }),
  keepRecovery: z.strictObject({ id, path: path.optional(), title: z.string().max(10_000), text }),
  listRecoveries: nothing,
  dropRecovery: z.strictObject({ id }),
  showInFolder: z.strictObject({ path }),
  allowClose: nothing,
};

/** True of the name of a call; own keys only, so that `constructor` is not one. */
export function isCallName(name: unknown): name is CallName {
  return typeof name === 'string' && Object.hasOwn(schemas, name);
}

/** The request as the call's handler takes it, or what is wrong with it. */
export function checkRequest<K extends CallName>(
  name: K,
  request: unknown,
): { readonly ok: true; readonly request: HostCalls[K]['request'] } | { readonly ok: false; readonly message: string } {
  const checked = schemas[name].safeParse(request);
  if (checked.success) return { ok: true, request: checked.data };
  const [issue] = checked.error.issues;
  const place = issue?.path.length ? `“${issue.path.join('.')}”` : 'the request';
  return {
    ok: false,
    message: `The call “${name}” can't be answered: ${place}: ${issue?.message ?? 'not as agreed'}.`,
  };
}
