/** Reads the openings joined to a window. */
import type { JoinedPart, WindowShape } from './job';
import { readPlace } from './read-place';
import { readShape } from './read-shape';
import type { Reader } from './reader';
import type { WrittenJoined } from './written-joined';

export function readJoined(
  written: readonly WrittenJoined[] | undefined,
  at: string,
  reader: Reader,
): readonly JoinedPart[] {
  return (written ?? []).map((part, index) => readPart(part, `${at}[${index}]`, reader));
}

/** Ellipses larger by their axes are no parallel curves, and would not meet the openings beside them in one line. */
export function refuseAxes(shape: WindowShape, at: string, reader: Reader): void {
  if (shape.kind !== 'oval' || shape.reveal !== 'axes') return;
  reader.say({
    code: 'joined-by-axes',
    at: `${at}.shape.reveal`,
    message:
      'Joined openings keep one reveal all round, and an oval by longer axes does not; take "parallel" for the oval.',
    remedy: '"parallel"',
    fix: { label: 'Make it parallel', edits: [{ at: `${at}.shape.reveal`, value: undefined }] },
  });
}

function readPart(written: WrittenJoined, at: string, reader: Reader): JoinedPart {
  const { title = '', turned = 0, mirrored = false } = written;
  const shape = readShape(written.shape, `${at}.shape`, reader);
  refuseAxes(shape, at, reader);
  return {
    at,
    title,
    shape,
    size: reader.size(written.size, `${at}.size`, title === '' ? 'the joined opening' : `"${title.slice(0, 40)}"`),
    turned,
    mirrored,
    ...readPlace(written.at ?? {}, `${at}.at`, { what: 'The joined opening' }, reader),
  };
}
