import { describe, expect, test } from 'vitest';
import { seasonAhead } from '../packages/app/src/worker/season-ahead.ts';
import type { SiteAsked } from '../packages/app/src/worker/site.ts';
import { when } from '../packages/app/src/worker/when.ts';
import { where, whereClasses } from '../packages/app/src/worker/where.ts';
import { whereToday } from '../packages/app/src/worker/where-today.ts';
import { whichOnion } from '../packages/app/src/worker/which-onion.ts';
import { seasonAnswer } from '../packages/cli/src/answer/season-answer.ts';
import { whereAnswer } from '../packages/cli/src/answer/where-answer.ts';
import type { SeasonDocument } from '../packages/cli/src/documents/season-schema.ts';
import { whenDocument } from '../packages/cli/src/documents/when-document.ts';
import type { WhenDocument } from '../packages/cli/src/documents/when-schema.ts';
import type { WhereDocument } from '../packages/cli/src/documents/where-schema.ts';
import { openFrame } from '../packages/cli/src/frame/frame.ts';
import { readPlaceOptions } from '../packages/cli/src/options/place-options.ts';
import { speakerFor } from '../packages/cli/src/options/speaker-for.ts';
import {
  formatDay,
  groundUnsaid,
  landWarmingSinceNormalsC,
  type SeasonSummary,
  startMethods,
  tryStarts,
  waysOf,
} from '../packages/engine/src/index.ts';
import { steadyPlaces } from './choice/steady.ts';

/** Every other place on a day of each half of the growing year. */
const days = ['2027-05-05', '2027-10-20'] as const;
const places = steadyPlaces.slice(4, 34).map((place, at) => [...place, days[at % 2]] as const);

/** The numbers of a season that any page or command may print. */
function printed({ plan, onset, neckFall, seasonShares, bulbDiameterMm, boltedPlantsShare }: SeasonSummary) {
  return {
    start: plan.start,
    date: formatDay(plan.startDay),
    onset: onset.days,
    neckFall: neckFall.days,
    seasonShares,
    bulbDiameterMm,
    boltedPlantsShare,
  };
}

/** Nothing is kept of the crop. */
const unseen = { seen: [], ground: groundUnsaid, marks: [], keepsMonths: [5, 7], store: 'cellar' } as const;

const monthDay = (date: string | null) => date?.slice(5) ?? null;

test('the places are thirty', () => {
  expect(places).toHaveLength(30);
});

describe('every page and command gives the same answer', () => {
  test.each(places)('at %s', (...[, latitude, longitude, elevation, today]) => {
    const raw = { at: `${latitude},${longitude},${elevation}`, today };
    const speaker = speakerFor({});
    const options = readPlaceOptions(undefined, raw);
    const frame = openFrame(options, speaker);
    const open = () => ({ ...frame, assumed: [], warnings: [] });
    const answer = whereAnswer(options, speaker, open);
    const document = answer.json() as WhereDocument;
    const asked: SiteAsked = {
      climate: frame.place.climate,
      warmerC: landWarmingSinceNormalsC,
      frostHollow: false,
      years: options.years,
      seed: options.seed,
      practice: frame.site.practice,
      atHand: [],
    };
    const request = { site: asked, today: options.today, options: {} };
    const page = where(request);
    const classes = whereClasses(request);

    // Where, on the page and on the command line
    expect(document.classes.map(({ bestStart, bestDate }) => `${bestStart} ${bestDate}`)).toEqual(
      classes.map(({ bestStart, summary }) => `${bestStart} ${formatDay(summary.plan.startDay).slice(5)}`),
    );
    expect(document.today.starts).toEqual(
      whereToday(request).map(({ type: _, stillGoodUntil, nextFrom, ...start }) => ({
        ...start,
        stillGoodUntil: stillGoodUntil && formatDay(stillGoodUntil),
        nextFrom: nextFrom && formatDay(nextFrom),
      })),
    );

    for (const told of [...(page.now ? [page.now] : []), ...classes]) {
      const { start, startDay } = told.summary.plan;
      const date = formatDay(startDay);
      const crop = { class: told.class } as const;

      // the season of that start, on the page and on the command line
      const ahead = seasonAhead({ ...request, ...unseen, crop, starts: startMethods, start, startDay });
      expect(printed(ahead.summary)).toEqual(printed(told.summary));
      const season = seasonAnswer(options, { class: told.class, start, date, today }, speaker, open);
      const { neckFall, onset, bulbDiameterMm } = season.json() as SeasonDocument;
      expect(neckFall.p50).toBe(told.summary.neckFall.days && formatDay(told.summary.neckFall.days.p50));
      expect(bulbDiameterMm.p50).toBeCloseTo(told.summary.bulbDiameterMm?.p50 ?? 0, 0);
      const listed = document.classes.find(
        (row) => row.class === told.class && row.bestStart === start && row.bestDate === date.slice(5),
      );
      if (listed) {
        expect(listed.neckFall).toBe(monthDay(neckFall.p50));
        expect(listed.onset).toBe(monthDay(onset.p50));
      }
    }

    // the year tried week by week, and what is best in it
    const [lead] = classes;
    const { plan } = lead.summary;
    const tried = when({ ...request, crop: { class: lead.class }, start: plan.start });
    const row = tried.answer.starts.find(({ summary }) => summary.plan.startDay === plan.startDay);
    expect(row && printed(row.summary)).toEqual(printed(lead.summary));
    if (lead.verdict === 'good' && tried.answer.windows.length > 0) {
      expect(row?.dayOfYear).toBe(tried.answer.best);
      const ways = waysOf(frame.site, { class: lead.class }, [plan.start]);
      const year = whenDocument(
        open(),
        tryStarts(frame.site, ways, {}, options.today),
        null,
        2027,
      ) as WhenDocument;
      expect(year.windows.map(({ best }) => best)).toContain(formatDay(plan.startDay).slice(5));
    }
    const named = page.now ?? lead;
    expect(answer.text().replace(/\s+/g, ' ')).toContain(speaker.reason(named.summary.reason));

    // nothing said: When and Season take what Where leads with
    const unsaid = { ...request, ...unseen, crop: null, starts: startMethods, start: null, startDay: null };
    expect(printed(seasonAhead(unsaid).summary)).toEqual(printed(named.summary));

    // a packet that says the class, started so
    if (page.now && page.now.class === lead.class) {
      const { start } = page.now.summary.plan;
      const packet = { class: lead.class, hours: null, days: null };
      const onion = { name: 'packet', starts: [start], packet, keepsMonths: null };
      const reply = whichOnion({ site: asked, onion, firstDay: options.today, options: {} });
      expect(reply.now && printed(reply.now.summary)).toEqual(printed(page.now.summary));
    }
  });
});
