/** What stands at the head of every program that moves a blade. */
export const MACHINE_CAUTION = [
  'Run it first with the tool clear of the board, then on scrap.',
  'Keep hands clear of the moving tool. The manual of your machine comes first.',
] as const;
