/** The cuts list of a job: everything flat that goes into its frame, from the front to the back, with its size. */
import type { Size } from '../geometry/box';
import type { FramePart, Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { lengthText, showingOf, type Showing } from '../units';
import { dustCoverPiece } from './dust-cover';
import { cutOutOf } from './mat-area';
import type { FrameMoulding } from './moulding';
import { orderSize } from './order-size';
import type { Piece } from './piece';
import type { Range } from './range';
import { spacerPieces } from './spacers';

export function cutsList(job: Job, layout: Layout, moulding: FrameMoulding): Piece[] {
  const { glazing, mountBoard, backing, dustCover } = job.package;
  const { frame } = layout;
  const showing = showingOf(job);
  const flat = flatPiece(job, layout, showing);
  const hidden = moulding.section.lip - frame.allowance / 2;
  return [
    ...(glazing ? [flat('glazing', 'Glazing', glazing.material, thick(glazing))] : []),
    ...spacerPieces(job, frame.blank, hidden, showing),
    ...matPieces(job, layout, flat, showing),
    ...(mountBoard ? [flat('mount board', 'Mount board', mountBoard.board, thick(mountBoard))] : []),
    ...(backing ? [flat('backing', 'Backing', backing.material, thick(backing))] : []),
    ...(dustCover ? [dustCoverPiece(moulding, job.frame.comesWith.includes('dust cover'), showing)] : []),
  ];
}

function thick({ thickness: { least, nominal, greatest } }: { readonly thickness: Range }): Pick<Piece, 'thickness'> {
  return { thickness: { least, nominal, greatest } };
}

type Flat = (kind: Piece['kind'], name: string, material: string, more: Partial<Piece>) => Piece;

/** A piece as large as the blank. */
function flatPiece({ frame }: Job, { frame: { blank, rabbet, allowance } }: Layout, showing: Showing): Flat {
  const comesWith = (kind: string) => frame.comesWith.includes(kind as FramePart);
  return (kind, name, material, more) => {
    const cut = more.cut ?? blank;
    const full = areaOf(cut);
    return {
      kind,
      name,
      material,
      count: 1,
      cut,
      order: orderSize(cut, rabbet, showing),
      area: { full, net: full },
      // The mat that is bought with a frame has windows of its own.
      comesWithFrame: kind !== 'mat' && comesWith(kind),
      rule: `the frame size, ${lengthText(allowance, showing)} smaller than the rabbet each way`,
      ...more,
    };
  };
}

function matPieces(job: Job, layout: Layout, flat: Flat, showing: Showing): Piece[] {
  const { blank } = layout.frame;
  return job.layers.map((layer, index) => {
    const trim = index > 0 && job.cutting.layers === 'behind' ? job.cutting.behindTrim : 0;
    const cut = { width: blank.width - 2 * trim, height: blank.height - 2 * trim };
    const full = areaOf(cut);
    return flat('mat', `Mat layer ${index + 1}`, layer.board, {
      cut,
      thickness: { least: layer.thinnest, nominal: layer.thickness, greatest: layer.thickest },
      area: { full, net: full - cutOutOf(layout, index) },
      layer: index + 1,
      ...(trim > 0
        ? { rule: `${lengthText(trim, showing)} smaller than layer 1 on every side, to lie behind it` }
        : {}),
    });
  });
}

function areaOf({ width, height }: Size): number {
  return width * height;
}
