/** Windows that are no rectangles: reveals they can follow, corners that vanish on the way. */
import type { Problem } from '../../problem';
import type { LayoutLayer, PlacedLayout } from '../layout';
import type { Show } from '../show';
import { SLACK, titled } from './slack';

/** Problems and notes of the shapes in a layout. */
export function shapeProblems(layout: PlacedLayout, show: Show): Problem[] {
  const shaped = layout.windows.some(({ shape }) => shape !== 'rectangle');
  if (!shaped) return [];
  return [
    ...layout.layers.flatMap((layer) => unevenReveal(layout, layer, show)),
    ...unfollowed(layout),
    ...vanishedCorners(layout),
    ...bluntedCorners(layout),
    ...ovalReveals(layout, show),
  ];
}

/** A curve can be followed at one distance only. */
function unevenReveal({ windows }: PlacedLayout, { number, reveal }: LayoutLayer, show: Show): Problem[] {
  const { left, top, right, bottom } = reveal;
  if ([top, right, bottom].every((side) => Math.abs(side - left) < SLACK)) return [];
  const window = windows.find(({ shape }) => shape !== 'rectangle');
  const widest = Math.max(left, top, right, bottom);
  const at = `mat.layers[${number - 1}].reveal`;
  return [
    {
      code: 'reveal-differs-round-shape',
      severity: 'error',
      at,
      message: `The reveal of layer ${number} differs from side to side, but window ${window?.name} is no rectangle and has no sides to tell apart; give one reveal for all sides.`,
      remedy: 'one reveal for all sides',
      fix: { label: `Make it ${show.limit(widest)} all round`, edits: [{ at, value: show.exact(widest) }] },
    },
  ];
}

/** Shapes of which nothing is left so far from the bottom opening. */
function unfollowed({ windows, layers }: PlacedLayout): Problem[] {
  return windows.flatMap((window): Problem[] => {
    if (window.shape === 'rectangle') return [];
    const layer = layers.findLast((_, index) => window.layers[index]?.outlines === undefined);
    if (!layer) return [];
    return [
      {
        code: 'shape-cannot-be-followed',
        severity: 'error',
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}is too small or too hollow for its reveals: in layer ${layer.number} its outline runs into itself. Make the window larger, its corners less hollow, or the reveals narrower.`,
        remedy: 'a larger window, less hollow corners, or a narrower reveal',
      },
    ];
  });
}

function vanishedCorners({ windows }: PlacedLayout): Problem[] {
  return windows.flatMap((window): Problem[] => {
    const number = 1 + window.layers.findLastIndex(({ outlines }) => (outlines?.vanished ?? 0) > 0);
    if (number === 0) return [];
    return [
      {
        code: 'corner-vanishes',
        severity: 'note',
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}loses small bends on the way out: from layer ${number} up they are shorter than reveal and bevel take away, and their neighbours meet in a corner.`,
      },
    ];
  });
}

function bluntedCorners({ windows }: PlacedLayout): Problem[] {
  return windows.flatMap((window): Problem[] => {
    const number = 1 + window.layers.findLastIndex(({ outlines }) => (outlines?.blunted ?? 0) > 0);
    if (number === 0) return [];
    return [
      {
        code: 'corner-blunted',
        severity: 'note',
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}has corners that cannot stay points so far out, where they would be needles: from layer ${number} up they are rounded, or cut off.`,
      },
    ];
  });
}

function ovalReveals({ windows, layers }: PlacedLayout, show: Show): Problem[] {
  return windows.flatMap((window): Problem[] =>
    window.layers.flatMap(({ outlines }, index): Problem[] => {
      const reveal = outlines?.reveal;
      const layer = layers[index];
      if (!reveal || !layer || reveal.greatest - reveal.least < SLACK) return [];
      return [
        {
          code: 'oval-reveal-varies',
          severity: 'note',
          at: `${window.at}.shape`,
          message: `Window ${window.name} ${titled(window.title)}has ellipses in all layers: the reveal of layer ${layer.number} is ${show.fine(reveal.greatest)} where the axes end and ${show.fine(reveal.least)} at its narrowest.`,
        },
      ];
    }),
  );
}
