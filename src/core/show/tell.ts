/** What is worth a look in the plan of a show: frames and pictures left out, costs that are not counted, what is not proven. */
import type { Problem } from '../problem';
import type { ShowPlan } from './plan';
import { titled } from './words';

type Planned = Omit<ShowPlan, 'problems'>;

export function worthTelling(plan: Planned): Problem[] {
  return [...picturesLeft(plan), ...outOfRange(plan), ...notProven(plan), ...framesLeftOut(plan), ...notCounted(plan)];
}

function picturesLeft({ places }: Planned): Problem[] {
  const left = places.filter(({ state }) => state === 'left');
  if (left.length === 0) return [];
  const which = listed(left.map(({ picture }) => titled(picture.title)));
  return [
    {
      code: 'pictures-left',
      severity: 'warning',
      at: '',
      message: `${left.length === 1 ? 'One picture has' : `${left.length} pictures have`} no frame: ${which}. The list of pictures says why.`,
    },
  ];
}

function outOfRange({ places }: Planned): Problem[] {
  return places.flatMap((place): Problem[] => {
    if (place.state !== 'framed' || !place.outOfRange) return [];
    return [
      {
        code: 'bound-frame-out-of-range',
        severity: 'warning',
        at: `line ${place.picture.line}, column frame`,
        message: `${titled(place.picture.title)} is bound to the frame ${titled(place.frame?.name ?? '')}, which leaves it borders out of range.`,
      },
    ];
  });
}

function notProven({ chosen, fewest }: Planned): Problem[] {
  const told: Problem[] = [];
  const say = (message: string) => told.push({ code: 'show-not-proven', severity: 'warning', at: '', message });
  if (!chosen.proven) {
    say('The sizes chosen are the best that were found, but the search was given up before they were proven best.');
  }
  if (fewest.sizes > fewest.least) {
    say(`Fewer than ${fewest.least} sizes can’t hold all, and ${fewest.sizes} can; what lies between was not settled.`);
  }
  return told;
}

function framesLeftOut({ leftOut }: Planned): Problem[] {
  const whys = [...new Set(leftOut.map(({ why }) => why))];
  return whys.map((why) => {
    const names = leftOut.filter((one) => one.why === why).map(({ frame }) => titled(frame.name));
    const many = names.length > 1;
    return {
      code: 'frame-left-out',
      severity: 'warning',
      at: '',
      message: `${listed(names)} ${many ? 'are' : 'is'} not chosen from: ${why.replace(/\.$/, '').replace(/^it has/, many ? 'they have' : 'it has')}.`,
    };
  });
}

function notCounted({ by, notCounted: names, places }: Planned): Problem[] {
  const made = places.filter(({ state }) => state === 'made to size').length;
  const custom: Problem[] =
    made === 0
      ? []
      : [
          {
            code: 'custom-not-counted',
            severity: 'note',
            at: '',
            message: `${made === 1 ? 'One frame is' : `${made} frames are`} made to size; what ${made === 1 ? 'it costs' : 'they cost'} is not in the sum.`,
          },
        ];

  if (by === 'size') {
    const message = 'Costs are the frames’ widths and heights added up, which is a measure of size and no money.';
    return [...custom, { code: 'cost-by-size', severity: 'note', at: '', message }];
  }
  if (names.length === 0) return custom;
  const message = `Not in the cost, since the shelf says no price of ${names.length === 1 ? 'it' : 'them'}: ${names.join(', ')}.`;
  return [...custom, { code: 'cost-not-counted', severity: 'note', at: '', message }];
}

/** The first few, and how many more. */
function listed(names: readonly string[]): string {
  const shown = names.slice(0, 5);
  const more = names.length - shown.length;
  if (more > 0) return `${shown.join(', ')} and ${more} more`;
  return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}
