/** A screen's wishes for machine files are held to the same limits as those of the command line. */
import { describe, expect, it } from 'vitest';
import { checkRequest } from '../../src/host/requests';

function check(machine: object): boolean {
  const options = {
    paper: 'a4',
    view: 'back',
    units: 'mm',
    only: ['gcode', 'dxf'],
    turnEverySecondPage: false,
    machine,
  };
  const request = { id: 'a', text: '{}', folder: '/', baseName: 'mat', options, replace: false };
  return checkRequest('exportJob', request).ok;
}

describe('options for machines', () => {
  it('pass within their limits', () => {
    expect(check({})).toBe(true);
    expect(check({ corner: 'upper-left', curves: 'lines', tolerance: 0.05, rotary: 'C', liftAngleDegrees: 5 })).toBe(
      true,
    );
    expect(check({ depth: 2, feed: 800, safeHeight: 10 })).toBe(true);
  });

  it.each([{ tolerance: 0 }, { depth: -2 }, { feed: Infinity }, { safeHeight: 1e9 }, { rotary: 'Z' }, { speed: 3 }])(
    '%j does not',
    (machine) => expect(check(machine)).toBe(false),
  );
});
