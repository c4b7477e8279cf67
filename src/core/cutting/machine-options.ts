/** What may be chosen about files for machines, within which limits, and what holds where nothing is said. */
import type { Corner } from './tool-paths';

/** How files for machines are written; lengths in mm. */
export interface MachineOptions {
  /** Corner of the board, in the view, that coordinates run from; x to the right, y up. */
  readonly corner: Corner;
  /** `lines`: every curve as straight pieces within the tolerance. */
  readonly curves: 'arcs' | 'lines';
  /** How far what is written may lie from a curve that the format has no word for. */
  readonly tolerance: number;
  /** Height of the lifted tool over the side of the board that faces it (G-code). */
  readonly safeHeight: number;
  /** How deep the tool goes down from that side; undefined: as deep as each board is thick (G-code). */
  readonly depth: number | undefined;
  /** mm per minute (G-code). */
  readonly feed: number;
  /** Axis that turns a knife into the direction of travel; undefined: none (G-code). */
  readonly rotary: 'A' | 'B' | 'C' | undefined;
  /** A turned knife is lifted where the path turns by more, degrees (G-code). */
  readonly liftAngleDegrees: number;
}

export const MACHINE_DEFAULTS: MachineOptions = {
  corner: 'lower-left',
  curves: 'arcs',
  tolerance: 0.01,
  safeHeight: 5,
  depth: undefined,
  feed: 1500,
  rotary: undefined,
  liftAngleDegrees: 20,
};

/** Least and greatest, mm, mm per minute and degrees: beyond them a slip of the pen is likelier than a machine. */
export const MACHINE_LIMITS = {
  tolerance: [0.001, 1],
  safeHeight: [0.5, 200],
  depth: [0.05, 50],
  feed: [10, 100_000],
  liftAngleDegrees: [1, 180],
} as const satisfies Partial<Record<keyof MachineOptions, readonly [number, number]>>;

export type MachineMeasure = keyof typeof MACHINE_LIMITS;

export const ROTARY_AXES = ['A', 'B', 'C'] as const;
