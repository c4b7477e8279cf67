/** Keeps which jobs are planned together, how often, and what is pinned, from one start of the screen to the next. */
import { rememberedPlan, rememberPlan } from '../sheets/kept-plan';
import type { Workbench } from '../workbench';

/** Brings back what was planned together; the files are read when the plan is looked at. The answer is called once the first job is open. */
export function bringPlanBack({ look, desk, file, session }: Workbench): () => void {
  const { jobs, own, pins } = rememberedPlan();
  look.sheetJobs = jobs;
  desk.pins.start(pins);
  return () => {
    // Copies are of the job that they were asked of.
    if (own && own.path === file.path && own.title === (session.committed.title ?? '')) look.copies = own.copies;
    $effect.root(() => {
      const title = $derived(session.committed.title ?? '');
      $effect(() => {
        const { path } = file;
        rememberPlan({
          jobs: look.sheetJobs.map((job) => ({ path: job.path, title: job.title, copies: job.copies })),
          own: { title, copies: look.copies, ...(path === undefined ? {} : { path }) },
          pins: desk.pins.held,
        });
      });
    });
  };
}
