/** What is refused in an SVG file, as problems in words; places are lines of the file. */
import type { Problem } from '../problem';

function problem(code: string, message: string, remedy: string): Problem {
  return { code, severity: 'error', at: '', message, remedy };
}

const PLAIN = 'save it as plain SVG, with its shapes turned into paths';

export const refusal = {
  notSvg: (why: string) =>
    problem(
      'outline-not-svg',
      `This is no SVG file: ${lower(why)}. Choose a file that is saved as SVG.`,
      'an SVG file',
    ),

  /** `fault` begins with line and column, as the parser tells it. */
  notXml: (fault: string) => {
    const [, line, column, why] = /^(?:undefined:)?(\d+):(\d+): (.*)$/.exec(fault) ?? [];
    const where = line === undefined ? '' : ` at line ${line}, column ${column}`;
    return problem(
      'outline-unreadable',
      `The SVG file can’t be read${where}: ${lower(why ?? fault).replace(/\.$/, '')}. It must be well-formed XML; ${PLAIN}.`,
      'plain SVG',
    );
  },

  tooLong: (count: number, most: number) =>
    problem(
      'outline-too-large',
      `The SVG file has ${count} characters; the most is ${most}. Leave only the one outline in it.`,
      'a file of one outline',
    ),

  tooMany: (most: number, deepest: number) =>
    problem(
      'outline-too-large',
      `The SVG file has more than ${most} elements, or groups more than ${deepest} deep. Leave only the one outline in it.`,
      'a file of one outline',
    ),

  text: (line: number) =>
    problem(
      'outline-has-text',
      `There is text in the drawing (line ${line}), whose shape depends on the fonts of a machine; turn it into paths or take it away.`,
      'text turned into paths',
    ),

  image: (line: number) =>
    problem(
      'outline-has-image',
      `There is a picture in the drawing (line ${line}), which has no outline to cut; trace it or take it away.`,
      'no picture in the drawing',
    ),

  script: (line: number) =>
    problem(
      'outline-has-script',
      `There is a program in the file (line ${line}), which could change what is drawn and is never run; ${PLAIN}.`,
      'a file without scripts',
    ),

  /** Something that shapes the drawing in a way this program does not follow. */
  notFollowed: (what: string, line: number, remedy: string = PLAIN) =>
    problem('outline-not-followed', `${what} (line ${line}) is not followed here; ${remedy}.`, remedy),

  unreadable: (what: string, written: string, line: number, right: string) =>
    problem(
      'outline-unreadable',
      `The ${what} “${written.slice(0, 40)}” (line ${line}) can’t be read; it must be ${right}.`,
      right,
    ),
};

function lower(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}
