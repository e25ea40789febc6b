import type { Speaker } from '@neckfall/words';
import {
  type AnswerTo,
  flowering,
  type QuestionContext,
  type QuestionSaid,
  seasonWords,
} from './question-context.ts';

/** Frost takes that share of the plants before it is worth a word, in a hard winter. */
const someFrost = 0.05;
/** From this share of the years lost to winter on, winter is why not. */
const winterFrom = 0.25;
/** Flowers are told from this share of the plants on. */
const someFlower = 0.1;

/** Whether onions can be sown to stand the winter. */
export function sowAutumnSaid(
  { autumn, fleece, spring, soonerDays, isTropical }: AnswerTo<'sow-autumn'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, plants, years } = speaker;
  const goodIn = ({ seasonShares }: typeof autumn) => seasonShares.good;
  const best = isTropical && goodIn(spring) > goodIn(autumn) ? spring : autumn;
  const words = seasonWords(best, today, speaker);
  const other = seasonWords(spring, today, speaker);
  const springWords = { spring: other.date, springYears: other.years, springSize: other.size };
  if (isTropical)
    return {
      headline: say('question.autumn.tropics', { place, ...words }),
      because: best === spring ? [] : [say('question.autumn.spring', springWords)],
      cautions: [],
    };
  const lost = autumn.winterKilledPlantsShare;
  const isGood = autumn.outcome === 'good' && !autumn.gamble;
  const isWinter = autumn.seasonShares['winter-killed'] >= winterFrom;
  const headline = isGood
    ? say('question.autumn.yes', { place, ...words })
    : isWinter
      ? say('question.autumn.winter', {
          place,
          ...words,
          killed: years(autumn.seasonShares['winter-killed'], autumn.years),
        })
      : say('question.autumn.no', {
          place,
          ...words,
          kind: say(`type-head.${autumn.plan.type}`),
          ...springWords,
        });
  const weeks = Math.round((soonerDays ?? 0) / 7);
  const sooner =
    soonerDays === null || weeks < 0
      ? say('question.autumn.spring', springWords)
      : weeks === 0
        ? say('question.autumn.same', springWords)
        : say('question.autumn.sooner', { weeks, ...springWords });
  return {
    headline,
    because: [
      isGood ? sooner : say('question.autumn.spring', springWords),
      ...(lost && lost.p90 >= someFrost
        ? [say('question.autumn.frost', { middle: plants(lost.p50), hard: plants(lost.p90) })]
        : []),
      ...(lost && lost.p90 >= someFrost
        ? [say('question.autumn.fleece', { years: years(goodIn(fleece), fleece.years) })]
        : []),
      ...(flowering(fleece) >= someFlower || isGood
        ? [say('question.autumn.flower', { some: plants(flowering(autumn)) })]
        : []),
    ],
    cautions: [],
  };
}

/** Bulbs larger by this share tell a reader something. */
const tellingSize = 0.05;

/** How early trays are worth it, and whether early makes large. */
export function startIndoorsSaid(
  { stretch, bed, starts }: AnswerTo<'start-indoors'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, plants, day } = speaker;
  const light = say('question.indoors.light');
  const cautions = [say('start-fact.lamps-and-water')];
  const inBed = seasonWords(bed, today, speaker);
  const bedSaid = bed.bulbDiameterMm ? [say('question.indoors.bed', inBed)] : [];
  if (stretch === null) {
    const kind = say(`type.${starts.starts[0].summary.plan.type}`);
    return { headline: say('question.indoors.none', { place, kind }), because: bedSaid, cautions };
  }
  // the same weeks every year, whichever comes round first
  const [first, best, last] = [stretch.first, stretch.best, stretch.last].map((of) => ({
    ...seasonWords(of, today, speaker),
    date: day(of.plan.startDay),
  }));
  const bestSaid = { place, best: best.date, bestSize: best.size };
  if (stretch.isAllYear)
    return { headline: say('question.indoors.any', bestSaid), because: bedSaid, cautions };
  const mm = ({ bulbDiameterMm }: typeof bed) => bulbDiameterMm?.p50 ?? 0;
  const isBigger = mm(stretch.first) > (1 + tellingSize) * mm(stretch.best);
  return {
    headline: say('question.indoors.head', {
      ...bestSaid,
      first: first.date,
      firstSize: first.size,
      way: isBigger ? 'bigger' : 'same',
    }),
    because: [
      say(first.years === best.years ? 'question.indoors.odds-same' : 'question.indoors.odds', {
        firstYears: first.years,
        bestYears: best.years,
      }),
      ...(flowering(stretch.first) >= 0.05
        ? [say('question.indoors.flower', { some: plants(flowering(stretch.first)) })]
        : []),
      say('question.indoors.last', { last: last.date, lastSize: last.size, lastYears: last.years }),
      ...bedSaid,
      light,
    ],
    cautions,
  };
}
