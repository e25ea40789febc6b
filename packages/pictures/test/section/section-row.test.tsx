import { shapes } from '@neckfall/data';
import { onionTypes, runPlan, startMethods } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type as font } from '../../src/drawing/picture.tsx';
import { svgText } from '../../src/drawing/svg-text.ts';
import { textWidth } from '../../src/drawing/text-fit.ts';
import {
  type Onion,
  type OnionForm,
  onionColours,
  SectionRow,
  sectionOf,
  sectionRowOf,
} from '../../src/section/index.ts';
import { drawnWidthMm, rowLayout } from '../../src/section/row-layout.ts';
import { anyDay, anyWidth, everyInk, planOf, seeded, sineSite } from '../scenes.ts';

const forms: OnionForm[] = ['bulb', 'thick-neck', 'bolted', 'green', 'lost'];
const anyOnion = fc.record({
  form: fc.constantFrom(...forms),
  colour: fc.constantFrom(...onionColours),
  shape: fc.constantFrom(...shapes),
  acrossMm: fc.integer({ min: 12, max: 120 }),
  ringLeaves: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 12 }),
  skins: fc.integer({ min: 1, max: 3 }),
}) satisfies fc.Arbitrary<Onion>;
const anyRow = fc.array(
  anyOnion.map((onion) => ({ onion, lines: ['northern long-day', 'good in 7 years in 10'] })),
  { minLength: 1, maxLength: 14 },
);

describe('a row of onions', () => {
  test('keeps onions and words apart, on the picture, to one scale', () => {
    fc.assert(
      fc.property(anyRow, anyWidth, (onions, width) => {
        const { cells, pxPerMm, height, baselines } = rowLayout({ width, onions, discText: 'a coin' });
        expect(cells).toHaveLength(onions.length + 1);
        const shown = cells.flatMap(({ onion }) => (onion === null ? [] : [onion]));
        expect(shown).toEqual(onions.map((_, i) => i));
        for (const baseY of baselines) {
          const line = cells.filter((cell) => cell.baseY === baseY);
          let taken = -0.5;
          for (const { x, onion, lines } of line) {
            const drawn =
              onion === null ? 23 * pxPerMm : Math.min(width, drawnWidthMm(onions[onion].onion) * pxPerMm);
            const wide = Math.max(
              drawn,
              ...lines.map(({ text, bold }) => textWidth(text, bold ? font.text : font.small)),
            );
            expect(x - wide / 2).toBeGreaterThanOrEqual(taken);
            taken = x + wide / 2 - 0.5;
            for (const { y } of lines) expect(y).toBeLessThan(height);
          }
          expect(taken).toBeLessThanOrEqual(width + 0.5);
        }
      }),
      seeded,
    );
  });

  test('draws every form in every colour', () => {
    fc.assert(
      fc.property(anyRow, anyWidth, (onions, width) => {
        const svg = svgText(<SectionRow width={width} summary="row" onions={onions} discText="a coin" />, {
          colours: everyInk,
          title: 'row',
        });
        expect(svg).not.toMatch(/NaN|undefined/);
      }),
      seeded,
    );
  });
});

describe('the harvest of a plan', () => {
  const sites = [sineSite(52, 10, 7), sineSite(2, 24, 1), sineSite(45, 4, 20)];
  const metric = speaker('metric');

  test('is drawn and told whatever comes of it', () => {
    const told = new Set<string>();
    fc.assert(
      fc.property(
        fc.constantFrom(...sites),
        fc.constantFrom(...onionTypes),
        fc.constantFrom(...startMethods),
        anyDay,
        (site, type, start, day) => {
          const summary = runPlan(site, planOf(type, start, day));
          const { picture, table } = sectionOf(summary, { colour: 'yellow', shape: 'globe' }, metric);
          told.add(picture.onions[0].onion.form);
          const svg = svgText(<SectionRow width={320} {...picture} />, { colours: everyInk, title: 'x' });
          expect(svg).not.toMatch(/NaN|undefined/);
          expect(table.rows).toHaveLength(picture.onions.length);
          const row = sectionRowOf(
            [{ name: 'mine', summary, look: { colour: 'red', shape: 'long' } }],
            metric,
          );
          expect(row.picture.summary).toContain('mine');
          expect(row.table.rows[0]).toHaveLength(row.table.head.length);
          // each ring of the picture is a leaf of the plant
          for (const { onion } of picture.onions)
            expect(onion.ringLeaves.length).toBeLessThanOrEqual(
              Math.max(3, Math.round(summary.leavesMadeAtOnset?.p90 ?? 0)),
            );
        },
      ),
      { ...seeded, numRuns: 120 },
    );
    expect(told.size).toBeGreaterThanOrEqual(3);
  });
});

test('keeps its look', () => {
  const onion: Onion = {
    form: 'bulb',
    colour: 'yellow',
    shape: 'globe',
    acrossMm: 60,
    ringLeaves: [2, 3, 4],
    skins: 1,
  };
  const svg = svgText(
    <SectionRow width={320} summary="one" onions={[{ onion, lines: ['60 mm across'] }]} discText="a coin" />,
    { colours: everyInk, title: 'one' },
  );
  expect(svg.replaceAll('><', '>\n<')).toMatchSnapshot();
});
