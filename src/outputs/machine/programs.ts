/** Files of one layer each, for machines that cut one board at a time. */
import { assert, good, type Result } from '../../core/problem';
import { titleOf, type OutputContext } from '../context';
import { gcodeText } from './gcode';
import { hpglText } from './hpgl';
import { machinePaths } from './machine-paths';

/** `layer` counts from 1, the top one. */
export function makeGcode(context: OutputContext, layer: number): Promise<Result<Uint8Array>> {
  const paths = machinePaths(context);
  const program = { ...paths, title: titleOf(context), layerCount: paths.table.layers.length };
  return bytesOf(gcodeText(layerAt(paths.table.layers, layer), program));
}

export function makeHpgl(context: OutputContext, layer: number): Promise<Result<Uint8Array>> {
  const { table, choices } = machinePaths(context);
  return bytesOf(hpglText(layerAt(table.layers, layer), choices));
}

function layerAt<T>(layers: readonly T[], number: number): T {
  const layer = layers[number - 1];
  assert(layer, `there is a layer ${number}`);
  return layer;
}

function bytesOf(text: string): Promise<Result<Uint8Array>> {
  return Promise.resolve(good(new TextEncoder().encode(text)));
}
