import { type Choice, groupKinds } from '@neckfall/engine';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { startDayWords } from './start-day.ts';

/** From so many days on, one who stands in the garden wants to hear of something sooner. */
const farDays = 60;
/** Less is no gain. */
const soonerDays = 30;

type Props = {
  choices: readonly Choice[];
  /** The start that the headline tells. */
  startDay: number;
};

/** Said where that is long to come: which kind has its turn before it. */
export function FarOff({ choices, startDay }: Props) {
  const { say, years } = voice.value;
  const [{ summary: best }] = choices;
  if (best.outcome !== 'good' || startDay - today.value <= farDays) return null;
  const sooner = soonerThan(startDay, choices);
  return (
    <p>
      {sooner
        ? say('app.which.far.sooner', {
            kind: say(`crop-kind.${sooner.kind.start}`, { type: say(`type.${sooner.kind.type}`) }),
            soon: startDayWords(sooner.summary.plan.startDay),
            years: years(sooner.summary.seasonShares.good, sooner.summary.years),
          })
        : say('app.which.far.none')}{' '}
      <a href={hrefTo('where')}>{say('app.which.far.today')}</a>
    </p>
  );
}

/** Of the kinds at home here that do well and start well before that day the soonest among the best. */
function soonerThan(day: number, choices: readonly Choice[]): Choice | undefined {
  const sooner = groupKinds(choices)
    .map(({ choices: [first] }) => first)
    .filter(({ summary }) => summary.outcome === 'good' && summary.plan.startDay <= day - soonerDays)
    .filter(({ summary, parts }) => !summary.gamble && parts.scarce === 0)
    .sort((a, b) => a.rank - b.rank || a.summary.plan.startDay - b.summary.plan.startDay);
  return sooner[0];
}
