/** Changes to what lies in the rabbet, so that it takes less of its depth. */
import type { Job } from '../job/job';
import type { BackingMaterial, GlazingMaterial, Package } from '../job/package';
import { asUsual, thickestWithin } from '../job/tolerances';
import { showFor } from '../layout/show';
import type { Edit } from '../problem';
import { ofKind } from '../shelf/shelf';
import type { Change, Trouble } from './change';
import { lyingPictures, rubsOff } from './pictures';
import { SLACK } from './range';

/** Thinner it is not made, or protects nothing, mm. Common practice, no source. */
const THINNEST: Readonly<Record<BackingMaterial, number>> = {
  'foam board': 3,
  'corrugated board': 2,
  'mat board': 1.2,
  hardboard: 2,
  plywood: 3,
  'polypropylene board': 2,
  other: 1.2,
};

/** The thickest backing that is sure to fit: of the same stuff, or of mat board where that is not made so thin; else the thinnest. */
export function backingChange(trouble: Trouble): Change[] {
  const { job, fit } = trouble;
  const { backing } = job.package;
  // In a groove the back lies behind the room that the rest goes into, and needs wood behind it in turn.
  const left = fit.room.kind === 'groove' ? (fit.behind?.worst ?? Infinity) - 2 * SLACK : fit.free.worst;
  if (!backing || left >= 0) return [];
  const show = showFor(job);
  const room = backing.thickness.greatest + left;
  const sure = ([backing.material, 'mat board'] as const)
    .map((material) => ({ material, thickness: show.stepDown(thickestWithin(material, room)) }))
    .find(({ material, thickness }) => thickness >= THINNEST[material]);
  const chosen = sure ?? { material: 'mat board' as const, thickness: show.stepUp(THINNEST['mat board']) };
  return chosen.thickness < backing.thickness.nominal - SLACK ? [backingOf(chosen, trouble)] : [];
}

function backingOf(
  { material, thickness }: { readonly material: BackingMaterial; readonly thickness: number },
  { job }: Trouble,
): Change {
  const show = showFor(job);
  const { backing } = job.package;
  const other = material !== backing?.material;
  return {
    kind: 'backing',
    words: `take a backing${other ? ` of ${material}` : ''} ${show.limit(thickness)} thick or thinner in place of ${show.limit(backing?.thickness.nominal ?? 0)}`,
    ...(other ? { caution: 'it keeps less from the picture from behind' } : {}),
    measure: thickness,
    edits: [
      ...(other ? edits('package.backing', { material, density: undefined, quality: undefined }) : []),
      ...edits('package.backing', { thickness: show.exact(thickness), thinnest: undefined, thickest: undefined }),
    ],
    job: withPackage(job, { backing: { quality: {}, ...backing, material, thickness: asUsual(material, thickness) } }),
  };
}

/** A pane that could be taken instead. */
interface Pane {
  readonly material: GlazingMaterial;
  readonly thickness: number;
  readonly name?: string;
  readonly uvFilter?: boolean;
}

/** Picture glass 2.0 mm (ASTM C1036, from memory), and acrylic as thin. */
const GENERIC: readonly Pane[] = [
  { material: 'glass', thickness: 2 },
  { material: 'acrylic', thickness: 2 },
];

/** Of each material the thickest pane that is sure to fit, else the thinnest: from the shelf, or as they are generally had. */
export function glazingChanges(trouble: Trouble): Change[] {
  const { job, layout, fit, shelf } = trouble;
  const { glazing } = job.package;
  if (!glazing) return [];
  const stocked = ofKind(shelf, 'glazing').flatMap(({ material, thickness, name, uvFilter, count }): Pane[] =>
    thickness === undefined || count === 0 ? [] : [{ material, thickness, name, uvFilter }],
  );
  const loose = lyingPictures(job, layout).some(({ picture }) => rubsOff(picture));
  const room = glazing.thickness.greatest + fit.free.worst;
  const panes = (stocked.length > 0 ? stocked : GENERIC)
    // Plastic can hold a charge that lifts loose powder (Florida Department of State, State Archives).
    .filter(({ material }) => material === 'glass' || !loose)
    .toSorted((a, b) => b.thickness - a.thickness);
  return (['glass', 'acrylic', 'polycarbonate'] as const).flatMap((material): Change[] => {
    const thinner = panes.filter((pane) => pane.material === material);
    const pane =
      thinner.find(({ thickness }) => asUsual(material, thickness).greatest <= room + SLACK) ?? thinner.at(-1);
    return pane ? [paneChange(pane, trouble)] : [];
  });
}

function paneChange({ material, thickness, name, uvFilter }: Pane, trouble: Trouble): Change {
  const { job } = trouble;
  const show = showFor(trouble.job);
  const { glazing } = job.package;
  const before = glazing ? ` in place of ${show.fine(glazing.thickness.nominal)} ${glazing.material}` : '';
  const other = glazing?.material !== material;
  return {
    kind: 'glazing',
    words: `take ${material} ${show.fine(thickness)} thick${name === undefined ? '' : ` (${name})`}${before}`,
    ...(other && material !== 'glass'
      ? { caution: 'plastic scratches and holds a charge; it moves with warmth and damp, so leave it play' }
      : {}),
    measure: thickness,
    edits: edits('package.glazing', {
      material,
      thickness: show.exact(thickness),
      thinnest: undefined,
      thickest: undefined,
      ...(other ? { density: undefined, antistatic: undefined } : {}),
      ...(uvFilter === undefined ? {} : { uvFilter }),
    }),
    job: withPackage(job, {
      glazing: { uvFilter: false, antistatic: false, ...glazing, material, thickness: asUsual(material, thickness) },
    }),
  };
}

export function spacerChange(trouble: Trouble): Change[] {
  const { job } = trouble;
  const { spacer, ...rest } = job.package;
  if (!spacer) return [];
  const { nominal } = spacer.thickness;
  return [
    {
      kind: 'spacer',
      words: `leave out the spacer of ${showFor(trouble.job).limit(nominal)}`,
      caution: 'the mat alone then keeps the picture off the glazing',
      measure: nominal,
      edits: [{ at: 'package.spacer', value: undefined }],
      job: { ...job, package: rest },
    },
  ];
}

/** The lowest layer left out; the top one stays. */
export function layerChange(trouble: Trouble): Change[] {
  const { job } = trouble;
  const last = job.layers.at(-1);
  if (!last || job.layers.length < 2) return [];
  const number = job.layers.length;
  return [
    {
      kind: 'layer',
      words: `leave out layer ${number} (${last.board}), ${showFor(trouble.job).limit(last.thickness)}`,
      caution: 'the mat loses a colour, and the picture some air',
      measure: last.thickness,
      edits: [{ at: `mat.layers[${number - 1}]`, value: undefined }],
      job: { ...job, layers: job.layers.slice(0, -1) },
    },
  ];
}

export function withPackage(job: Job, changed: Partial<Package>): Job {
  return { ...job, package: { ...job.package, ...changed } };
}

/** Values of one group, undefined where one is taken away. */
function edits(group: string, values: Readonly<Record<string, unknown>>): Edit[] {
  return Object.entries(values).map(([key, value]) => ({ at: `${group}.${key}`, value }));
}
