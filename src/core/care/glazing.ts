/** Judges the glazing: whether there is some over paper, what it keeps back, and whether its charge lifts loose colour. */
import type { Edit } from '../problem';
import type { Job } from '../job/job';
import type { GlazingMaterial, Package } from '../job/package';
import { GLAZING } from '../job/read-package';
import { usualThickness } from '../job/tolerances';
import { cheapestGlazing, costOfTaking, type WantedGlazing } from './costs';
import { judged, type Demand, type Judgement, type Step, type Taken } from './judgement';
import { SOURCES } from './sources';
import { hasKind, type Subject } from './subject';

type Glazing = Package['glazing'];

/** Undefined for paintings without glazing: they may go without. */
export function judgeGlazing(subject: Subject): Judgement | undefined {
  const { glazing } = subject.job.package;
  if (!glazing && !subject.hasPaper) return undefined;
  return judged({
    key: 'glazing',
    what: 'Glazing',
    at: 'package.glazing',
    now: glazingText(glazing),
    counts: subject.hasPaper,
    demands: [isGlazed(glazing), ...(glazing ? [glassOrAcrylic(glazing), filtered(glazing)] : [])],
    step: () => filterStep(subject),
  });
}

function isGlazed(glazing: Glazing): Demand {
  const words = glazing ? 'It keeps dust, damp and hands away' : 'There is none; paper is asked to be behind glazing';
  return { from: 'protective', met: glazing !== undefined, words, sources: [SOURCES.lcGuide, SOURCES.florida] };
}

function glassOrAcrylic({ material }: NonNullable<Glazing>): Demand {
  const met = material !== 'polycarbonate';
  const words = met ? `It is of ${material}` : 'It is of polycarbonate; glass or acrylic is asked';
  return { from: 'conservation', met, words, sources: [SOURCES.lcGuide] };
}

function filtered({ uvFilter }: NonNullable<Glazing>): Demand {
  const words = uvFilter
    ? 'It keeps ultraviolet back, which slows fading and does not end it'
    : 'It lets ultraviolet through; glazing that keeps it back is asked, though it only slows fading';
  return { from: 'conservation', met: uvFilter, words, sources: [SOURCES.florida, SOURCES.cciLight] };
}

function filterStep(subject: Subject): Step {
  const { glazing } = subject.job.package;
  const keeps = glazing && glazing.material !== 'polycarbonate' && !asksGlass(subject);
  const material: GlazingMaterial = keeps ? glazing.material : 'glass';
  return {
    words: `Take ${material} that keeps ultraviolet back`,
    reaches: 'conservation',
    ...planned(subject, { material, uvFilter: true }, `Plan with ${material} with a UV filter`),
  };
}

/** The fix and the cost of other glazing, by the cheapest of the shelf that does. */
function planned(subject: Subject, wanted: WantedGlazing, label: string): Pick<Step, 'fix' | 'taken' | 'cost'> {
  const { job, show } = subject;
  const found = cheapestGlazing(subject, wanted);
  const thickness = 'cost' in found ? undefined : found.thickness;
  const edits: Edit[] = [
    ...(wanted.material === job.package.glazing?.material ? [] : toMaterial(wanted.material)),
    ...(wanted.uvFilter === (job.package.glazing?.uvFilter ?? false) ? [] : [{ at: 'package.glazing.uvFilter', value: wanted.uvFilter }]), // prettier-ignore
    ...(thickness === undefined ? [] : asThick(show.exact(thickness))),
  ];
  const fix = { label, edits };
  if ('cost' in found) return { fix, cost: found.cost };
  const taken: Taken = { name: found.name, piece: 'Glazing', into: (before) => withGlazing(before, wanted, thickness) };
  return { fix, taken, cost: costOfTaking(subject, taken) };
}

function asThick(thickness: string): Edit[] {
  return [
    { at: 'package.glazing.thinnest', value: undefined },
    { at: 'package.glazing.thickest', value: undefined },
    { at: 'package.glazing.thickness', value: thickness },
  ];
}

