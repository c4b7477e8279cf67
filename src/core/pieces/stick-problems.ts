/** What keeps rails from being cut from the sticks that there are. */
import type { Problem } from '../problem';
import { lengthText, type Showing } from '../units';
import { CUTS_OF_RAIL, type FrameMoulding } from './moulding';
import { railsTooLong, type NamedRail, type SticksPlan } from './sticks';

interface Asked {
  readonly rails: readonly NamedRail[];
  readonly stick: number;
  readonly kerf: number;
  readonly plan: SticksPlan | undefined;
  readonly onShelf: number | undefined;
}

type Titled = readonly { readonly title: string; readonly moulding: FrameMoulding }[];

export function stickProblems(
  { rails, stick, kerf, plan, onShelf }: Asked,
  frames: Titled,
  showing: Showing,
): Problem[] {
  const show = (mm: number) => lengthText(mm, showing);
  if (!plan) {
    const [longest] = railsTooLong(rails, stick, kerf).toSorted((a, b) => b.length - a.length);
    const needed = (longest?.length ?? 0) + CUTS_OF_RAIL * kerf;
    const whose = `${longest?.sides ?? ''} of “${frames[longest?.frame ?? 0]?.title ?? ''}”`;
    const message = `The rails at ${whose} are ${show(longest?.length ?? 0)} long and take ${show(needed)} with their two cuts; a stick of ${show(stick)} is too short for them. Take longer sticks.`;
    return [
      {
        code: 'rail-longer-than-stick',
        severity: 'warning',
        at: 'stick',
        message,
        value: show(stick),
        limit: show(needed),
        remedy: `sticks of ${show(needed)} or more`,
      },
    ];
  }
  const count = plan.sticks.length;
  if (onShelf === undefined || count <= onShelf) return [];
  const proven = plan.atLeast > onShelf;
  const fewer = proven ? 'no way of cutting does with fewer' : `${plan.atLeast} at least`;
  const message = `${count} sticks are needed (${fewer}), and the shelf has ${onShelf}: ${count - onShelf} to buy.`;
  return [
    {
      code: 'sticks-too-few',
      severity: 'warning',
      at: 'stick',
      message,
      value: String(onShelf),
      limit: String(count),
      remedy: `${count - onShelf} more`,
    },
  ];
}
