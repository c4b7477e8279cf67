/** Writes the sheet that a cutter is calibrated by, where the user says. */
import type { Workbench } from '../workbench';

export async function writeSheet(bench: Workbench, cutter: string | undefined): Promise<void> {
  const { host, info, session, dialogs, notice } = bench;
  const title = 'Write the calibration sheet';
  const name = 'trial-square.pdf';
  const chosen =
    info.kind === 'browser'
      ? await dialogs.chooseFile({ title, action: 'Write', endings: ['pdf'], name })
      : await pick(bench, title, name);
  if (chosen === undefined) return;
  const path = /\.pdf$/i.test(chosen) ? chosen : `${chosen}.pdf`;
  const { unit } = session.showing;
  const request = {
    path,
    paper: unit === 'in' ? 'letter' : 'a4',
    units: unit,
    ...(cutter === undefined ? {} : { cutter }),
  } as const;
  // The system's own dialog has asked about a path it gave.
  let reply = await host.call('writeCalibrationSheet', {
    ...request,
    replace: info.kind === 'desktop' && path === chosen,
  });
  if (!reply.ok && reply.failure.code === 'exists') {
    const answer = await dialogs.choose({
      title: 'There is a file of that name',
      text: reply.failure.message,
      choices: [
        { value: 'stay', label: 'Leave it', weight: 'main' },
        { value: 'over', label: 'Write over it' },
      ],
    });
    if (answer !== 'over') return;
    reply = await host.call('writeCalibrationSheet', { ...request, replace: true });
  }
  if (reply.ok) notice.say(`The calibration sheet was written to ${path}.`);
  else await dialogs.tell({ title: 'The sheet could not be written', text: reply.failure.message });
}

async function pick({ host, info }: Workbench, title: string, name: string): Promise<string | undefined> {
  const reply = await host.call('pickSavePath', { suggested: `${info.folder}${info.separator}${name}`, title });
  return reply.ok ? reply.value.path : undefined;
}
