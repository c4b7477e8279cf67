/** What is worth a look in the plan of a show: frames and pictures left out, costs that are not counted, what is not proven. */
import { alike } from '../layout/limits/slack';
import { showFor } from '../layout/show';
import type { Problem } from '../problem';
import type { HungPlace, ShowPlan } from './plan';
import { isHung } from './print-list';
import { listed } from '../phrases';
import { titled } from './words';

/** So many are named. */
const MOST_NAMED = 5;

type Planned = Omit<ShowPlan, 'problems'>;

export function worthTelling(plan: Planned): Problem[] {
  return [
    ...picturesLeft(plan),
    ...outOfRange(plan),
    ...depths(plan),
    ...notProven(plan),
    ...framesLeftOut(plan),
    ...notCounted(plan),
  ];
}

function picturesLeft({ places }: Planned): Problem[] {
  const left = places.filter(({ state }) => state === 'left');
  if (left.length === 0) return [];
  const which = listed(
    left.map(({ picture }) => titled(picture.title)),
    MOST_NAMED,
  );
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

/** By frame, since it is frames that are measured; how deep one has to be is said of the picture that asks for most. */
function depths({ places, showing }: Planned): Problem[] {
  const { unit, inchStep, metricStep } = showing;
  const show = showFor({ units: unit, steps: { in: inchStep, mm: metricStep } });
  const framed = places.filter(isHung).filter(({ frame }) => frame !== undefined);
  const tight = alike(
    framed.filter(({ depth }) => depth.verdict === 'may not fit'),
    ({ frame }) => frame?.name ?? '',
  ).map((group): Problem => {
    const { frame, depth, picture } = deepest(group);
    const [which, more] = [titled(picture.title), group.length > 1 ? `, the deepest of ${group.length} in it` : ''];
    return {
      code: 'show-depth-tight',
      severity: 'warning',
      at: '',
      message: `${titled(frame?.name ?? '')} holds ${which}${more}, as all is named, but with all at its thickest ${show.missing(depth.needs.greatest, depth.room?.depth ?? 0)} is needed where it is ${show.limit(depth.room?.depth ?? 0)} deep: measure what you have.`,
    };
  });
  const unknown = framed.filter(({ depth }) => depth.verdict === 'depth unknown');
  if (unknown.length === 0) return tight;
  const names = [...new Set(unknown.map(({ frame }) => titled(frame?.name ?? '')))];
  const most = deepest(unknown).depth.needs;
  return [
    ...tight,
    {
      code: 'show-depth-unknown',
      severity: 'note',
      at: '',
      message: `How deep the rabbet of ${listed(names, MOST_NAMED)} is, the shelf does not say: measure it. Up to ${show.limit(most.nominal)} is needed as all is named, ${show.limit(most.greatest)} with all at its thickest.`,
    },
  ];
}

function deepest<T extends HungPlace>(places: readonly T[]): T {
  return places.reduce((a, b) => (b.depth.needs.greatest > a.depth.needs.greatest ? b : a));
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
      message: `${listed(names, MOST_NAMED)} ${many ? 'are' : 'is'} not chosen from: ${why
        .replace(/\.$/, '')
        .replace(/^it has/, many ? 'they have' : 'it has')
        .replace(/^its rabbet is/, many ? 'their rabbets are' : 'its rabbet is')}.`,
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