function withGlazing(job: Job, { material, uvFilter }: WantedGlazing, thickness: number | undefined): Job {
  const { glazing } = job.package;
  const nominal = thickness ?? glazing?.thickness.nominal ?? GLAZING;
  const { antistatic = false, ...kept } = glazing?.material === material ? glazing : {};
  const thick = usualThickness(material, nominal);
  return {
    ...job,
    package: { ...job.package, glazing: { ...kept, material, uvFilter, antistatic, thickness: thick } },
  };
}

/** What was said of the old material is not true of the new one. */
function toMaterial(material: GlazingMaterial): Edit[] {
  return [
    { at: 'package.glazing.material', value: material },
    { at: 'package.glazing.antistatic', value: undefined },
    { at: 'package.glazing.density', value: undefined },
  ];
}

/** The charge of a plastic lifts what lies loose on the paper; undefined where nothing does, or nothing is glazed. */
export function judgeStatic(subject: Subject): Judgement | undefined {
  const { glazing } = subject.job.package;
  const loose = hasKind(subject, ['pastel or charcoal']);
  if (!glazing || !(loose || hasKind(subject, ['drawing', 'textile']))) return undefined;
  return judged({
    key: 'static',
    what: 'Charge of the glazing',
    at: 'package.glazing.material',
    now: glazingText(glazing),
    demands: loose ? liftsPastel(glazing) : [mayLift(glazing)],
    step: () => glassStep(subject),
  });
}

export function holdsCharge({ material, antistatic }: NonNullable<Glazing>): boolean {
  return material !== 'glass' && !antistatic;
}

/** Of what holds a charge no more has to be said. */
function liftsPastel(glazing: NonNullable<Glazing>): Demand[] {
  return [liftsNothing(glazing), ...(holdsCharge(glazing) ? [] : [isGlass(glazing)])];
}

function liftsNothing(glazing: NonNullable<Glazing>): Demand {
  const met = !holdsCharge(glazing);
  const words = met
    ? 'It holds no charge that lifts pastel or charcoal'
    : `${glazing.material === 'acrylic' ? 'Acrylic' : 'Polycarbonate'} can hold a charge that lifts pastel and charcoal off the paper; glass is asked`;
  return { from: 'protective', met, words, sources: [SOURCES.florida] };
}

/** What a maker's treatment does is the maker's word; the guidance knows only glass. */
function isGlass({ material }: NonNullable<Glazing>): Demand {
  const met = material === 'glass';
  const words = met
    ? 'It is of glass'
    : 'Treated against charge as it is, it rests on its maker’s word; the guidance for pastel and charcoal is glass';
  return { from: 'conservation', met, words, sources: [SOURCES.florida] };
}

/** Pencil and loose fibres hold better than pastel. */
function mayLift(glazing: NonNullable<Glazing>): Demand {
  const met = !holdsCharge(glazing);
  const words = met
    ? 'It holds no charge that lifts pencil or loose fibres'
    : 'It can hold a charge that lifts pencil, chalk or loose fibres; glass, or a plastic treated against it, is asked';
  return { from: 'conservation', met, words, sources: [SOURCES.florida, SOURCES.textileMuseum] };
}

function glassStep(subject: Subject): Step {
  const uvFilter = subject.job.package.glazing?.uvFilter ?? false;
  return {
    words: 'Take glass: heavier, and it breaks, but it holds no charge',
    reaches: 'conservation',
    ...planned(subject, { material: 'glass', uvFilter }, 'Plan with glass'),
  };
}

/** True where the charge of what there is has to give way to glass, whatever else is asked of it. */
function asksGlass(subject: Subject): boolean {
  return judgeStatic(subject)?.step !== undefined;
}

function glazingText(glazing: Glazing): string {
  if (!glazing) return 'none';
  const treated = glazing.antistatic && glazing.material !== 'glass' ? ', treated against charge' : '';
  return `${glazing.material}, ${glazing.uvFilter ? 'with' : 'without'} UV filter${treated}`;
}
