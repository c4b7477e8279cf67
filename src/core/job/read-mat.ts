/** Reads the mat's layers: board, thickness, bevel and reveal. */
import { allSides } from '../geometry/box';
import { DEFAULT_BEVEL_DEGREES, DEFAULT_CORE, DEFAULT_LAYERS, defaultLength } from './defaults';
import type { Layer } from './job';
import { readRange } from './read-thickness';
import type { Reader } from './reader';
import type { WrittenLayer } from './written';

/** Steepest slope that can be cut and still be a cut, degrees from the normal. */
export const MOST_BEVEL_DEGREES = 75;

/** @param bevelDegrees of layers that do not say their own. */
export function readLayers(
  written: readonly WrittenLayer[],
  reader: Reader,
  bevelDegrees: number = DEFAULT_BEVEL_DEGREES,
): Layer[] {
  return written.map((layer, index) => readLayer(layer, index, reader, bevelDegrees));
}

function readLayer(written: WrittenLayer, index: number, reader: Reader, bevelDegrees: number): Layer {
  const at = `mat.layers[${index}]`;
  const name = `layer ${index + 1}`;
  const usual = DEFAULT_LAYERS[index] ?? DEFAULT_LAYERS[0];
  if (index === 0 && written.reveal !== undefined) {
    reader.say({
      code: 'reveal-on-top-layer',
      at: `${at}.reveal`,
      message: 'The top layer has no layer above it to stand back from; give the reveal to layer 2 or lower.',
      fix: { label: 'Take it away', edits: [{ at: `${at}.reveal`, value: undefined }] },
    });
  }
  const reveal = reader.perSide(written.reveal, `${at}.reveal`, defaultLength('reveal', reader.units), (value, where) =>
    reader.length(value, where, { name: `Reveal of ${name}`, least: 0, most: 500 }, NaN),
  );
  const thickness = reader.length(
    written.thickness,
    `${at}.thickness`,
    { name: `Thickness of ${name}`, least: 0, above: true, most: 50 },
    defaultLength('boardThickness', reader.units),
  );
  const range = readRange(written, { at, what: name, material: 'mat board' }, thickness, reader);
  return {
    board: written.board ?? usual.board,
    colour: written.colour ?? usual.colour,
    core: written.core ?? DEFAULT_CORE,
    thickness,
    thinnest: range.least,
    thickest: range.greatest,
    varies: range.varies,
    quality: written.quality ?? {},
    bevel: {
      angleDegrees: reader.number(
        written.bevel?.angle,
        `${at}.bevel.angle`,
        `Bevel angle of ${name}`,
        0,
        MOST_BEVEL_DEGREES,
        bevelDegrees,
      ),
      direction: written.bevel?.direction ?? 'standard',
    },
    reveal: index === 0 ? allSides(0) : reveal,
  };
}
