/** The published guidance that care is judged by, and how surely each statement of it is known. */

/**
 * `seen`: read in the source's own text. `quoted`: read as others quote it. `from memory`: not read again.
 * `common practice`: no published source was found.
 */
export type Sureness = 'seen' | 'quoted' | 'from memory' | 'common practice';

export interface Source {
  readonly title: string;
  /** Who published it, where the title does not say it. */
  readonly body?: string;
  readonly clause?: string;
  readonly sureness: Sureness;
}

const LC = 'Library of Congress';
const CCI = 'Canadian Conservation Institute';
const AIC = 'American Institute for Conservation';
const FACTS = { title: 'Standard Guide for Maximum Preservation Framing', body: 'FACTS', sureness: 'quoted' } as const;

export const SOURCES = {
  lcGuide: { title: 'Guide to Preservation Matting and Framing', body: LC, sureness: 'seen' },
  lcPly: { title: 'Guide to Preservation Matting and Framing', body: LC, clause: 'on 4-ply', sureness: 'quoted' },
  lcHinges: { title: 'Matting and Hinging Works of Art on Paper', body: LC, clause: 'Paper hinges', sureness: 'seen' },
  lcBuffered: { title: 'Specification 300-313-16', body: LC, clause: 'cl. 1.6-1.7', sureness: 'seen' },
  lcUnbuffered: { title: 'Specification 200-201-16', body: LC, clause: 'cl. 1.6-1.7', sureness: 'seen' },
  cciMatting: { title: 'CCI Notes 11/5, Matting Works on Paper', body: CCI, sureness: 'seen' },
  cciFraming: { title: 'CCI Notes 10/8, Framing a Painting', body: CCI, sureness: 'seen' },
  cciBacking: { title: 'CCI Notes 10/10, Backing Boards for Paintings on Canvas', body: CCI, sureness: 'seen' },
  cciTextiles: {
    title: 'CCI Notes 13/17, Conservation Framing of Embroideries and Other Flat Textiles',
    body: CCI,
    sureness: 'seen',
  },
  cciLight: { title: 'Agent of Deterioration: Light', body: CCI, sureness: 'quoted' },
  ccaha: {
    title: 'Matting and Framing Specifications for Objects on Paper',
    body: 'Conservation Center for Art & Historic Artifacts',
    sureness: 'seen',
  },
  aicTreasures: { title: 'Caring for Your Treasures', body: AIC, sureness: 'quoted' },
  aicSealed: {
    title: 'Creating Well-Sealed Frames and Display Packages',
    body: `${AIC}, Exhibit Technical Notes`,
    sureness: 'seen',
  },
  florida: {
    title: 'Glazing, Mats, Backing Board, Adhesive',
    body: 'Florida Department of State, Archives',
    sureness: 'seen',
  },
  textileMuseum: {
    title: 'Framing Textiles',
    body: 'The George Washington University Museum and The Textile Museum',
    sureness: 'seen',
  },
  factsReversible: { ...FACTS, clause: 'cl. 3.02, 5.04, 8.01' },
  factsGap: { ...FACTS, clause: 'cl. 10.01' },
  factsWood: { ...FACTS, clause: 'cl. 10.02-10.03' },
  iso9706: {
    title: 'ISO 9706:1994 (permanent paper; boards lie outside its scope)',
    body: 'as tabulated by the Library of Congress',
    sureness: 'quoted',
  },
  iso18902: { title: 'ISO 18902:2013, Albums, framing and storage materials', sureness: 'from memory' },
  iso18916: { title: 'ISO 18916:2007, Photographic activity test', sureness: 'seen' },
  cyanotypes: {
    title: 'A Blueprint for Conserving Cyanotypes',
    body: `${AIC}, Topics in Photographic Preservation 10, 2003`,
    sureness: 'quoted',
  },
  texas: { title: 'guidance on light', body: 'Texas Association of Museums', sureness: 'quoted' },
  minnesota: { title: 'guidance on light', body: 'Science Museum of Minnesota', sureness: 'seen' },
  oversize: { title: 'Conservation DistList 2008/0732', body: 'CoOL', sureness: 'quoted' },
  practice: { title: 'no source', sureness: 'common practice' },
} as const satisfies Readonly<Record<string, Source>>;

/** `Library of Congress, Guide to Preservation Matting and Framing, on 4-ply (quoted)`. */
export function sourceText({ title, body, clause, sureness }: Source): string {
  if (sureness === 'common practice') return 'common practice, no source';
  const name = [body, title, clause].filter((part) => part !== undefined).join(', ');
  return `${name} (${sureness})`;
}
