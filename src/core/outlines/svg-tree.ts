/** An SVG file's elements as a tree: what is not SVG's own, comments and all between tags left out. */
import { SaxesParser, type SaxesAttributeNS } from 'saxes';
import { bad, good, type Result } from '../problem';
import { refusal } from './svg-refusals';

export interface SvgElement {
  readonly name: string;
  /** By name; `href` also where it is written `xlink:href`. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly SvgElement[];
  /** What stands between the tags of a style sheet. */
  readonly text: string;
  /** Of the file, from 1. */
  readonly line: number;
}

/** Larger than any drawing of one outline. */
const MOST_CHARACTERS = 5_000_000;
/** Longer files may not use entities of their own. */
const MOST_WITH_ENTITIES = 500_000;
const MOST_ELEMENTS = 20_000;
const DEEPEST = 200;

const SVG = 'http://www.w3.org/2000/svg';
const XLINK = 'http://www.w3.org/1999/xlink';

interface Growing extends SvgElement {
  children: SvgElement[];
  text: string;
}

/** Entities that a file declares are put in where they are short and plain, as older files name their namespaces; others are refused where they are used. */
export function svgTree(text: string): Result<SvgElement> {
  if (text.length > MOST_CHARACTERS) return bad([refusal.tooLong(text.length, MOST_CHARACTERS)]);
  const plain = text.replace(/^\uFEFF/, '');
  if (!/^\s*</.test(plain)) return bad([refusal.notSvg('It does not begin with a tag')]);
  const open: (Growing | undefined)[] = [];
  let root: Growing | undefined;
  let rootName: string | undefined;
  let count = 0;
  let namespace = SVG;
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('doctype', (declared) => {
    if (plain.length <= MOST_WITH_ENTITIES) Object.assign(parser.ENTITIES, plainEntities(declared));
  });
  parser.on('opentag', ({ local, uri, attributes }) => {
    if (open.length >= DEEPEST || count >= MOST_ELEMENTS) throw new TooMany();
    count += 1;
    if (rootName === undefined) {
      rootName = local;
      // A root that names no namespace at all is taken for what it looks like.
      namespace = uri === '' ? '' : SVG;
    }
    const parent = open.at(-1);
    const isOurs = uri === namespace && (open.length === 0 || parent !== undefined);
    const element: Growing | undefined = isOurs
      ? { name: local, attributes: ownAttributes(attributes), children: [], text: '', line: parser.line }
      : undefined;
    if (element && parent) parent.children.push(element);
    if (open.length === 0) root = element;
    open.push(element);
  });
  parser.on('closetag', () => void open.pop());
  const keepText = (part: string) => {
    const element = open.at(-1);
    if (element?.name === 'style') element.text += part;
  };
  parser.on('text', keepText);
  parser.on('cdata', keepText);
  try {
    parser.write(plain).close();
  } catch (fault) {
    if (fault instanceof TooMany) return bad([refusal.tooMany(MOST_ELEMENTS, DEEPEST)]);
    if (rootName !== undefined && rootName !== 'svg')
      return bad([refusal.notSvg(`Its outermost element is <${rootName}>`)]);
    return bad([refusal.notXml(fault instanceof Error ? fault.message : '')]);
  }
  if (root?.name !== 'svg') return bad([refusal.notSvg(`Its outermost element is <${rootName ?? ''}>`)]);
  return good(root);
}

class TooMany extends Error {}

/** What they stand for holds no other entity and no tag, so that nothing grows beyond some seventy times the file. */
function plainEntities(declared: string): Readonly<Record<string, string>> {
  const found = [...declared.matchAll(/<!ENTITY\s+([\w.-]+)\s+(?:"([^"&<]{0,200})"|'([^'&<]{0,200})')\s*>/g)];
  return Object.fromEntries(found.map(([, name = '', one, other]) => [name, one ?? other ?? '']));
}

function ownAttributes(attributes: Readonly<Record<string, SaxesAttributeNS>>): ReadonlyMap<string, string> {
  const kept = new Map<string, string>();
  for (const { local, uri, value } of Object.values(attributes)) {
    if (uri === '') kept.set(local, value);
    else if (uri === XLINK && local === 'href' && !kept.has('href')) kept.set('href', value);
  }
  return kept;
}
