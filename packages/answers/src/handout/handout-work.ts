import type { Job, JobName } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { HandoutWork } from './handout.ts';

/** Work that is told in one row, in the order in which it comes; what a full page can do without has a number. */
const rows: readonly { of: readonly JobName[]; spare: number | null }[] = [
  { of: ['sow'], spare: null },
  { of: ['prick-out'], spare: 30 },
  { of: ['trim'], spare: 31 },
  { of: ['harden'], spare: 70 },
  { of: ['plant'], spare: null },
  { of: ['feed', 'feed-stop'], spare: null },
  { of: ['weed'], spare: null },
  { of: ['thin'], spare: 32 },
  { of: ['water', 'water-stop'], spare: null },
  { of: ['watch-onion-fly', 'watch-seedcorn-fly'], spare: 80 },
  { of: ['watch-mildew'], spare: 20 },
  { of: ['watch-thrips'], spare: 21 },
  { of: ['check-tops'], spare: 33 },
  { of: ['lift'], spare: null },
  { of: ['dry'], spare: null },
  { of: ['clean', 'store'], spare: null },
  { of: ['check-store'], spare: 60 },
];

/** The year of work on a crop in a few rows by day: the same jobs and days as its full list, those alike together. */
export function handoutWork(jobs: readonly Job[], speaker: Speaker): HandoutWork[] {
  return rows
    .flatMap(({ of, spare }) => {
      const these = jobs.filter(({ name }) => of.includes(name));
      if (these.length === 0) return [];
      const { days, text } = rowOf(these, speaker);
      return [{ days, text, spare, first: these[0].from }];
    })
    .sort((a, b) => a.first - b.first)
    .map(({ first: _, ...row }) => row);
}

function rowOf(jobs: readonly Job[], speaker: Speaker): { days: string; text: string } {
  const { say, all, day, dayRange, quantity } = speaker;
  const [first] = jobs;
  const last = jobs[jobs.length - 1];
  const span = dayRange(first.from, Math.max(...jobs.map(({ to }) => to)));
  const bests = () => all([...new Set(jobs.map(({ best }) => day(best)))]);
  const depth = Number(first.why.values.depthMm ?? 0);
  const code = first.why.code;
  switch (first.name) {
    case 'sow':
      return {
        days: span,
        text: say('handout.work.sow', {
          tray: 'plantDay' in first.why.values ? 'yes' : 'no',
          depth: quantity('bulbLength', depth),
        }),
      };
    case 'plant':
      return { days: span, text: say('handout.work.plant', { depth: quantity('bulbLength', depth) }) };
    case 'feed':
    case 'feed-stop':
      return feedRow(jobs, speaker);
    case 'water':
    case 'water-stop': {
      const stop = jobs.find(({ name }) => name === 'water-stop');
      return first.name === 'water-stop'
        ? { days: span, text: say('handout.work.water-stop') }
        : {
            days: say('handout.days.from', { date: day(first.from) }),
            text: say('handout.work.water', { stop: stop ? day(stop.best) : 'none' }),
          };
    }
    case 'watch-onion-fly':
    case 'watch-seedcorn-fly': {
      const flies = [...new Set(jobs.map(({ name }) => name))].map((name) =>
        say(name === 'watch-onion-fly' ? 'handout.fly.onion' : 'handout.fly.seedcorn'),
      );
      return { days: bests(), text: say('handout.work.flies', { flies: all(flies) }) };
    }
    case 'lift':
      return {
        days: span,
        text: say(
          code === 'pull-green'
            ? 'handout.work.pull-green'
            : code === 'lift-unripe'
              ? 'handout.work.lift-unripe'
              : 'handout.work.lift',
        ),
      };
    case 'clean':
    case 'store':
      return { days: span, text: say('handout.work.store') };
    case 'check-store':
      return {
        days: say('handout.days.from', { date: day(first.from) }),
        text: say('handout.work.check-store'),
      };
    default:
      return { days: first === last ? span : bests(), text: say(`handout.work.${first.name}`) };
  }
}

function feedRow(jobs: readonly Job[], { say, all, day, quantity }: Speaker) {
  const feeds = jobs.filter(({ name }) => name === 'feed');
  const stop = jobs.find(({ name }) => name === 'feed-stop');
  const amounts = [...new Set(feeds.map(({ why }) => Number(why.values.gramsPerM2)))].sort((a, b) => a - b);
  if (feeds.length === 0) {
    return { days: stop ? day(stop.best) : '', text: say('handout.work.feed-stop') };
  }
  return {
    days: all([...new Set(feeds.map(({ best }) => day(best)))]),
    text: say('handout.work.feed', {
      amounts: all([...new Set(amounts.map((amount) => quantity('feed', amount)))]),
      product: String(feeds[0].why.values.product),
      times: feeds.length,
      stop: stop ? day(stop.best) : 'none',
    }),
  };
}
