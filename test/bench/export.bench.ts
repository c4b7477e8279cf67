/**
 * Export of a 40 x 60 in blank tiled on Letter, beside raw pdfkit drawing the very same lines and words on as many
 * pages in the same run; both parse and embed the fonts. Target: at most 1.5 times.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import PDFDocument from 'pdfkit';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';
import { showingOf } from '../../src/core/units';
import { makeTemplate, type OutputContext } from '../../src/outputs';
import { readPdf, type ReadPage } from '../outputs/read-pdf';
import { median } from './median';

const TARGET = 1.5;
const ROUNDS = 25;
const POINTS = 72 / 25.4;

// Benches run from the project's folder.
const font = (name: string) => new Uint8Array(readFileSync(join('resources', 'fonts', name)));
const fonts = { regular: font('Inter-Regular.ttf'), bold: font('Inter-SemiBold.ttf') };

const SEA_CHART = {
  format: 'matwright-job',
  version: 1,
  title: 'Sea chart of the bay',
  frame: { size: '40 x 60 in' },
  pictures: [{ title: 'Sea chart of the bay', size: '30 x 50 in' }],
};

function open(): OutputContext {
  const opened = parseJobText(JSON.stringify(SEA_CHART));
  if (!opened.ok) throw new Error('the job of the bench has errors');
  const { job } = opened.value;
  const layout = layOut(job);
  if (!layout.ok) throw new Error('the job of the bench cannot be laid out');
  return {
    job,
    layout: layout.value,
    plan: planCuts(job, layout.value),
    showing: showingOf(job),
    options: { paper: 'letter', view: 'back', units: 'in', only: ['template'], turnEverySecondPage: false },
    fonts,
    pictures: new Map(),
  };
}

async function exportTemplate(): Promise<Uint8Array> {
  // From opening the job to the last byte, as a user waits for it.
  const made = await makeTemplate(open());
  if (!made.ok) throw new Error('the template was not made');
  return made.value;
}

/** The same lines and words with nothing but pdfkit; lines of one width and dash in one path, as one would by hand. */
function drawRaw(pages: readonly ReadPage[]): Promise<number> {
  const document = new PDFDocument({ autoFirstPage: false, font: null as unknown as string });
  document.registerFont('regular', fonts.regular as unknown as ArrayBuffer);
  document.registerFont('bold', fonts.bold as unknown as ArrayBuffer);
  const ended = new Promise<number>((resolve) => {
    let bytes = 0;
    document.on('data', (chunk: Uint8Array) => (bytes += chunk.length));
    document.on('end', () => resolve(bytes));
  });
  for (const page of pages) drawRawPage(document, page);
  document.end();
  return ended;
}

function drawRawPage(document: PDFKit.PDFDocument, page: ReadPage): void {
  document.addPage({ size: [page.width * POINTS, page.height * POINTS], margin: 0 });
  const x = (mm: number) => mm * POINTS;
  const y = (mm: number) => (page.height - mm) * POINTS;
  page.strokes.forEach(({ from, to, width, dashed }, index) => {
    document.moveTo(x(from.x), y(from.y)).lineTo(x(to.x), y(to.y));
    const next = page.strokes[index + 1];
    if (next && next.width === width && next.dashed === dashed) return;
    document.lineWidth(width * POINTS);
    if (dashed) document.dash(3, { space: 2 });
    document.stroke();
    if (dashed) document.undash();
  });
  for (const { text, at, size, turn, font } of page.words) {
    const rotation = turn === 90 ? { rotation: 90 } : {};
    document.font(font === 'Inter-SemiBold' ? 'bold' : 'regular', size);
    document.text(text, x(at.x), y(at.y), { lineBreak: false, baseline: 'alphabetic', ...rotation });
  }
}

async function time(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

const { pages } = readPdf(await exportTemplate());
const lines = pages.reduce((sum, page) => sum + page.strokes.length, 0);
const words = pages.reduce((sum, page) => sum + page.words.length, 0);
for (let warm = 0; warm < 5; warm++) {
  await exportTemplate();
  await drawRaw(pages);
}
const ours: number[] = [];
const raw: number[] = [];
// Turn and turn about, so that a busy moment of the machine falls on both.
for (let round = 0; round < ROUNDS; round++) {
  ours.push(await time(exportTemplate));
  raw.push(await time(() => drawRaw(pages)));
}
const ratio = median(ours.map((milliseconds, round) => milliseconds / (raw[round] ?? NaN)));
console.log(`export: 40 x 60 in on Letter, ${pages.length} pages, ${lines} lines, ${words} texts`);
console.log(
  `  template ${median(ours).toFixed(1)} ms, raw pdfkit ${median(raw).toFixed(1)} ms (medians of ${ROUNDS} rounds)`,
);
console.log(
  `  median ratio of a round ${ratio.toFixed(2)} (target at most ${TARGET}): ${ratio <= TARGET ? 'met' : 'NOT met'}`,
);
