/** The package as a stack, from the back of the frame's lip: every item with its thickness and where it lies. */
import type { Job, Layer } from '../job/job';
import type { Thickness, Varies } from '../job/package';
import { TOLERANCES, type Material } from '../job/tolerances';
import type { Layout } from '../layout/layout';
import { carriesItself, lyingPictures, thicknessOf, type LyingPicture } from './pictures';
import { each, exactly, NOTHING, sum, thickestOf, type Range } from './range';

export type ItemKind =
  'glazing' | 'spacer' | 'layer' | 'picture' | 'hinges' | 'mount board' | 'backing' | 'room for fixing';

export interface StackItem {
  readonly kind: ItemKind;
  readonly name: string;
  /** Path of its thickness in the written job. */
  readonly at: string;
  readonly thickness: Range;
  readonly varies: Varies;
  /** Where a range that is usual for its material is published. */
  readonly source?: string;
  /** What it adds to the stack: less than its thickness where it lies within the mat's window. */
  readonly adds: Range;
  /** From the back of the lip to its front; it ends by its thickness further back. */
  readonly from: Range;
}

export interface Stack {
  readonly items: readonly StackItem[];
  /** All but the room for the fixing. */
  readonly contents: Range;
  /** With the room for the fixing: what the rabbet must be deep. */
  readonly whole: Range;
}

type Unplaced = Omit<StackItem, 'from'>;

export function stackOf(job: Job, layout: Layout): Stack {
  const unplaced = itemsOf(job, lyingPictures(job, layout));
  const items = unplaced.map((item, index): StackItem => ({ ...item, from: frontOf(unplaced, index) }));
  const contents = items.filter(({ kind }) => kind !== 'room for fixing');
  return { items, contents: sum(contents.map(({ adds }) => adds)), whole: sum(items.map(({ adds }) => adds)) };
}

/** What lies within the window reaches forward from the mount board; all else begins where what is before it ends. */
function frontOf(items: readonly Unplaced[], index: number): Range {
  const before = sum(items.slice(0, index).map(({ adds }) => adds));
  const own = items.slice(index).filter(({ kind }) => kind === 'picture' || kind === 'hinges');
  if (own[0] !== items[index]) return before;
  return each((of) => own.reduce((mm, { adds, thickness }) => mm + of(adds) - of(thickness), of(before)));
}

function itemsOf(job: Job, pictures: readonly LyingPicture[]): Unplaced[] {
  const { glazing, spacer, mountBoard, backing, fixing } = job.package;
  const front = [
    ...(glazing
      ? [made('glazing', capital(glazing.material), 'package.glazing', glazing.thickness, glazing.material)]
      : []),
    ...(spacer ? [made('spacer', 'Spacer', 'package.spacer', spacer.thickness)] : []),
    ...job.layers.map((layer, index) => layerItem(layer, index)),
  ];
  const cover = sum(front.filter(({ kind }) => kind !== 'glazing').map(({ adds }) => adds));
  return [
    ...front,
    ...pictureItems(job, pictures, cover),
    ...(mountBoard
      ? [made('mount board', mountBoard.board, 'package.mountBoard', mountBoard.thickness, 'mat board')]
      : []),
    ...(backing
      ? [made('backing', `Backing: ${backing.material}`, 'package.backing', backing.thickness, backing.material)]
      : []),
    ...(fixing.room > 0 ? [roomItem(job)] : []),
  ];
}

function made(kind: ItemKind, name: string, at: string, thickness: Thickness, material?: Material): Unplaced {
  const { varies, ...range } = thickness;
  const source = varies === 'as usual' && material !== undefined ? TOLERANCES[material]?.source : undefined;
  return {
    kind,
    name,
    at: `${at}.thickness`,
    thickness: range,
    varies,
    ...(source === undefined ? {} : { source }),
    adds: range,
  };
}

function layerItem({ board, thickness, thinnest, thickest, varies }: Layer, index: number): Unplaced {
  const range = { nominal: thickness, least: thinnest, greatest: thickest, varies };
  return made('layer', `Layer ${index + 1}: ${board}`, `mat.layers[${index}]`, range, 'mat board');
}

/** The thickest picture with its hinges; where none is under the mat only what stands out in front of the window. */
function pictureItems(job: Job, pictures: readonly LyingPicture[], cover: Range): Unplaced[] {
  if (pictures.length === 0) return [];
  const thickness = thickestOf(pictures.map(({ picture }) => thicknessOf(picture)));
  const { varies: hingesVary, ...hinge } = job.package.hinging.thickness;
  const hinges = pictures.every(({ picture }) => carriesItself(picture)) ? NOTHING : hinge;
  const within = job.layers.length > 0 && pictures.every(({ underMat }) => !underMat);
  const proud = within ? each((of) => Math.max(0, of(thickness) + of(hinges) - of(cover))) : undefined;
  const [first] = pictures;
  const only = pictures.length === 1 && first ? first : undefined;
  return [
    {
      kind: 'picture',
      name:
        only && only.picture.title !== '' ? `Picture: ${only.picture.title}` : only ? 'Picture' : 'Thickest picture',
      at: `pictures[${thickestIndex(pictures)}].thickness`,
      thickness,
      varies: pictures.some(({ picture }) => picture.varies === 'as given') ? 'as given' : 'unknown',
      adds: proud ?? thickness,
    },
    ...(hinges.greatest > 0
      ? [
          {
            kind: 'hinges' as const,
            name: capital(job.package.hinging.method ?? 'hinges'),
            at: 'package.hinging.thickness',
            thickness: hinges,
            varies: hingesVary,
            adds: proud ? NOTHING : hinges,
          },
        ]
      : []),
  ];
}

function thickestIndex(pictures: readonly LyingPicture[]): number {
  return pictures.reduce((a, b) => (b.picture.thickness > a.picture.thickness ? b : a)).index;
}

function roomItem({ package: { fixing } }: Job): Unplaced {
  const room = exactly(fixing.room);
  return {
    kind: 'room for fixing',
    name: `Room for ${fixing.kind}`,
    at: 'package.fixing.room',
    thickness: room,
    varies: 'unknown',
    adds: room,
  };
}

function capital(word: string): string {
  return word.slice(0, 1).toUpperCase() + word.slice(1);
}
