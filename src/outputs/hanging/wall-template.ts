/** The wall template: where the nails of a frame or a group go, at full scale, tiled over the pages of a paper. */
import { hang } from '../../core/hanging/hang';
import { hangingWords } from '../../core/hanging/words/hanging-words';
import { good, type Problem, type Result } from '../../core/problem';
import { titleOf, type MakerHooks, type OutputContext } from '../context';
import { drawDocument, type PagePlan } from '../paper/document';
import { lostLetters } from '../paper/lost-letters';
import { chooseTiling, joinsOf, tilesOf, type Tile } from '../template/tiling';
import { askOf, tilePaper } from './hanging-context';
import { wallArea, wallMatter } from './wall-area';
import { planWallOverview } from './wall-overview';
import { planWallTile } from './wall-tile';

/** More is no longer pieced together by hand. */
const MANY_PAGES = 60;

/** Problems: those of a frame that can't hang as it is written. Rejects with the signal's reason when cancelled. */
export async function makeWallTemplate(context: OutputContext, hooks: MakerHooks = {}): Promise<Result<Uint8Array>> {
  const ask = askOf(context);
  const hung = hang(ask);
  if (!hung.ok) return hung;
  const { showing, options, fonts } = context;
  const area = wallArea(hung.value.wall, showing);
  const matter = wallMatter(area);
  const tiling = chooseTiling([matter], area.size, tilePaper(context), showing);
  const tiles = tilesOf(tiling, matter);
  const joins = joinsOf(tiles, matter);
  const printed = tiles.filter((tile) => !tile.empty);
  const overview = planWallOverview({
    context,
    area,
    tiling,
    tiles,
    printed,
    wall: hung.value.wall,
    words: hangingWords(ask, hung.value),
  });
  const pages = printed.map((tile: Tile, index): PagePlan =>
    planWallTile({
      title: titleOf(context),
      area,
      tiling,
      tile,
      joins,
      showing,
      turned: options.turnEverySecondPage && index % 2 === 1,
    }),
  );
  const { bytes, lost } = await drawDocument([...overview, ...pages], titleOf(context), fonts, hooks);
  return good(bytes, [...manyPages(overview.length + pages.length), ...lostLetters(context, lost)]);
}

function manyPages(count: number): Problem[] {
  if (count <= MANY_PAGES) return [];
  return [
    {
      code: 'many-pages',
      severity: 'warning',
      at: 'wall.frames',
      message: `The wall template takes ${count} pages. Take larger paper, or measure: the hanging sheet tells where each nail goes.`,
      value: `${count} pages`,
      remedy: 'larger paper, or the hanging sheet',
    },
  ];
}
