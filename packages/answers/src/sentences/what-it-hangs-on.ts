import { type Nudged, type Pull, strongerOf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** What the end of this crop hangs on most here, and what starting later does to it. */
export function whatItHangsOn(pulls: readonly Pull[], speaker: Speaker): string {
  const { say } = speaker;
  const [first] = pulls;
  const stronger = strongerOf(first);
  const lead = say(`how.hangs.${first.cause}`, {
    amount: amountOf(first.cause, Math.abs(stronger.by), speaker),
    way: stronger.by > 0 ? 'more' : 'less',
    end: endOf(stronger, speaker),
  });
  const start = pulls.find(({ cause }) => cause === 'start');
  if (!start || start === first) return lead;
  const later = say('how.hangs.start-too', {
    amount: amountOf('start', start.more.by, speaker),
    end: endWithSize(start.more, speaker),
  });
  return `${lead} ${later}`;
}

function amountOf(cause: Pull['cause'], by: number, { say, quantity }: Speaker): string {
  switch (cause) {
    case 'warmth':
      return quantity('temperatureDifference', by);
    case 'day-length':
      return say('how.minutes', { minutes: Math.round(60 * by) });
    case 'start':
      return say('how.days', { days: by });
  }
}

function endOf({ neckFallDays, failure }: Nudged, { say }: Speaker): string {
  if (failure !== null) return say(`how.end.${failure}`);
  if (neckFallDays === null) return say('how.end.not-ripe');
  if (neckFallDays === 0) return say('how.end.same');
  const days = say('how.days', { days: Math.abs(neckFallDays) });
  return say(neckFallDays > 0 ? 'how.end.later' : 'how.end.sooner', { days });
}

/** Less than this across is not worth a word, mm. */
const leastMm = 1.5;

function endWithSize(nudged: Nudged, speaker: Speaker): string {
  const end = endOf(nudged, speaker);
  const { diameterMm, failure } = nudged;
  if (failure !== null || diameterMm === null || Math.abs(diameterMm) < leastMm) return end;
  return speaker.say('how.end.with-size', {
    end,
    size: speaker.quantity('bulbLength', Math.abs(diameterMm)),
    way: diameterMm > 0 ? 'more' : 'less',
  });
}
