/** What a colour in words looks like, as near as a screen can come (from memory): woods, finishes and plain colours. */

const COLOURS: Readonly<Record<string, string>> = {
  black: '#1f1d1b',
  white: '#f1eee7',
  grey: '#8d8b88',
  silver: '#b9b8b4',
  gold: '#b6924a',
  bronze: '#7d5f3a',
  copper: '#a0633f',
  brown: '#5b4636',
  red: '#8c2f2a',
  blue: '#2f4a6d',
  green: '#46603f',
  natural: '#cdb48c',
  ash: '#d3bf9c',
  beech: '#cfa777',
  birch: '#dcc7a0',
  cherry: '#8f4f32',
  mahogany: '#5f2f24',
  maple: '#d8b98a',
  oak: '#b28f5f',
  pine: '#d9b77c',
  teak: '#93683d',
  walnut: '#5a4131',
};

const SPELT: Readonly<Record<string, string>> = { gray: 'grey', golden: 'gold' };

/** `#rrggbb` of the last word that names a colour: "natural ash" is ash. Undefined where none does. */
export function colourOf(words: string): string | undefined {
  const plain = words.trim().toLowerCase();
  if (/^#[0-9a-f]{6}$/.test(plain)) return plain;
  const known = plain.split(/[^a-z]+/).flatMap((word) => COLOURS[SPELT[word] ?? word] ?? []);
  return known.at(-1);
}
