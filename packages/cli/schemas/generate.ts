/** Writes the published JSON Schemas from the definitions in src/documents: `npx tsx packages/cli/schemas/generate.ts`. */
import { writeFileSync } from 'node:fs';
import { publishedSchemas } from './published-schemas.ts';

for (const [name, schema] of Object.entries(publishedSchemas)) {
  writeFileSync(new URL(`${name}@1.json`, import.meta.url), `${JSON.stringify(schema, null, 2)}\n`);
}
