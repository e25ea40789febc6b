import { describe, expect, test } from 'vitest';
import { sensitivityFigure } from './figure.ts';
import { sensitivityPage } from './page.ts';
import { places } from './places.ts';
import { factors } from './shifts.ts';
import { type Change, study } from './study.ts';

const london = places.filter(({ name }) => name === 'London');
const studies = london.map(study);
const [{ changes }] = studies;
const page = sensitivityPage(studies);
const figure = sensitivityFigure(studies);

const changeOf = (words: string): Change => {
  const found = changes
    .flatMap(({ less, more }) => [less, more])
    .find((change) => change?.shift.words === words);
  if (!found) throw new Error(`no step ${words}`);
  return found;
};
const days = (words: string) => changeOf(words).neckFallDays ?? Number.NaN;
const mm = (words: string) => changeOf(words).diameterMm ?? Number.NaN;

test('the same command gives the same files', () => {
  const again = london.map(study);
  expect(sensitivityPage(again)).toBe(page);
  expect(sensitivityFigure(again)).toBe(figure);
});

describe('at London', () => {
  // Steer 1980a: warmth ripens sooner. Rumpel & Felczyński: tops fall 7–11 days sooner at 60–140 than at 20 plants per m².
  test('warmth and crowding bring the tops over sooner', () => {
    expect(days('1 °C warmer')).toBeLessThan(0);
    expect(days('1 °C cooler')).toBeGreaterThan(0);
    expect(days('twice the plants')).toBeLessThan(0);
    expect(days('half the plants')).toBeGreaterThan(0);
  });

  // Mead 1970, Rogers: the more plants, the smaller each bulb.
  test('crowding makes bulbs smaller, room makes them larger, and no water never helps', () => {
    expect(mm('twice the plants')).toBeLessThan(-1);
    expect(mm('half the plants')).toBeGreaterThan(1);
    expect(mm('on rain alone')).toBeLessThanOrEqual(0);
  });

  test('an onion that needs longer days starts its bulbs no sooner', () => {
    expect(changeOf('bulbs on 0.3 h more of day').onsetDays).toBeGreaterThanOrEqual(0);
    expect(changeOf('bulbs on 0.3 h less of day').onsetDays).toBeLessThanOrEqual(0);
  });
});

describe('the page and the picture', () => {
  test('tell every step, and no figure is missing', () => {
    for (const { less, more } of factors) {
      for (const shift of less ? [less, more] : [more]) {
        expect(page).toContain(`| ${shift.words} |`);
        expect(figure).toContain(`<title>${shift.words}: `);
      }
    }
    for (const text of [page, figure]) expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
  });

  test('the picture says in words what it shows, and follows the dark theme', () => {
    expect(figure).toMatch(/aria-labelledby="title desc"/);
    expect(figure).toMatch(/<desc id="desc">[^<]*London: [^<]+<\/desc>/);
    expect(figure).toContain('@media (prefers-color-scheme: dark)');
  });
});
