/** Endings of the files the screen asks for, and the name a job is first offered. */
export const JOB_ENDINGS = ['json'] as const;
export const PICTURE_ENDINGS = ['png', 'jpg', 'jpeg', 'webp', 'gif', 'svg'] as const;

/** A file name made from a job's title, without ending. */
export function baseNameFor(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60)
    .replace(/-+$/, '');
  return plain === '' ? 'mat' : plain;
}
