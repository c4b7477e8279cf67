/** Keeps unsaved work with the host, a moment after each change, and offers what an earlier session left. */
import { printJob } from '../../core/job/text';
import type { Workbench } from '../workbench';
import { readText } from './read-text';

const MOMENT = 700;

/** One for each opening of the screen. */
const id = crypto.randomUUID();

/** Called whenever the job or its saved state changed; the answer takes the call back. */
export function keepSoon(bench: Workbench): () => void {
  const { host, session, file, notice } = bench;
  const written = session.committed;
  const dirty = file.isDirty;
  const timer = setTimeout(() => {
    const path = file.path === undefined ? {} : { path: file.path };
    const call = dirty
      ? host.call('keepRecovery', { id, ...path, title: written.title ?? 'Untitled', text: printJob(written) })
      : host.call('dropRecovery', { id });
    call.catch(() =>
      notice.fail(
        'The program behind this screen does not answer; unsaved work is not being kept. Save to keep a copy of it.',
      ),
    );
  }, MOMENT);
  return () => clearTimeout(timer);
}

/** Forgets what this session kept: it was given up on purpose. */
export async function dropKept({ host }: Workbench): Promise<void> {
  await host.call('dropRecovery', { id });
}

/** Offers unsaved work of earlier sessions; true when one of them was opened. */
export async function offerKept(bench: Workbench): Promise<boolean> {
  const { host, session, file, look, stage, dialogs, notice } = bench;
  const reply = await host.call('listRecoveries', {});
  if (!reply.ok || reply.value.length === 0) return false;
  const answer = await dialogs.recover(reply.value);
  for (const dropped of answer.dropped) await host.call('dropRecovery', { id: dropped });
  const chosen = reply.value.find((recovery) => recovery.id === answer.open);
  if (chosen === undefined) return false;
  const read = readText(chosen.text);
  if (!read.ok) {
    await dialogs.tell({
      title: 'The kept work could not be read',
      text: 'It is left where it is.',
      problems: read.problems,
    });
    return false;
  }
  session.start(read.written);
  file.recovered(chosen.path);
  look.startJob();
  stage.fit();
  await host.call('keepRecovery', {
    id,
    ...(chosen.path === undefined ? {} : { path: chosen.path }),
    title: chosen.title,
    text: chosen.text,
  });
  await host.call('dropRecovery', { id: chosen.id });
  notice.say(`"${chosen.title}" is back as it was; it is not saved yet.`);
  return true;
}
