import { describe, expect, test } from 'vitest';
import { zoneSentence } from '../packages/answers/src/index.ts';
import { toldLines } from '../packages/app/src/pages/together/drawn-lines.ts';
import { readySets } from '../packages/app/src/pages/together/ready-sets.ts';
import { beside } from '../packages/app/src/worker/beside.ts';
import { season } from '../packages/app/src/worker/season.ts';
import type { SiteAsked } from '../packages/app/src/worker/site.ts';
import { whereAnswer } from '../packages/cli/src/answer/where-answer.ts';
import type { WhereDocument } from '../packages/cli/src/documents/where-schema.ts';
import { openFrame } from '../packages/cli/src/frame/frame.ts';
import { readPlaceOptions } from '../packages/cli/src/options/place-options.ts';
import { speakerFor } from '../packages/cli/src/options/speaker-for.ts';
import { formatDay, landWarmingSinceNormalsC } from '../packages/engine/src/index.ts';
import { loadLater } from '../packages/words/src/index.ts';

await loadLater();
const speaker = speakerFor({});

/** A town as the command line has it, and the ground there as the page asks for it. */
function grounds(name: string) {
  const options = readPlaceOptions(name, { today: '2027-05-03' });
  const frame = openFrame(options, speaker);
  const site: SiteAsked = {
    climate: frame.place.climate,
    warmerC: landWarmingSinceNormalsC,
    frostHollow: false,
    years: options.years,
    seed: options.seed,
    practice: frame.site.practice,
    atHand: [],
  };
  const best = { site, today: options.today, options: {}, crop: null, start: null, startDay: null };
  return { options, frame, site, best };
}

const towns = readySets.flatMap(({ places }) => places);

describe('the ready sets', () => {
  test.each(towns)('$name is where it is said to be, and has an answer', ({ name, ...at }) => {
    const { frame } = grounds(name === 'Santiago' ? 'Santiago, Chile' : name);
    expect(frame.place.town?.name).toBe(name);
    expect(frame.place.latitudeDeg).toBeCloseTo(at.latitudeDeg, 3);
    expect(frame.place.longitudeDeg).toBeCloseTo(at.longitudeDeg, 3);
  });

  test('have pairs whose winters are as cold and whose onions are opposite', () => {
    const pairs = readySets.filter(({ key }) => key === 'winter');
    expect(pairs.length).toBeGreaterThanOrEqual(2);
    for (const { places } of pairs) {
      const replies = places.map(({ name }) => beside(grounds(name).best));
      const [a, b] = replies;
      expect(Math.abs(a.coldestC - b.coldestC)).toBeLessThan(1.5);
      expect([a.class, b.class].toSorted()).toEqual(['long', 'short']);
      for (const { told } of replies) expect(told.verdict).toBe('good');
      const lines = places.map(({ name, ...at }, i) => ({
        asked: { key: name, at: { ...at, name, elevationM: null }, crop: null, start: null, startDay: null },
        found: {
          state: 'found' as const,
          located: { ...grounds(name).frame.place, practice: [] },
          site: grounds(name).site,
          reply: replies[i],
        },
      }));
      expect(zoneSentence(toldLines(lines, 'places', speaker), speaker)).toContain(places[0].name);
    }
  });
});

describe('a line has the numbers of the other pages', () => {
  test.each(['Lyon', 'Dallas', 'Dunedin'])('at %s', (name) => {
    const { options, frame, site, best } = grounds(name);
    const open = () => ({ ...frame, assumed: [], warnings: [] });
    const document = whereAnswer(options, speaker, open).json() as WhereDocument;
    const line = beside(best);
    const { summary } = line.told;
    const [leading] = document.classes;
    expect([line.class, line.told.bestStart, formatDay(summary.plan.startDay).slice(5)]).toEqual([
      leading.class,
      leading.bestStart,
      leading.bestDate,
    ]);
    expect(line.coldestC).toBeCloseTo(document.frost.meanAnnualMinimumC, 1);
    // the Season page of that start
    const { start, startDay } = summary.plan;
    const crop = { class: line.class };
    const alone = season({ site, crop, plan: { start, startDay }, days: true });
    const chosen = beside({ ...best, crop, start, startDay });
    expect(chosen.told.summary).toEqual(alone.summary);
    expect(chosen.days).toEqual(alone.days);
    expect(chosen.told.summary.onset).toEqual(summary.onset);
  });
});
