/** Opens the screen: connects to the host, makes the workbench, and starts with unsaved work, the file asked for, or a demo job. */
import { mount } from 'svelte';
import type { HostClient, HostInfo } from '../bridge';
import App from './App.svelte';
import { PictureImageStore } from './canvas/picture-images.svelte';
import { Stage } from './canvas/stage.svelte';
import { CostsDesk } from './costs/costs-desk.svelte';
import { Dialogs } from './dialogs/dialogs.svelte';
import { KeptList } from './files/kept-list.svelte';
import { CUTTERS, PRICES, shelfKind, stockKind } from './files/list-kinds';
import { JobFile } from './files/job-file.svelte';
import { bringPlanBack } from './files/keep-plan.svelte';
import { emptyJob, start } from './files/new-job';
import { openPath } from './files/open-path';
import { readText } from './files/read-text';
import { offerKept } from './files/recovery';
import { connectHost } from './host-client';
import { Look } from './session/look.svelte';
import { Notice } from './session/notice.svelte';
import { Session } from './session/session.svelte';
import { SheetsDesk } from './sheets/sheets-desk.svelte';
import './styles/tokens.css';
import './styles/base.css';
import './styles/floating.css';
import './styles/pieces.css';
import type { Workbench } from './workbench';

function makeWorkbench(host: HostClient, info: HostInfo): Workbench {
  const session: Session = new Session(emptyJob('in'), () => shelf.list);
  const shelf = new KeptList(
    host,
    shelfKind(() => session.units),
  );
  const file = new JobFile(session);
  const images = new PictureImageStore(host, () => file.path);
  const stock = new KeptList(
    host,
    stockKind(() => session.units),
  );
  const prices = new KeptList(host, PRICES);
  const [look, notice] = [new Look(), new Notice()];
  const desk = new SheetsDesk({ session, look, notice, shelf: () => shelf.list, stock: () => stock.list, damage: () => stock.damage, stands: (change) => stock.stands(change) }); // prettier-ignore
  return {
    host,
    info,
    session,
    file,
    images,
    look,
    stage: new Stage(),
    cutters: new KeptList(host, CUTTERS),
    shelf,
    stock,
    prices,
    desk,
    costs: new CostsDesk({ session, look, desk, shelf: () => shelf.list, prices: () => prices.list }),
    dialogs: new Dialogs(),
    notice,
  };
}

/** A demo job, there before the screen is, so that nothing a quick hand does is written over. */
async function openDemo(bench: Workbench): Promise<void> {
  const samples = await bench.host.call('samples', {});
  const sample = samples.ok ? samples.value[0] : undefined;
  const read = sample && readText(sample.text);
  if (read?.ok) start(bench, read.written, '');
}

/** What takes the demo job's place: unsaved work of another time, or the file asked for. */
async function openWanted(bench: Workbench): Promise<void> {
  if (await offerKept(bench)) return;
  if (bench.info.startWith !== undefined) await openPath(bench, bench.info.startWith, { atStart: true });
}

async function open(target: HTMLElement): Promise<void> {
  const host = connectHost();
  // Until there is a screen there is nothing to lose, so the window may go at once.
  const letGo = host.on('closing', () => void host.call('allowClose', {}));
  const info = await host.call('info', {});
  if (!info.ok) throw new Error(info.failure.message);
  const bench = makeWorkbench(host, info.value);
  const keepPlan = bringPlanBack(bench);
  // What is chosen and reckoned from the user's lists must not begin with the generic ones.
  await Promise.all([
    bench.cutters.load(),
    bench.shelf.load(),
    bench.stock.load(),
    bench.prices.load(),
    openDemo(bench),
  ]);
  mount(App, { target, props: { bench } });
  letGo();
  await openWanted(bench);
  keepPlan();
}

const target = document.getElementById('app');
if (target) {
  open(target).catch((fault: unknown) => {
    target.textContent = `Matwright could not be opened: ${fault instanceof Error ? fault.message : String(fault)}. Start it again from its icon or its address.`;
  });
}
