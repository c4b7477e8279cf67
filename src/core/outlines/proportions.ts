/** The size of something that keeps its proportions. */
import type { Size } from '../geometry/box';

/** Of the sides that are given, mm, the other one follows; both stretch it, neither leaves it as large as it is. */
export function sizeLike(natural: Size, { width, height }: Partial<Size>): Size {
  return {
    width: width ?? (height === undefined ? natural.width : (height * natural.width) / natural.height),
    height: height ?? (width === undefined ? natural.height : (width * natural.height) / natural.width),
  };
}
