import {
  comingDay,
  keepCautions,
  keepEatFirst,
  keepGapSentence,
  keepGrounds,
  keepHeadline,
  keepUnmetSentence,
} from '@neckfall/answers';
import type { KeepYear } from '@neckfall/engine';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { AnswerLinks } from '../../controls/AnswerLinks.tsx';
import { Fold } from '../../controls/Fold.tsx';
import { HowWeKnow } from '../../controls/HowWeKnow.tsx';
import { askedOfLot, inTurn } from '../../garden/lot-asked.ts';
import { kitchenSaid, usualUse } from '../../state/kitchen.ts';
import { place } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import type { KeepAhead } from '../../worker/keep-year.ts';
import { InStore } from './InStore.tsx';
import { KeepSheet } from './KeepSheet.tsx';
import { KitchenForm } from './KitchenForm.tsx';
import { Lots } from './Lots.tsx';
import { PrintIt } from './PrintIt.tsx';
import { StoreFigure } from './StoreFigure.tsx';

export function KeepAnswer({ ahead }: { ahead: KeepAhead }) {
  const speaker = voice.value;
  const { say } = speaker;
  const { year } = ahead;
  const unmet = keepUnmetSentence(year, speaker);
  return (
    <InTurn>
      <div class="spread">
        <div class="said">
          <AnswerHeading text={keepHeadline(year, today.value, speaker)} />
        </div>
        <div class="seen">
          <StoreFigure year={year} />
        </div>
        <div class="rest">
          {unmet !== null && <p class="because">{unmet}</p>}
          <KitchenForm />
          <AnswerLinks links={waysOn(year)} />
        </div>
      </div>
      <Lots year={year} />
      <Gaps year={year} />
      <InStore />
      <EatFirst year={year} />
      {year.lots.length > 0 && <PrintIt />}
      {year.lots.length > 0 && (
        <Fold id="care" title={say('app.cautions')}>
          <ul>
            {keepCautions(speaker).map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </Fold>
      )}
      <HowWeKnow assumed={assumedOf(ahead)} />
      <AnswerFoot shown={kitchenSaid.value} />
      <KeepSheet year={year} />
    </InTurn>
  );
}

/** The season of the lot that is started first, and which onions there are. */
function waysOn({ lots }: KeepYear) {
  const speaker = voice.value;
  const { say } = speaker;
  const [first] = inTurn(lots);
  const date = first && comingDay(first.plan.startDay, today.value, speaker);
  const text = first && say('app.keep.onward.season', { lot: lots.indexOf(first) + 1, date });
  return [
    ...(first ? [{ href: hrefTo('season', askedOfLot(first)), text }] : []),
    { href: hrefTo('which'), text: say('app.keep.onward.which') },
  ];
}

function Gaps({ year }: { year: KeepYear }) {
  const speaker = voice.value;
  if (year.gaps.length === 0) return null;
  return (
    <Fold id="gaps" title={speaker.say('app.keep.gaps')}>
      {year.gaps.map((gap) => (
        <p key={gap.from}>{keepGapSentence(gap, speaker)}</p>
      ))}
    </Fold>
  );
}

function EatFirst({ year }: { year: KeepYear }) {
  const speaker = voice.value;
  const said = keepEatFirst(year, today.value, speaker);
  if (said.length === 0) return null;
  return (
    <Fold id="first" title={speaker.say('app.keep.first')}>
      <ul>
        {said.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Fold>
  );
}

function assumedOf(ahead: KeepAhead): string[] {
  const usual = kitchenSaid.value.gramsPerWeek === null ? usualUse.value : null;
  return keepGrounds(ahead, usual, place.value?.practice ?? [], voice.value);
}
