import { comingDay } from '@neckfall/answers';
import type { TodayAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { placeName } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** A start further off than this is not waited for: it is too late for the last one, days. */
const soonDays = 150;
/** A start that is good so long, days, is good all year round. */
const allYearDays = 340;

type Standing = 'always' | 'open' | 'last' | 'early' | 'late' | 'never';

/** What today is good for: the answer of the page. @param crop the onion and its start, in words */
export function NowHeading({ now, crop }: { now: TodayAnswer; crop: string }) {
  const speaker = voice.value;
  const { say, day } = speaker;
  const coming = (date: number | null) => (date === null ? '' : comingDay(date, today.value, speaker));
  return (
    <AnswerHeading
      text={say(`app.when.now.${standingOf(now)}`, {
        place: placeName.value,
        date: day(today.value),
        crop,
        until: coming(now.stillGoodUntil),
        from: coming(now.nextFrom),
      })}
    />
  );
}

/** The other ways of starting the same onion, today. */
export function OtherWays({ others }: { others: readonly TodayAnswer[] | null }) {
  const speaker = voice.value;
  return (
    <p class="today" data-waiting={others === null ? true : undefined}>
      {others === null ? speaker.say('app.working') : waysSentence(others, speaker)}
    </p>
  );
}

function waysSentence(others: readonly TodayAnswer[], speaker: Speaker): string {
  const standings = ['always', 'open', 'last', 'late', 'early', 'never'] as const;
  const { say, all, any } = speaker;
  return standings
    .flatMap((standing) => {
      const alike = others.filter((other) => standingOf(other) === standing);
      if (alike.length === 0) return [];
      const isGood = standing === 'always' || standing === 'open' || standing === 'last';
      const words = alike.map((way) => wayWords(way, standing, speaker));
      // "for seed and sets" is good for both, "for seed or sets" good for neither
      return [say(`app.when.ways.${standing}`, { starts: isGood ? all(words) : any(words) })];
    })
    .join(' ');
}

function wayWords(way: TodayAnswer, standing: Standing, speaker: Speaker): string {
  const { say } = speaker;
  const start = say(`today.start.${way.start}`);
  const date = way.stillGoodUntil ?? way.nextFrom;
  return standing === 'never' || standing === 'always' || standing === 'last' || date === null
    ? start
    : say(`app.when.way.${standing}`, { start, date: comingDay(date, today.value, speaker) });
}

function standingOf({ stillGoodUntil, nextFrom }: TodayAnswer): Standing {
  if (stillGoodUntil !== null) {
    if (stillGoodUntil <= today.value) return 'last';
    return stillGoodUntil - today.value >= allYearDays ? 'always' : 'open';
  }
  if (nextFrom === null) return 'never';
  return nextFrom - today.value <= soonDays ? 'early' : 'late';
}
