import { expect, test } from 'vitest';
import { countryForms } from '../packages/data/src/places/countries.ts';
import { foldName } from '../packages/data/src/places/fold-name.ts';
import { languages } from '../packages/words/src/index.ts';

test.each(languages)('a town may be followed by its country in %s', (language) => {
  const names = new Intl.DisplayNames(language, { type: 'region' });
  for (const country of ['ES', 'DE', 'GB', 'US', 'NL'])
    expect(countryForms(country)).toContain(foldName(names.of(country) as string));
});
