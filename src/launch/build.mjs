// `npm run build`: builds what is older than its sources; `--force` builds all the same.
import { isStale } from './freshness.mjs';
import { places } from './places.mjs';

if (process.argv.includes('--force') || isStale(places.builtMark, places.sources)) {
  const { buildAll } = await import('./build-all.mjs');
  await buildAll();
  console.log('Built.');
} else {
  console.log('Built already; no source is newer.');
}
