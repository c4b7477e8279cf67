/** A piece taken in the hand, by pointer or by key, until it is pinned somewhere or let go. */
import { boxAt, type Point, type Size } from '../../core/geometry/box';
import { sizeOnSheet } from '../../core/sheets/on-sheet';
import { pulledTo, usablePart } from '../../core/sheets/place-piece';
import type { PlacedPiece, PlannedSheet } from '../../core/sheets/plan';
import type { PlannedBoard } from '../../core/sheets/planned-board';
import type { SheetsDesk } from './sheets-desk.svelte';
import type { SheetPlace } from './sheets-view.svelte';

export interface Lifted {
  readonly piece: PlacedPiece;
  /** Where it was taken from. */
  readonly from: SheetPlace;
  /** Which sheet of that board it is over. */
  readonly to: number;
  readonly turned: boolean;
  /** Its lower left corner there, mm. */
  readonly corner: Point;
  readonly isMoved: boolean;
}

export class Lift {
  now = $state.raw<Lifted>();
  #release: (() => void) | undefined;

  constructor(private readonly desk: SheetsDesk) {}

  take(piece: PlacedPiece, from: SheetPlace): void {
    this.letGo();
    this.#release = this.desk.planning.hold();
    const { box, turned } = piece;
    this.now = { piece, from, to: from.sheet, turned, corner: { x: box.left, y: box.bottom }, isMoved: false };
  }

  /** Over a sheet of its board, with its lower left corner near a point. @param reach how near an edge pulls, mm. */
  move(to: number, corner: Point, reach: number, step: number): void {
    const { now } = this;
    const [board, sheet] = this.#over(to);
    if (!now || !board || !sheet) return;
    const others = sheet.pieces.filter((one) => one !== now.piece).map(({ box }) => box);
    const pulls = { sheet: usablePart(sheet.stock, board.ask), others, kerf: board.ask.kerf, reach, step };
    this.now = { ...now, to, corner: pulledTo(this.#size(now), corner, pulls), isMoved: true };
  }

  /** By so much, as far as the sheet reaches, mm. */
  nudge(by: Point): void {
    const { now } = this;
    if (now) this.#keepIn({ ...now, corner: { x: now.corner.x + by.x, y: now.corner.y + by.y } });
  }

  /** To the next sheet of its board, or the one before. */
  pass(by: 1 | -1): void {
    const { now } = this;
    if (now && this.#over(now.to + by)[1]) this.#keepIn({ ...now, to: now.to + by });
  }

  turn(): void {
    const { now } = this;
    if (now?.piece.piece.mayTurn) this.#keepIn({ ...now, turned: !now.turned });
  }

  /** Pins it where it is now. */
  put(): void {
    const { now } = this;
    const [, sheet] = now ? this.#over(now.to) : [];
    this.letGo();
    if (!now || !sheet) return;
    const { piece, from, turned, corner } = now;
    this.desk.pin(from.board, {
      piece,
      stock: sheet.stock,
      onSheet: sheet.pieces,
      turned,
      left: corner.x,
      bottom: corner.y,
    });
  }

  letGo(): void {
    this.now = undefined;
    this.#release?.();
    this.#release = undefined;
  }

  /** Of what is in the hand, as it would lie. */
  get box() {
    return this.now && boxAt(this.now.corner, this.#size(this.now));
  }

  #size({ piece, turned }: Lifted): Size {
    return sizeOnSheet(piece.piece, turned);
  }

  #keepIn(next: Lifted): void {
    const [board, sheet] = this.#over(next.to);
    if (!board || !sheet) return;
    const room = usablePart(sheet.stock, board.ask);
    const { width, height } = this.#size(next);
    const within = (at: number, least: number, most: number) => Math.max(least, Math.min(at, most));
    const corner = { x: within(next.corner.x, room.left, room.right - width), y: within(next.corner.y, room.bottom, room.top - height) }; // prettier-ignore
    this.now = { ...next, corner, isMoved: true };
  }

  #over(to: number): [PlannedBoard?, PlannedSheet?] {
    const board = this.now && this.desk.boards[this.now.from.board];
    return [board, board?.plan.sheets[to]];
  }
}
