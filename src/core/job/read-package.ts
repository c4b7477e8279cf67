/** Reads what goes into the frame beside mats and pictures. */
import { defaultLength } from './defaults';
import type { Frame, Job } from './job';
import type { FixingKind, Package } from './package';
import { readThickness } from './read-thickness';
import type { Reader } from './reader';
import { usualDustCover } from './usual-dust-cover';
import type { WrittenPackage } from './written-package';

/** Single-strength glass: ASTM C1036, from memory. */
export const GLAZING = 2.5;
/** A paper hinge with its paste (from memory). */
const HINGE = 0.2;

/** What the package is read for. */
interface Around {
  readonly frame: Pick<Frame, 'build' | 'grooves' | 'rabbetDepth'>;
  /** What lies in it beside the package's own. */
  readonly inside: Pick<Job, 'layers' | 'pictures'>;
  /** True of pictures on canvas or panel, which have no glazing, hinges, mount board or backing unless the job says so. */
  readonly bare: boolean;
}

export function readPackage(written: WrittenPackage, { frame, inside, bare }: Around, reader: Reader): Package {
  const spacer = written.spacer && readThickness(written.spacer, { at: at('spacer'), what: 'the spacer' }, NaN, reader);
  const held = {
    ...readGlazing(written, bare, reader),
    ...(spacer ? { spacer: { thickness: spacer, ...boardOf(written.spacer) } } : {}),
    hinging: readHinging(written.hinging ?? {}, bare, reader),
    ...readMountBoard(written, bare, reader),
    ...readBacking(written, bare, reader),
    fixing: readFixing(written.fixing ?? {}, usualFixing(frame, bare), reader),
    sealed: written.sealed ?? false,
  };
  return { ...held, dustCover: written.dustCover ?? usualDustCover(frame, held, inside) };
}

/** A name of blanks is none. */
function boardOf(spacer: WrittenPackage['spacer']): { readonly board?: string } {
  const board = spacer?.board?.trim() ?? '';
  return board === '' ? {} : { board };
}

function at(key: keyof WrittenPackage): string {
  return `package.${key}`;
}

function readGlazing({ glazing }: WrittenPackage, bare: boolean, reader: Reader): Pick<Package, 'glazing'> {
  const material = glazing?.material ?? (bare && glazing === undefined ? 'none' : 'glass');
  if (material === 'none') return {};
  return {
    glazing: {
      material,
      thickness: readThickness(glazing ?? {}, { at: at('glazing'), what: 'the glazing', material }, GLAZING, reader),
      uvFilter: glazing?.uvFilter ?? false,
      antistatic: glazing?.antistatic ?? false,
      ...densityOf(glazing),
    },
  };
}

function readHinging(written: NonNullable<WrittenPackage['hinging']>, bare: boolean, reader: Reader) {
  const method = written.method ?? (bare ? 'none' : undefined);
  const usual = method === 'none' ? 0 : HINGE;
  return {
    ...(method === undefined ? {} : { method }),
    thickness: readThickness(written, { at: at('hinging'), what: 'the hinges' }, usual, reader, true),
  };
}

function readMountBoard({ mountBoard }: WrittenPackage, bare: boolean, reader: Reader): Pick<Package, 'mountBoard'> {
  if (mountBoard?.without === true || (bare && mountBoard === undefined)) return {};
  return {
    mountBoard: {
      board: mountBoard?.board ?? 'Mount board',
      thickness: readThickness(
        mountBoard ?? {},
        { at: at('mountBoard'), what: 'the mount board', material: 'mat board' },
        defaultLength('boardThickness', reader.units),
        reader,
      ),
      quality: mountBoard?.quality ?? {},
      ...densityOf(mountBoard),
    },
  };
}

function readBacking({ backing }: WrittenPackage, bare: boolean, reader: Reader): Pick<Package, 'backing'> {
  const material = backing?.material ?? (bare && backing === undefined ? 'none' : 'foam board');
  if (material === 'none') return {};
  return {
    backing: {
      material,
      thickness: readThickness(
        backing ?? {},
        { at: at('backing'), what: 'the backing', material },
        defaultLength('backingThickness', reader.units),
        reader,
      ),
      quality: backing?.quality ?? {},
      ...densityOf(backing),
    },
  };
}

/** How things are held in such a frame where the job does not say. */
function usualFixing({ build, grooves }: Around['frame'], bare: boolean): FixingKind {
  if (build === 'float') return 'screws';
  if (bare) return 'offset clips';
  if (build !== 'with back') return 'points';
  return grooves.length > 0 ? 'groove' : 'turn buttons';
}

/** What is driven into the rabbet's wall stands behind the backing; the rest lies behind the frame, or in its wood. */
const IN_THE_RABBET: readonly FixingKind[] = ['points', 'brads', 'bent tabs'];

function readFixing(written: NonNullable<WrittenPackage['fixing']>, usual: FixingKind, reader: Reader) {
  const { kind = usual, room, screw } = written;
  const length = reader.optionalLength(screw, 'package.fixing.screw', {
    name: 'Length of the screws',
    least: 0,
    above: true,
    most: 300,
  });
  return {
    kind,
    room: reader.length(
      room,
      'package.fixing.room',
      { name: 'Room for the fixing', least: 0, most: 100 },
      IN_THE_RABBET.includes(kind) ? defaultLength('fixingRoom', reader.units) : 0,
    ),
    ...(length === undefined ? {} : { screw: length }),
  };
}

function densityOf(item: { readonly density?: number | undefined } | undefined): { readonly density?: number } {
  return item?.density === undefined ? {} : { density: item.density };
}
