import { describe, expect, test } from 'vitest';
import { neckfall, neckfallQuick, testDay } from './run-neckfall.ts';

const foot = (...args: string[]) =>
  neckfallQuick(...args)
    .stdout.split('How we know\n')[1]
    .replace(/\s+/g, ' ');
const hangsOn =
  /What the tops hang on most here: (how warm the season is|the day length this onion needs|the day you start)\. \d/;
const springSown = ['--class', 'long', '--start', 'direct-seed'];

describe('how we know', () => {
  test('says what the tops hang on, after what is least sure and before the sources', () => {
    for (const args of [
      ['season', 'Lyon', ...springSown, '--date', '03-25'],
      ['where', 'Lyon'],
      ['when', 'Lyon', ...springSown],
    ]) {
      const text = foot(...args);
      expect(text).toMatch(hangsOn);
      expect(text).toMatch(/Least sure: .*What the tops hang on.*Sources: /);
    }
  });

  test('gives each answer its own spans, and no error that is the same everywhere', () => {
    const parts =
      /In 8 years in 10, tops go over within \d+ days of each other, and bulbs are within \d+ mm\. The weather/;
    for (const [args, span] of [
      [['season', 'Lyon', ...springSown, '--date', '03-25'], parts],
      [
        ['where', 'Lyon'],
        /In 8 years in 10, tops of the crop named first go over .+, on bulbs of \d+–\d+ mm\./,
      ],
      [['when', 'Lyon', ...springSown], /tops from the best start go over .+, on bulbs of \d+–\d+ mm\./],
      [['which', 'Lyon', '--have', 'Copra'], /tops of the crop named first go over /],
    ] as const) {
      const text = neckfall(...args, '--today', testDay, '--years', '12').stdout.replace(/\s+/g, ' ');
      expect(text).toMatch(span);
      expect(text).toContain('they know no pest, no hail and no neglect');
      expect(text.match(/an ordinary garden gives about four fifths of the weight/g)).toHaveLength(1);
      expect(text).not.toMatch(/a week out|a third\./);
    }
  });

  test('says nothing of tops where they do not go over', () => {
    // long-day onions below 20° of latitude make no bulbs
    expect(foot('season', 'Nairobi', ...springSown, '--date', '03-25')).not.toMatch(/hang on/);
  });

  test('leaves what JSON says was assumed as it was', () => {
    const { stdout } = neckfallQuick('season', 'Lyon', ...springSown, '--date', '03-25', '--json');
    expect(JSON.parse(stdout).assumed.join(' ')).not.toMatch(/hang on/);
  });
});
