/** Writes docs/households.md: `npx tsx tools/households/main.ts`. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { householdsPage } from './page.ts';
import { kitchens } from './places.ts';
import { livedKitchen } from './study.ts';

const page = householdsPage(
  kitchens().flatMap((kitchen) =>
    (['shed', 'cellar', 'fridge'] as const).map((store) =>
      livedKitchen({ ...kitchen, household: { ...kitchen.household, store } }),
    ),
  ),
);
process.stdout.write(page);
writeFileSync(fileURLToPath(new URL('../../docs/households.md', import.meta.url)), page);
