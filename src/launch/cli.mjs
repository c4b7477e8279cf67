// `npm run -s matwright -- ...`: the command line, bundled first where its sources are newer.
import { pathToFileURL } from 'node:url';
import { isStale } from './freshness.mjs';
import { places } from './places.mjs';

if (isStale(places.cli, places.cliSources)) {
  const { bundle } = await import('./bundle.mjs');
  await bundle('cli');
}
await import(pathToFileURL(places.cli).href);
