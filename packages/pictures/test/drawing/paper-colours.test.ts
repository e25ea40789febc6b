import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { paperColours } from '../../src/drawing/paper-colours.ts';

test('colours without a page are those of the light look', () => {
  const css = readFileSync(new URL('../../../app/src/look/colours.css', import.meta.url), 'utf8');
  const [, light] = /:root \{([^}]*)\}/.exec(css) ?? [];
  const colours = [...light.matchAll(/--([a-z0-9-]+): (#[0-9a-f]+);/g)].map(([, name, value]) => [
    name,
    value,
  ]);
  expect(colours.length).toBeGreaterThan(8);
  expect(paperColours).toEqual(Object.fromEntries(colours));
});
