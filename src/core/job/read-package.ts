/** Reads what goes into the frame beside mats and pictures. */
import { defaultLength } from './defaults';
import type { Package } from './package';
import { readThickness } from './read-thickness';
import type { Reader } from './reader';
import type { WrittenPackage } from './written-package';

/** Single-strength glass: ASTM C1036, from memory. */
const GLAZING = 2.5;
/** A paper hinge with its paste (from memory). */
const HINGE = 0.2;

/** @param bare true of pictures on canvas or panel, which have no glazing, hinges or mount board unless the job says so. */
export function readPackage(written: WrittenPackage, reader: Reader, bare: boolean, isOpen: boolean): Package {
  const { glazing, spacer, hinging = {}, mountBoard, backing, fixing = {} } = written;
  const at = (key: string) => `package.${key}`;
  const material = glazing?.material ?? (bare && glazing === undefined ? 'none' : 'glass');
  const hasMount = mountBoard?.without !== true && !(bare && mountBoard === undefined);
  const method = hinging.method ?? (bare ? 'none' : undefined);
  const back = backing?.material ?? (bare && backing === undefined ? 'none' : 'foam board');
  const boardThickness = defaultLength('boardThickness', reader.units);
  return {
    ...(material === 'none'
      ? {}
      : {
          glazing: {
            material,
            thickness: readThickness(glazing ?? {}, at('glazing'), 'the glazing', GLAZING, reader),
            uvFilter: glazing?.uvFilter ?? false,
            antistatic: glazing?.antistatic ?? false,
            ...densityOf(glazing),
          },
        }),
    ...(spacer ? { spacer: { thickness: readThickness(spacer, at('spacer'), 'the spacer', NaN, reader) } } : {}),
    hinging: {
      ...(method === undefined ? {} : { method }),
      thickness: readThickness(hinging, at('hinging'), 'the hinges', method === 'none' ? 0 : HINGE, reader, true),
    },
    ...(hasMount
      ? {
          mountBoard: {
            board: mountBoard?.board ?? 'Mount board',
            thickness: readThickness(mountBoard ?? {}, at('mountBoard'), 'the mount board', boardThickness, reader),
            quality: mountBoard?.quality ?? {},
            ...densityOf(mountBoard),
          },
        }
      : {}),
    ...(back === 'none'
      ? {}
      : {
          backing: {
            material: back,
            thickness: readThickness(
              backing ?? {},
              at('backing'),
              'the backing',
              defaultLength('backingThickness', reader.units),
              reader,
            ),
            quality: backing?.quality ?? {},
            ...densityOf(backing),
          },
        }),
    fixing: readFixing(fixing, reader),
    sealed: written.sealed ?? false,
    dustCover: written.dustCover ?? isOpen,
  };
}

function readFixing({ kind = 'points', room, screw }: NonNullable<WrittenPackage['fixing']>, reader: Reader) {
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
      defaultLength('fixingRoom', reader.units),
    ),
    ...(length === undefined ? {} : { screw: length }),
  };
}

function densityOf(item: { readonly density?: number | undefined } | undefined): { readonly density?: number } {
  return item?.density === undefined ? {} : { density: item.density };
}
