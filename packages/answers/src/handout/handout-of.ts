import { engineVersion, startWays } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { countryOf, type Place } from '../place/index.ts';
import {
  bestOfYearSentence,
  howWeKnowLines,
  namedOf,
  sharesSentence,
  sizesAssumption,
  skyAndFrost,
  sourceNames,
  spanSentence,
  tropicsSentence,
  whereHeadline,
} from '../sentences/index.ts';
import type { Handout, HandoutLine, HandoutOwn } from './handout.ts';
import { handoutBuy } from './handout-buy.ts';
import type { HandoutFacts } from './handout-facts.ts';
import { paragraphsOf } from './handout-own.ts';
import { handoutSigns } from './handout-signs.ts';
import { handoutWhen } from './handout-when.ts';
import { handoutWork } from './handout-work.ts';

/** What a sheet stands on besides its facts. */
export type HandoutGround = {
  place: Place;
  /** The place in words. */
  label: string;
  /** Sentences on what was taken for granted of the place. */
  assumed: readonly string[];
};

/** One sheet for a place, told: the headline of Where, what to buy, when, the signs, a year of work, cautions, sources. */
export function handoutOf(
  facts: HandoutFacts,
  { place, label, assumed }: HandoutGround,
  own: HandoutOwn,
  speaker: Speaker,
): Handout {
  const { say, reason, dayWithYear, locale } = speaker;
  const { today, crop } = facts;
  const named = namedOf(facts);
  const { summary } = named;
  const { plan } = summary;
  const date = dayWithYear(today);
  const heading = paragraphsOf(own.heading).join(' ');
  const tropics = tropicsSentence(facts.place.sunUpH, facts.months, speaker);
  const bestOfYear = bestOfYearSentence(facts, today, speaker);
  return {
    language: locale,
    heading: heading === '' ? say('handout.heading', { place: label }) : heading,
    dateline: say('handout.dateline', { place: heading === '' ? 'none' : label, date }),
    verdict: whereHeadline(facts, label, today, speaker),
    because: [
      ...spare(tropics, 90),
      ...spare(reason(summary.reason), 75),
      ...spare(crop ? bestOfYear : null, 50),
    ],
    note: paragraphsOf(own.note),
    buy: crop ? handoutBuy(summary, countryOf(place), speaker) : [],
    whenHead: {
      what: say('handout.when.what'),
      middle: say('handout.when.middle'),
      range: say('season.column.range'),
    },
    when: crop ? handoutWhen(summary, today, speaker) : [],
    signs: crop ? handoutSigns(summary, crop.leafCheckpoint, speaker) : [],
    year: crop ? [] : skyAndFrost(facts.place, speaker),
    work: crop ? handoutWork(crop.jobs, speaker) : [],
    cautions: [
      say('job-caution.treated-seed'),
      say('app.caution.bought'),
      ...(startWays[plan.start].standsInTrays ? [say('job-caution.lamps')] : []),
      say('handout.caution.rules'),
      say('job-caution.pets'),
      say('app.caution.promise'),
    ],
    ...groundsOf(),
    titles: {
      buy: say('handout.buy'),
      when: say('handout.when'),
      signs: say('handout.signs'),
      year: say('handout.year'),
      work: say('handout.work'),
      cautions: say('app.cautions'),
      sure: say('handout.sure'),
    },
  };

  function groundsOf(): Pick<Handout, 'sure' | 'sources'> {
    const { years, seed } = facts;
    const [climate, tried, leastSure] = howWeKnowLines({ place, years, seed, assumed: [] }, speaker);
    const sources = speaker.all(sourceNames(speaker, 'app.source.model'));
    return {
      sure: [
        kept(sharesSentence(summary, speaker)),
        ...spare(crop ? spanSentence(summary, 'lead', speaker) : null, 40),
        kept(leastSure),
      ],
      sources: [
        kept(climate),
        kept(tried),
        ...assumed.flatMap((sentence, at) => spare(sentence, 10 + at)),
        ...spare(sizesAssumption(plan.water, speaker), 19),
        kept(say('handout.sources', { version: engineVersion, sources })),
      ],
    };
  }
}

const kept = (text: string): HandoutLine => ({ text, spare: null });
const spare = (text: string | null, order: number): HandoutLine[] =>
  text === null ? [] : [{ text, spare: order }];
