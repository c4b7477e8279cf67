/** Reads the tree of windows: groups, windows, spreads, and the windows placed freely. */
import { defaultLength } from './defaults';
import type { Arrangement, FreeWindow, GapRule, Picture, SpreadItem, WindowItem } from './job';
import { readJoined, refuseAxes } from './read-joined';
import type { LineReader } from './read-lines';
import { readPlace } from './read-place';
import { readShape } from './read-shape';
import type { Reader } from './reader';
import {
  GAP_BETWEEN,
  GAP_WITH_BORDERS,
  MAX_WINDOWS,
  type WrittenFreeWindow,
  type WrittenGrid,
  type WrittenRing,
  type WrittenLength,
  type WrittenNode,
  type WrittenSpread,
  type WrittenWindow,
} from './written';

const MAX_DEPTH = 12;

/** Reads arrangements against the pictures they may show. */
export class ArrangementReader {
  private windows = 0;

  constructor(
    private readonly pictures: readonly Picture[],
    private readonly reader: Reader,
    private readonly lines: LineReader,
  ) {}

  node(written: WrittenNode, at: string, depth = 0): Arrangement {
    if (typeof written === 'string') return this.window({ kind: 'window', picture: written }, at, at);
    switch (written.kind) {
      case 'window':
        return this.window(written, at);
      case 'spread':
        return this.spread(written, at);
      case 'grid':
        return this.grid(written, at, depth);
      case 'ring':
        return this.ring(written, at, depth);
      case 'row':
        return {
          kind: 'row',
          at,
          items: this.items(written.items, at, depth),
          gap: this.gap(written.gap, `${at}.gap`),
          align: written.align ?? 'centre',
        };
      case 'column':
        return {
          kind: 'column',
          at,
          items: this.items(written.items, at, depth),
          gap: this.gap(written.gap, `${at}.gap`),
          align: written.align ?? 'centre',
        };
    }
  }

  free(written: WrittenFreeWindow, at: string): FreeWindow {
    const { at: place, ...fields } = written;
    return {
      window: this.window({ kind: 'window', ...fields }, at),
      ...readPlace(place, `${at}.at`, { what: 'A freely placed window', least: 0 }, this.reader),
    };
  }

  private items(written: readonly WrittenNode[], at: string, depth: number): Arrangement[] {
    if (depth >= MAX_DEPTH) {
      this.reader.say({
        code: 'groups-too-deep',
        at,
        message: `Groups are nested more than ${MAX_DEPTH} deep; flatten them.`,
        limit: String(MAX_DEPTH),
      });
      return [];
    }
    return written.map((item, index) => this.node(item, `${at}.items[${index}]`, depth + 1));
  }

  private window(written: WrittenWindow, at: string, pictureAt = `${at}.picture`): WindowItem {
    this.count(1, at);
    const picture = this.picture(written.picture, pictureAt);
    const known = picture === undefined ? undefined : this.pictures[picture];
    const use = picture === undefined ? (written.use ?? 'empty') : 'picture';
    const title = written.title ?? (known?.title || (use === 'picture' ? `Picture ${(picture ?? 0) + 1}` : ''));
    if (written.picture === undefined && written.size === undefined) {
      this.reader.say({
        code: 'window-without-size',
        at: `${at}.size`,
        message: 'A window without a picture needs a size.',
        remedy: 'give its size, such as 4 x 1 in, or the picture it shows',
        fix: { label: 'Make it 4 x 1 in', edits: [{ at: `${at}.size`, value: '4 x 1 in' }] },
      });
    }
    const size =
      written.size === undefined
        ? {}
        : {
            size: this.reader.size(
              written.size,
              `${at}.size`,
              title === ''
                ? at === 'windows'
                  ? 'the window'
                  : `the window at ${at}`
                : `window "${title.slice(0, 40)}"`,
            ),
          };
    const shape = readShape(written.shape, `${at}.shape`, this.reader);
    if (written.joined?.length) refuseAxes(shape, at, this.reader);
    return {
      kind: 'window',
      at,
      use,
      title,
      ...(picture === undefined ? {} : { picture }),
      ...size,
      shape,
      turned: written.turned ?? 0,
      mirrored: written.mirrored ?? false,
      joined: readJoined(written.joined, `${at}.joined`, this.reader),
      lines: this.lines.ofWindow(written.lines, at),
    };
  }

