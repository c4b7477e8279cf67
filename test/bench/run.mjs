// `npm run bench`: bundles each benchmark and runs it by itself, so that none warms up another's code.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = join(here, '../..');
const wanted = process.argv.slice(2);

for (const file of readdirSync(here).filter((name) => name.endsWith('.bench.ts'))) {
  const name = file.replace('.bench.ts', '');
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const build = await rolldown({
    input: join(here, file),
    cwd: root,
    platform: 'node',
    // Packages are found from out/bench as they would be from here.
    external: /^[^./]/,
    logLevel: 'warn',
  });
  const output = join(root, 'out/bench', `${name}.mjs`);
  await build.write({ file: output, format: 'esm', codeSplitting: false });
  await build.close();
  console.log(`\n${name}`);
  const { status } = spawnSync(process.execPath, [output], { stdio: 'inherit', cwd: root });
  if (status !== 0) process.exitCode = 1;
}
