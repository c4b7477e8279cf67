/** A show's plan as files: a job for each picture, the list of them, and the frames to buy. */
import { fileName } from '../file-name';
import { printJob } from '../job/text';
import type { WrittenJob } from '../job/written';
import type { HungPlace, ShowPlan } from './plan';
import { isHung, printPlaces, printToBuy } from './print-list';

export interface ShowFile {
  readonly name: string;
  readonly text: string;
}

/** Names begin with the picture's number in the list, so that no two are alike on any system. */
export function showFiles(plan: ShowPlan): ShowFile[] {
  const names = namesOf(plan);
  const nameOf = ({ written }: HungPlace) => names.get(written) ?? '';
  return [
    ...[...names].map(([written, name]) => ({ name, text: printJob(written) })),
    { name: 'show-list.csv', text: printPlaces(plan, nameOf) },
    { name: 'frames-to-buy.csv', text: printToBuy(plan) },
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