  private spread(written: WrittenSpread, at: string): SpreadItem {
    this.count(written.count, at);
    const { shares, count } = written;
    if (shares && shares.length !== count) {
      this.reader.say({
        code: 'shares-do-not-match',
        at: `${at}.shares`,
        message: `The spread has ${count} windows but ${shares.length} shares; give one for each.`,
        value: String(shares.length),
        limit: String(count),
      });
    }
    if (written.picture === undefined) {
      this.reader.say({
        code: 'spread-without-picture',
        at: `${at}.picture`,
        message: 'A spread needs the picture that it shows.',
      });
    }
    const parts = shares ?? Array.from({ length: count }, () => 1);
    const sum = parts.reduce((a, b) => a + b, 0);
    const picture = this.picture(written.picture, `${at}.picture`) ?? 0;
    const gap = this.reader.length(
      written.gap,
      `${at}.gap`,
      { name: 'Width of the bars', least: 0, above: true },
      defaultLength('gap', this.reader.units),
    );
    const title = written.title ?? (this.pictures[picture]?.title || `Picture ${picture + 1}`);
    return {
      kind: 'spread',
      at,
      picture,
      title,
      along: written.along ?? 'row',
      bars: written.bars ?? 'hide',
      gap,
      shares: parts.map((part) => part / sum),
      turned: written.turned ?? 0,
      lines: this.lines.ofWindow(written.lines, at),
    };
  }

  private grid(written: WrittenGrid, at: string, depth: number): Arrangement {
    const columnGapAt = `${at}.${written.columnGap === undefined ? 'gap' : 'columnGap'}`;
    const rowGapAt = `${at}.${written.rowGap === undefined ? 'gap' : 'rowGap'}`;
    return {
      kind: 'grid',
      at,
      items: this.items(written.items, at, depth),
      columns: written.columns,
      columnGap: this.gap(written.columnGap ?? written.gap, columnGapAt),
      rowGap: this.gap(written.rowGap ?? written.gap, rowGapAt),
      columnGapAt,
      rowGapAt,
      alignColumns: written.alignColumns ?? 'centre',
      alignRows: written.alignRows ?? 'centre',
    };
  }

  private ring(written: WrittenRing, at: string, depth: number): Arrangement {
    const items = this.items(written.items, at, depth);
    const windows = items.filter((item) => item.kind === 'window');
    const misplaced = items.find((item) => item.kind !== 'window');
    if (misplaced) {
      this.reader.say({
        code: 'ring-of-groups',
        at: misplaced.at,
        message: `A ring holds single windows, and no ${misplaced.kind}; take its windows out of that, or arrange them beside the ring.`,
      });
    }
    const [first, ...others] = windows;
    const middle = written.centre === 'none' ? undefined : first;
    if (!middle && written.on === undefined) {
      this.reader.say({
        code: 'ring-without-middle',
        at,
        message:
          'Without a window in the middle a ring needs the size of the ellipse that its windows lie on, as "on".',
        fix: { label: 'Put the first in the middle', edits: [{ at: `${at}.centre`, value: undefined }] },
      });
    }
    const gap = this.reader.length(
      written.gap,
      `${at}.gap`,
      { name: 'Gap of the ring', least: 0, above: true },
      defaultLength('gap', this.reader.units),
    );
    return {
      kind: 'ring',
      at,
      ...(middle ? { middle } : {}),
      around: middle ? others : windows,
      gap,
      ...(written.on === undefined ? {} : { on: this.reader.size(written.on, `${at}.on`, 'the ellipse of the ring') }),
      spacing: written.spacing ?? 'equal gaps',
      start: Math.PI / 2 - ((written.start ?? 0) * Math.PI) / 180,
    };
  }

  private gap(written: WrittenLength | undefined, at: string): GapRule {
    if (written === GAP_WITH_BORDERS) return 'with-borders';
    if (written === GAP_BETWEEN) return 'between';
    return this.reader.length(
      written,
      at,
      { name: 'Gap', least: 0, above: true, words: `"${GAP_WITH_BORDERS}" or "${GAP_BETWEEN}"` },
      defaultLength('gap', this.reader.units),
    );
  }

  private picture(reference: string | number | undefined, at: string): number | undefined {
    if (reference === undefined) return undefined;
    const index =
      typeof reference === 'number'
        ? reference <= this.pictures.length
          ? reference - 1
          : -1
        : this.pictures.findIndex((picture) => picture.id === reference);
    if (index >= 0) return index;
    const ids = this.pictures.map((picture) => `"${picture.id}"`).slice(0, 20);
    this.reader.say({
      code: 'picture-unknown',
      at,
      message: `There is no picture ${typeof reference === 'number' ? reference : `"${reference.slice(0, 40)}"`}; there ${ids.length === 1 ? 'is' : 'are'} ${ids.join(', ') || 'none'}.`,
      value: String(reference).slice(0, 60),
    });
    return undefined;
  }

  private count(more: number, at: string): void {
    const before = this.windows;
    this.windows += more;
    if (before <= MAX_WINDOWS && this.windows > MAX_WINDOWS) {
      this.reader.say({
        code: 'too-many-windows',
        at,
        message: `The mat has more than ${MAX_WINDOWS} windows; split it into several jobs.`,
        limit: String(MAX_WINDOWS),
      });
    }
  }
}
