/** Integrals of smooth functions to the last digits of a double. */

/** Nodes and weights of Gauss and Legendre's rule of 16 points, for half of the interval (Abramowitz and Stegun, table 25.4). */
const RULE = [
  [0.09501250983763744, 0.1894506104550685],
  [0.2816035507792589, 0.18260341504492358],
  [0.45801677765722737, 0.16915651939500254],
  [0.6178762444026438, 0.14959598881657674],
  [0.755404408355003, 0.12462897125553388],
  [0.8656312023878318, 0.09515851168249279],
  [0.9445750230732326, 0.062253523938647894],
  [0.9894009349916499, 0.027152459411754096],
] as const; // prettier-ignore

/** Integral from `from` to `to`, the interval halved until two rules agree. */
export function integrate(of: (at: number) => number, from: number, to: number): number {
  return refine(of, from, to, gauss(of, from, to), 0);
}

/** No smooth function of ours needs more halvings. */
const DEEPEST = 24;
const RELATIVE = 1e-14;

function refine(of: (at: number) => number, from: number, to: number, whole: number, depth: number): number {
  const middle = (from + to) / 2;
  const [left, right] = [gauss(of, from, middle), gauss(of, middle, to)];
  const sum = left + right;
  if (depth >= DEEPEST || Math.abs(sum - whole) <= RELATIVE * Math.abs(sum)) return sum;
  return refine(of, from, middle, left, depth + 1) + refine(of, middle, to, right, depth + 1);
}

function gauss(of: (at: number) => number, from: number, to: number): number {
  const half = (to - from) / 2;
  const middle = (from + to) / 2;
  return (
    half * RULE.reduce((sum, [node, weight]) => sum + weight * (of(middle - half * node) + of(middle + half * node)), 0)
  );
}
