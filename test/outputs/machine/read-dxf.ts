/** DXF files read by ezdxf, under Debian's Python. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Point } from '../../../src/core/geometry/box';
import { apart, scaled, type Piece } from './pieces';

const PYTHON = '/usr/bin/python3';

/** Why there is no reader here; undefined when there is one. */
export const noReader =
  spawnSync(PYTHON, ['-c', 'import ezdxf']).status === 0
    ? undefined
    : `DXF files are not read back here: ${PYTHON} has no ezdxf (on Debian: python3-ezdxf, which test/setup.sh installs).`;

export interface DxfEntity {
  readonly kind: string;
  readonly layer: string;
  readonly handle: string;
  /** mm; an arc or an ellipse runs as its neighbours do, since DXF gives it no direction of its own. */
  readonly pieces: readonly Piece[];
}

export interface ReadDxf {
  readonly release: string;
  readonly errors: readonly string[];
  readonly units: number;
  readonly metric: number;
  readonly extent: readonly (readonly number[])[];
  readonly layers: readonly string[];
  readonly entities: readonly DxfEntity[];
}

type Pair = readonly [number, number];
interface RawPiece {
  readonly from: Pair;
  readonly to: Pair;
  readonly centre?: Pair;
  readonly sweep?: number;
}
type RawDxf = Omit<ReadDxf, 'entities'> & {
  readonly entities: readonly (Omit<DxfEntity, 'pieces'> & { readonly pieces: readonly RawPiece[] })[];
};

/** Several at once, since Python takes its time to start. */
export function readDxf(texts: readonly string[]): ReadDxf[] {
  const folder = mkdtempSync(join(tmpdir(), 'matwright-dxf-'));
  try {
    const paths = texts.map((text, index) => {
      const path = join(folder, `${index}.dxf`);
      writeFileSync(path, text);
      return path;
    });
    const script = fileURLToPath(new URL('read-dxf.py', import.meta.url));
    const run = spawnSync(PYTHON, [script, ...paths], { encoding: 'utf8', maxBuffer: 1e9 });
    if (run.status !== 0) throw new Error(run.stderr);
    return (JSON.parse(run.stdout) as RawDxf[]).map((raw) => {
      const mm = raw.units === 1 ? 25.4 : 1;
      const entities = raw.entities.map((entity) => ({
        ...entity,
        pieces: entity.pieces.map((piece) => scaled(pieceOf(piece), mm)),
      }));
      return { ...raw, entities: inDirection(entities) };
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function pieceOf({ from, to, centre, sweep }: RawPiece): Piece {
  const ends = { from: point(from), to: point(to) };
  return centre && sweep !== undefined ? { ...ends, bend: { centre: point(centre), sweep } } : ends;
}

function point([x, y]: Pair): Point {
  return { x, y };
}

/** Turns each arc and ellipse round that begins where its neighbours end. */
function inDirection(entities: readonly DxfEntity[]): DxfEntity[] {
  const free = ({ kind }: DxfEntity) => kind === 'ARC' || kind === 'ELLIPSE';
  const done: DxfEntity[] = [];
  entities.forEach((entity, index) => {
    const [start, end] = [entity.pieces[0]!.from, entity.pieces.at(-1)!.to];
    const before = done.at(-1)?.pieces.at(-1)?.to;
    const after = entities[index + 1]?.pieces;
    const follows = before !== undefined && Math.min(apart(before, start), apart(before, end)) < 0.01;
    const ends = after ? [after[0]!.from, after.at(-1)!.to] : [];
    const turned = follows
      ? apart(before, end) < apart(before, start)
      : Math.min(...ends.map((one) => apart(one, start))) < Math.min(...ends.map((one) => apart(one, end)));
    done.push(free(entity) && turned ? { ...entity, pieces: entity.pieces.toReversed().map(backwards) } : entity);
  });
  return done;
}

function backwards({ from, to, bend }: Piece): Piece {
  return bend ? { from: to, to: from, bend: { ...bend, sweep: -bend.sweep } } : { from: to, to: from };
}
