import { describe, expect, test } from 'vitest';
import { neckfallQuick } from './run-neckfall.ts';

const lyonSets = ['Lyon', '--class', 'long', '--start', 'sets'];

describe('answers for people', () => {
  const answers = {
    where: neckfallQuick('where', 'Lyon').stdout,
    season: neckfallQuick('season', ...lyonSets, '--date', '03-25').stdout,
    when: neckfallQuick('when', ...lyonSets).stdout,
  };

  test.each(Object.entries(answers))('%s: the place first, how we know last, lines that fit', (_, text) => {
    expect(text).toMatch(/^Lyon, France: /);
    expect(text).toContain('\n\nHow we know\n');
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(110);
  });

  test.each(Object.entries(answers))('%s: no word of the code, no hole in a sentence', (_, text) => {
    expect(text).not.toMatch(
      /\b(class|verdict|onset|neck fall|photoperiod|ensemble|null|undefined|NaN)\b|[{}]/i,
    );
  });

  test('where says what is still in time today', () => {
    expect(answers.where.replace(/\s+/g, ' ')).toMatch(/Today is 3 May\. [A-Z]/);
  });

  test('American units come with American words and dates', () => {
    const text = neckfallQuick('where', 'Burlington, Vermont', '--units', 'us').stdout;
    expect(text).toMatch(/Burlington, VT, United States: /);
    expect(text).toContain('°F');
    expect(text).toContain('Tops fall');
    expect(text).toContain('Today is May 3.');
    expect(text).not.toMatch(/°C|\d mm\b/);
  });
});

describe('places', () => {
  test('of one name are told apart on stderr, the most populous taken', () => {
    const { code, stdout, stderr } = neckfallQuick(
      'season',
      'Springfield',
      ...lyonSets.slice(1),
      '--date',
      '03-25',
    );
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Springfield, MO, United States/);
    expect(stderr).toMatch(/"Springfield" could also be .*Springfield, MA, United States \(near Boston\)/);
  });

  test('take accents or leave them', () => {
    const first = (name: string) => neckfallQuick('where', name).stdout.split(':')[0];
    expect(first('zurich')).toBe('Zürich, Switzerland');
    expect(first('ZÜRICH')).toBe('Zürich, Switzerland');
  });

  test('given as a point name the nearest town, so that swapped coordinates show', () => {
    const label = (at: string) =>
      neckfallQuick('where', `--at=${at}`).stdout.replace(/\s+/g, ' ').split(':')[0];
    expect(label('45.76,4.84')).toMatch(/^45\.76° N, 4\.84° E, near .*, France$/);
    expect(label('45,76;4,84')).toBe(label('45.76,4.84'));
    expect(label('4.84,45.76')).toMatch(/^4\.84° N, 45\.76° E, near .*, (Ethiopia|Somalia)$/);
  });

  test('with a guessed elevation among mountains are warned of', () => {
    const guessed = neckfallQuick('where', '--at', '46.55,8.56');
    expect(guessed.stderr).toContain('is a guess');
    expect(neckfallQuick('where', '--at', '46.55,8.56,1400').stderr).toBe('');
  });
});
