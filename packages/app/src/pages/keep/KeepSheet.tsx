import {
  comingDay,
  isGreenLot,
  keepGapSentence,
  keepHeadline,
  keepLotSentence,
  keepNames,
  ofLot,
  shoppingOf,
  shoppingSentence,
} from '@neckfall/answers';
import type { KeepLot, KeepYear } from '@neckfall/engine';
import { lotNames, StoreYear, storeYearOf } from '@neckfall/pictures';
import { isPrinting } from '../../device/printing.ts';
import { inTurn } from '../../garden/lot-asked.ts';
import { country } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** Drawn a little wider than a sheet and put on it smaller, px. */
const paperWidth = 1100;

/** One sheet: the year in store, what to plant in turn, what to get, and a label to cut out for each lot. Made when it is printed. */
export function KeepSheet({ year }: { year: KeepYear }) {
  if (!isPrinting.value || year.lots.length === 0) return null;
  const speaker = voice.value;
  const { say } = speaker;
  const names = lotNames(year, speaker);
  return (
    <section class="sheet keep-sheet" aria-labelledby="sheet">
      <h1 id="sheet">{keepHeadline(year, today.value, speaker)}</h1>
      <StoreYear width={paperWidth} {...storeYearOf(year, today.value, speaker)} />
      <h2>{say('app.keep.print.plan')}</h2>
      <ul>
        {inTurn(year.lots).map((lot) => {
          const at = year.lots.indexOf(lot);
          const sentence = keepLotSentence(lot, today.value, country.value, speaker);
          return <li key={names[at]}>{ofLot(at, sentence, speaker)}</li>;
        })}
        {year.gaps.map((gap) => (
          <li key={gap.from}>{keepGapSentence(gap, speaker)}</li>
        ))}
      </ul>
      <h2>{say('app.keep.print.list')}</h2>
      <ul>
        {shoppingOf(year).map((item) => {
          const sentence = shoppingSentence(item, country.value, speaker);
          return <li key={sentence}>{sentence}</li>;
        })}
      </ul>
      <h2>{say('app.keep.print.labels')}</h2>
      <div class="labels">
        {year.lots.map(
          (lot, at) => !isGreenLot(lot) && <LotLabel key={names[at]} lot={lot} name={names[at]} />,
        )}
      </div>
    </section>
  );
}

function LotLabel({ lot, name }: { lot: KeepLot; name: string }) {
  const speaker = voice.value;
  const { say } = speaker;
  const { days } = lot.lastsUntil;
  return (
    <div class="label">
      <strong>{name}</strong>
      <p>{keepNames(lot, country.value, speaker)}</p>
      <p class="write">{say('app.keep.print.lifted')}</p>
      <p>
        {days
          ? say('app.keep.print.eat-by', { date: comingDay(days.p50, today.value, speaker) })
          : say('app.keep.print.eat-none')}
      </p>
    </div>
  );
}
