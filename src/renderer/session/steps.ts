/** How finely a written job asks its lengths to be shown. */
import type { WrittenJob } from '../../core/job/written';
import type { InchStep, MetricStep } from '../../core/units';

export function stepsOf(written: WrittenJob): { readonly in: InchStep; readonly mm: MetricStep } {
  return {
    in: Number((written.steps?.in ?? '1/16').slice(2)) as InchStep,
    mm: Number(written.steps?.mm ?? '0.5') as MetricStep,
  };
}
