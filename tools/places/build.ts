/** Builds the place assets: npx tsx tools/places/build.ts --out packages/data/assets */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { buildPlaceAssets } from './build-place-assets.ts';
import { readPlaces } from './read-places.ts';

const { values } = parseArgs({ options: { out: { type: 'string' } } });
if (values.out === undefined)
  throw new Error('--out FOLDER is needed, for instance --out packages/data/assets');
mkdirSync(values.out, { recursive: true });
for (const [name, bytes] of buildPlaceAssets(readPlaces())) {
  const file = join(values.out, `${name}.gz`);
  const packed = gzipSync(bytes, { level: 9 });
  writeFileSync(file, packed);
  process.stdout.write(`${file}: ${packed.length} bytes, ${bytes.length} unpacked\n`);
}
