/** What stands at the head of every program that moves a blade. */
export const CAUTION = [
  'Try it on scrap board first, with the tool lifted clear.',
  'Keep hands clear of the moving tool. The manual of your machine comes first.',
] as const;
