/** A show's plan as files: a job for each picture, the list of them, and the frames to buy. */
import { printJob } from '../../core/job/text';
import type { WrittenJob } from '../../core/job/written';
import type { HungPlace, ShowPlan } from '../../core/show/plan';
import { isHung, printPlaces, printToBuy } from '../../core/show/print-list';
import type { NamedBytes } from '../../host/write-together';
import { fileName } from '../file-name';

/** Names begin with the picture's number in the list, so that no two are alike on any system. */
export function showFiles(plan: ShowPlan): NamedBytes[] {
  const names = namesOf(plan);
  const nameOf = ({ written }: HungPlace) => names.get(written) ?? '';
  return [
    ...[...names].map(([written, name]) => file(name, printJob(written))),
    file('show-list.csv', printPlaces(plan, nameOf)),
    file('frames-to-buy.csv', printToBuy(plan)),
  ];
}

/** One job for all copies of a picture that hang in the same frame. */
function namesOf({ places }: ShowPlan): Map<WrittenJob, string> {
  const names = new Map<WrittenJob, string>();
  const lines = [...new Set(places.map(({ picture }) => picture.line))];
  const digits = String(lines.length).length;
  for (const line of lines) {
    const number = String(lines.indexOf(line) + 1).padStart(digits, '0');
    const own = places.filter((place) => place.picture.line === line).filter(isHung);
    [...new Set(own.map(({ written }) => written))].forEach((written, index) => {
      const letter = index === 0 ? '' : `-${index + 1}`;
      names.set(written, `${number}${letter} ${fileName(own[0]?.picture.title ?? '')}.json`);
    });
  }
  return names;
}

function file(name: string, text: string): NamedBytes {
  return { name, bytes: new TextEncoder().encode(text) };
}
