/** What a plan of sheets looks like when a screen sends it: every field by name, numbers finite, lists of bounded length. */
import { z } from 'zod';
import type { SheetPapersOptions, SheetPlans } from '../bridge';
import { LARGEST } from '../core/job/reader';
import type { Box, Point, Size } from '../core/geometry/box';
import type { PieceKind } from '../core/pieces/piece';
import {
  SHEET_AIMS,
  type FalloutWindow,
  type Pin,
  type SheetsAsk,
  type Stock,
  type WantedPiece,
} from '../core/sheets/ask';
import type { Unplanned } from '../core/sheets/board-asks';
import type { PieceSource, WindowInPiece } from '../core/sheets/piece-source';
import type { CutStep, PlacedPiece, PlannedSheet, SheetPlan } from '../core/sheets/plan';
import type { PlannedBoard } from '../core/sheets/planned-board';
import type { KeepRule } from '../core/sheets/remnants';
import type { Showing } from '../core/units';

/** A field that a type gains has to be told of here too. */
type Fields<T> = Readonly<Record<keyof T, z.ZodType>>;

/** No board and no job is larger, mm. */
const LONGEST = LARGEST;
const words = z.string().max(1000);
const length = z.number().min(0).max(LONGEST);
const side = z.number().positive().max(LONGEST);
const cost = z.number().min(0).max(1e15);
const whole = z.int().min(0).max(1_000_000);
const MANY = 5000;

const size = z.strictObject({ width: side, height: side } satisfies Fields<Size>);
const box = z
  .strictObject({ left: length, bottom: length, right: length, top: length } satisfies Fields<Box>)
  .refine(({ left, bottom, right, top }) => right > left && top > bottom, 'a box needs right > left and top > bottom');

const window = z.strictObject({
  name: words,
  title: words,
  box,
  isRectangle: z.boolean(),
} satisfies Fields<WindowInPiece>);

const KINDS = [
  'glazing',
  'spacer',
  'mat',
  'mount board',
  'backing',
  'dust cover',
] as const satisfies readonly PieceKind[];

const source = z.strictObject({
  job: whole,
  title: words,
  kind: z.enum(KINDS),
  name: words,
  layer: whole.optional(),
  layers: whole.optional(),
  windows: z.array(window).max(400),
} satisfies Fields<PieceSource>);

const piece = z.strictObject({
  id: words,
  width: side,
  height: side,
  count: whole,
  mayTurn: z.boolean(),
  from: source.optional(),
} satisfies Fields<WantedPiece>);

const fallout = z.strictObject({
  piece: whole,
  name: words,
  run: length,
  within: z.strictObject({ x: length, y: length } satisfies Fields<Point>).optional(),
} satisfies Fields<FalloutWindow>);

const stock = z.strictObject({
  id: words,
  kind: z.enum(['sheet', 'remnant', 'fallout']),
  width: side,
  height: side,
  cost,
  count: whole.optional(),
  trim: length.optional(),
  listed: words.optional(),
  window: fallout.optional(),
} satisfies Fields<Stock>);

const pin = z.strictObject({
  sheet: whole,
  stock: whole,
  piece: whole,
  turned: z.boolean(),
  left: length,
  bottom: length,
} satisfies Fields<Pin>);

const keep = z.strictObject({ least: length, board: size, strip: length } satisfies Fields<KeepRule>);

const ask = z.strictObject({
  pieces: z.array(piece).max(MANY),
  stock: z.array(stock).max(MANY),
  kerf: length,
  trim: length,
  stages: whole.optional(),
  longestCut: length.optional(),
  aim: z.enum(SHEET_AIMS),
  perSheet: cost.optional(),
  remnantWorth: z.number().min(0).max(1).optional(),
  keep: keep.optional(),
  pins: z.array(pin).max(MANY).optional(),
  seed: z.number(),
} satisfies Fields<SheetsAsk>);

const placed = z.strictObject({
  piece,
  box,
  turned: z.boolean(),
  number: z.int().min(1).max(1_000_000),
  pinned: z.literal(true).optional(),
} satisfies Fields<PlacedPiece>);

const step = z.strictObject({
  kind: z.enum(['trim', 'square', 'cut']),
  part: box,
  of: words,
  way: z.enum(['upright', 'lying']),
  setting: length,
  times: z.int().min(1).max(MANY),
  stage: whole,
  guideStays: z.boolean(),
  gives: z.array(words).max(MANY),
  leaves: words.optional(),
} satisfies Fields<CutStep>);

const sheet = z.strictObject({
  stock,
  pieces: z.array(placed).max(MANY),
  left: z.array(box).max(MANY),
  steps: z.array(step).max(MANY),
} satisfies Fields<PlannedSheet>);

const plan = z.strictObject({
  sheets: z.array(sheet).max(1000),
  cost: z.number(),
  atLeast: z.number(),
  rounds: z.number().min(0),
} satisfies Fields<SheetPlan>);

const board = z.strictObject({ board: words, isPriced: z.boolean(), ask, plan } satisfies Fields<PlannedBoard>);

const unplanned = z.strictObject({ material: words, name: words, count: whole } satisfies Fields<Unplanned>);

export const showing = z.strictObject({
  unit: z.enum(['in', 'mm', 'cm']),
  inchStep: z.literal([8, 16, 32, 64]),
  metricStep: z.literal([1, 0.5, 0.1]),
} satisfies Fields<Showing>);

export const sheetPlans = z.strictObject({
  title: words,
  boards: z.array(board).min(1).max(200),
  unplanned: z.array(unplanned).max(MANY),
  keep: keep.optional(),
} satisfies Fields<SheetPlans>);

export const sheetPapersOptions = z.strictObject({
  paper: z.enum(['letter', 'legal', 'tabloid', 'a4', 'a3']),
  showing,
  only: z
    .array(z.enum(['sheet-plan', 'sheet-drawings', 'labels', 'sheet-cuts']))
    .min(1)
    .max(4),
} satisfies Fields<SheetPapersOptions>);
