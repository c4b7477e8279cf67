/** A job in words: every size with the sum that leads to it, then the order of cutting. */
import type { ViewName } from '../../bridge';
import type { CutPlan } from '../../core/cutting/plan';
import type { Job } from '../../core/job/job';
import type { Layout } from '../../core/layout/layout';
import { showingOf, showLength, stepLength } from '../../core/units';
import { paragraph, wrap } from '../print/text';
import { bareSection } from './bare';
import { bordersSection } from './borders';
import { frameSection } from './frame';
import { gapsSection } from './gaps';
import { layersSection } from './layers';
import { lineSections } from './lines';
import { orderSections } from './order';
import { picturesSection } from './pictures';
import type { Section } from './section';
import { wordsFor, type Words } from './words';
import { placesSection, windowsSection } from './windows';

export interface Described {
  readonly job: Job;
  readonly layout: Layout;
  readonly plan: CutPlan;
  /** The side the board is cut from. */
  readonly view: ViewName;
  /** Characters in a line. */
  readonly width: number;
}

export function describeJob(described: Described): string {
  const { job, layout, width } = described;
  const words = wordsFor(showingOf(job), width);
  const sections: Section[] = [
    { heading: job.title, lines: paragraph(reading(job, words), 2, width) },
    picturesSection(job, words),
    frameSection(job, layout, words),
    ...(job.layers.length === 0 ? [bareSection(layout, words)] : matSections(described, words)),
  ];
  return sections
    .filter(({ lines }) => lines.length > 0)
    .map(({ heading, lines }) => `${[...wrap(heading, width), ...lines].join('\n')}\n`)
    .join('\n');
}

function matSections({ job, layout, plan, view }: Described, words: Words): Section[] {
  return [
    layersSection(layout, words),
    bordersSection(layout, words),
    windowsSection(job, layout, words),
    placesSection(layout, words),
    gapsSection(job, layout, words),
    ...lineSections(plan, words),
    ...orderSections(plan, view, words),
  ];
}

/** How to read what follows. */
function reading(job: Job, { showing }: Words): string {
  const step = showLength(stepLength(showing), showing).withUnit;
  const sizes =
    job.measuredAt === 'face' && job.layers.length > 0 ? ' Window sizes in the job are meant at the face.' : '';
  return `Lengths are shown to ${step}; ≈ stands before one that is more than a thousandth of an inch from the true one. Sizes are width x height.${sizes}`;
}
