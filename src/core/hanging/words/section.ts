/** Parts of a description of how a frame hangs, the same for terminal, paper and screen. */
import type { Show } from '../../layout/show';
import { GRAVITY, massText } from '../../mass';
import type { Unit } from '../../units';
import { showOf, unitOf, type HangingAsk } from '../hanging-ask';
import { restingOn, type HangingWeight } from '../weight';

/** What it is, its value, and how it was reached or what it means. */
export interface Row {
  readonly label: string;
  readonly value: string;
  readonly how: string;
}

export interface Section {
  readonly heading: string;
  readonly rows: readonly Row[];
}

/** How one description shows what it says. */
export interface Words {
  readonly show: Show;
  readonly unit: Unit;
  /** `1.46 x the weight, 12.3 lb`, of a part of the weight. */
  readonly load: (part: number) => string;
  readonly mass: (kg: number) => string;
  /** What is carried: `at least` where the weight is not whole. */
  readonly carried: (kg: number) => string;
}

export function wordsFor(ask: HangingAsk, weight: HangingWeight): Words {
  const { kg } = weight;
  const unit = unitOf(ask);
  const mass = (value: number) => massText(value, unit);
  return {
    show: showOf(ask),
    unit,
    mass,
    carried: (value) => restingOn(weight, value, unit),
    load: (part) => {
      const times = `${part.toFixed(2)} x the weight`;
      return kg
        ? `${times}, ${forceText(restingOn(weight, part * kg.greatest, unit), part * kg.greatest, unit)}`
        : times;
    },
  };
}

/** A force by the mass that it would hold, and in newtons where people weigh in kilograms. */
function forceText(words: string, kg: number, unit: Unit): string {
  if (unit === 'in') return words;
  const newtons = kg * GRAVITY;
  return `${words} (${newtons.toFixed(newtons < 10 ? 1 : 0)} N)`;
}

export function degrees(radians: number): string {
  const value = (radians * 180) / Math.PI;
  return `${value.toFixed(Math.abs(value) < 10 ? 1 : 0)}°`;
}
