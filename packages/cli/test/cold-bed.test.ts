import { expect, test } from 'vitest';
import { neckfallQuick } from './run-neckfall.ts';

const sets = ['Helsinki', '--class', 'long', '--start', 'sets'];

test('a start while beds are frozen is warned of, with the day from which they can be worked', () => {
  const { stderr, stdout } = neckfallQuick('season', ...sets, '--date', '2026-12-01');
  expect(stderr).toMatch(
    /^Around 1 December beds here are usually too cold to work, about -?\d+°C: wait until about \d+ (April|May)\.$/m,
  );
  expect(stdout).toMatch(/^Helsinki, Finland: /);
});

test('a start shortly before beds turn too cold for roots is warned of too', () => {
  const { stderr } = neckfallQuick('season', 'Leeds', ...sets.slice(1), '--date', '2026-11-25');
  expect(stderr).toMatch(
    /^Around 25 November beds here are still about [67]°C, but within two weeks too cold for roots to take hold: wait until about \d+ March\.$/m,
  );
});

test('a start in a bed that can be worked is not', () => {
  expect(neckfallQuick('season', ...sets, '--date', '2027-05-10').stderr).toBe('');
});

test('no week with a frozen bed is in a window', () => {
  const { windows } = JSON.parse(neckfallQuick('when', ...sets, '--json').stdout);
  expect(windows.length).toBeGreaterThan(0);
  for (const { from } of windows) expect(from >= '04-15').toBe(true);
});
