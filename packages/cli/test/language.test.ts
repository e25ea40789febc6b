import { afterEach, describe, expect, test } from 'vitest';
import { neckfall, neckfallQuick } from './run-neckfall.ts';

const usual = process.env.LC_ALL;

describe('the language of the command line', () => {
  afterEach(() => {
    process.env.LC_ALL = usual;
  });

  test('is the one asked for', () => {
    expect(neckfall('--lang', 'es', 'where', 'Lyon').stdout).toMatch(/^Lyon, Francia/);
    expect(neckfallQuick('where', 'Lyon', '--lang', 'es').stdout).toMatch(/^Lyon, Francia/);
    expect(neckfallQuick('where', 'Lyon', '--lang=ES', '--units', 'us').stdout).toMatch(/^Lyon, Francia/);
  });

  test('is else that of the machine, where it is spoken', () => {
    process.env.LC_ALL = 'es_MX.UTF-8';
    expect(neckfallQuick('where', 'Lyon').stdout).toMatch(/^Lyon, Francia/);
    expect(neckfallQuick('where', 'Lyon', '--lang', 'en').stdout).toMatch(/^Lyon, France/);
    process.env.LC_ALL = 'xx_XX.UTF-8';
    expect(neckfallQuick('where', 'Lyon').stdout).toMatch(/^Lyon, France/);
  });

  test('leaves documents and tables for machines as they are', () => {
    for (const form of ['--json', '--csv'])
      expect(neckfallQuick('where', 'Lyon', form, '--lang', 'es').stdout).toBe(
        neckfallQuick('where', 'Lyon', form).stdout,
      );
  });

  test('that is not spoken is refused', () => {
    const { code, stderr } = neckfallQuick('where', 'Lyon', '--lang', 'constructor');
    expect(code).toBe(2);
    expect(stderr).toBe('--lang constructor: expected en or es.\n');
  });

  test('takes a country by its name in any of them', () => {
    for (const asked of ['Lyon, Francia', 'Lyon, France'])
      expect(neckfallQuick('where', asked).stdout).toMatch(/^Lyon, France/);
  });
});
