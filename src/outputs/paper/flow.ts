/** Matter that flows from page to page: blocks one below another, with what must be told again where a page begins. */
import type { Point } from '../../core/geometry/box';
import type { Surface } from './surface';

export interface Block {
  /** mm. */
  readonly height: number;
  /** Draws downward from the upper left corner. */
  readonly draw: (surface: Surface, corner: Point) => void;
  /** Stays on the page of the block after it. */
  readonly withNext?: boolean;
  /** Stand above this block where it is the first on a page that goes on from another. */
  readonly again?: readonly Block[];
  /** Stands in its place there, as high as it. */
  readonly asFirst?: Block;
}

/** Blocks in lots that fit a page each; a block higher than a page has one to itself. */
export function flow(blocks: readonly Block[], room: number): readonly (readonly Block[])[] {
  const pages: Block[][] = [[]];
  let left = room;
  for (const lot of together(blocks)) {
    const page = pages.at(-1) ?? [];
    if (heightOfAll(lot) <= left || page.length === 0) {
      page.push(...lot);
      left -= heightOfAll(lot);
      continue;
    }
    const [first, ...rest] = lot;
    const next = first ? [...(first.again ?? []), first.asFirst ?? first, ...rest] : [];
    pages.push(next);
    left = room - heightOfAll(next);
  }
  return pages;
}

/** Whether no lot that stays together is higher than a page, which would end past its edge. */
export function fitsPages(blocks: readonly Block[], room: number): boolean {
  return flow(blocks, room).every((page) => heightOfAll(page) <= room + 1e-6);
}

/** The first of several ways to lay out the same, from the roomiest on, that takes the fewest pages. */
export function flowTight(ways: readonly (readonly Block[])[], room: number): readonly (readonly Block[])[] {
  const all = ways.map((blocks) => flow(blocks, room));
  const fewest = Math.min(...all.map(({ length }) => length));
  return all.find(({ length }) => length === fewest) ?? [];
}

/** Blocks that are not parted where a page ends. */
export function unparted(blocks: readonly Block[]): readonly Block[] {
  return blocks.map((block, index) => (index < blocks.length - 1 ? { ...block, withNext: true } : block));
}

/** Blocks with a few that end them, which never have a page to themselves. */
export function endedBy(blocks: readonly Block[], end: readonly Block[]): readonly Block[] {
  if (end.length === 0) return blocks;
  const all = [...blocks, ...end];
  return all.map((block, index) =>
    index >= blocks.length - 1 && index < all.length - 1 ? { ...block, withNext: true } : block,
  );
}

/** Blocks with those that must not be parted from them. */
function together(blocks: readonly Block[]): Block[][] {
  const lots: Block[][] = [];
  blocks.forEach((block, index) => {
    if (blocks[index - 1]?.withNext) lots.at(-1)?.push(block);
    else lots.push([block]);
  });
  return lots;
}

function heightOfAll(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { height }) => sum + height, 0);
}

export function drawBlocks(surface: Surface, blocks: readonly Block[], corner: Point): void {
  let { y } = corner;
  for (const block of blocks) {
    block.draw(surface, { x: corner.x, y });
    y -= block.height;
  }
}
