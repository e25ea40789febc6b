import { describe, expect, test } from 'vitest';
import { plantingOut } from '../../engine/src/index.ts';
import { neckfall, neckfallQuick } from './run-neckfall.ts';

test('help tells when seedlings go out by the numbers of the model', () => {
  const { leaves, latestWeeks, bedC } = plantingOut;
  const help = neckfall('season', '--help').stdout.replace(/\s+/g, ' ');
  expect(help).toContain(
    `${leaves} leaves or have stood for ${latestWeeks} weeks, and the bed is at ${bedC} °C`,
  );
});

describe.each([
  [[]],
  [['where']],
  [['season']],
  [['when']],
  [['feed']],
  [['keep']],
  [['why']],
  [['handout']],
  [['answer']],
  [['atlas']],
])('help of neckfall %s', (command) => {
  const { code, stdout, stderr } = neckfall(...command, '--help');

  test('is an answer', () => expect({ code, stderr }).toEqual({ code: 0, stderr: '' }));

  test('ends with an example that works', () => {
    const example = /^ {2}neckfall (.*)\n*$/m.exec(stdout)?.[1] ?? '';
    const args = (example.match(/"[^"]*"|\S+/g) ?? []).map((word) => word.replaceAll('"', ''));
    expect(args.length).toBeGreaterThan(1);
    expect(neckfallQuick(...args).code).toBe(0);
  });

  test('offers no option without saying what it does', () => {
    const options = stdout.split('\n').filter((line) => /^ {2}(-\w, )?--/.test(line));
    expect(options.length).toBeGreaterThan(3);
    for (const option of options) expect(option).toMatch(/^ {2}(-\w, )?--[a-z0-9-]+( <\S+>)? {2,}\S/);
  });
});

test('--version is the version of every package', async () => {
  const { default: manifest } = await import('../package.json', { with: { type: 'json' } });
  expect(neckfall('--version')).toEqual({ code: 0, stdout: `${manifest.version}\n`, stderr: '' });
});

test('--about names whose data are used and under what licence', () => {
  const { code, stdout } = neckfall('--about');
  expect(code).toBe(0);
  for (const name of ['CHELSA', 'CRU CL', 'GeoNames', 'CC BY 4.0', 'MIT']) expect(stdout).toContain(name);
});
