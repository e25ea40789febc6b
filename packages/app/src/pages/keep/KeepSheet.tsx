import { comingDay, keepHeadline, keepNames, shoppingOf, shoppingSentence } from '@neckfall/answers';
import type { KeepLot, KeepYear } from '@neckfall/engine';
import { isPrinting } from '../../device/printing.ts';
import { lotNames, StoreYear, storeYearOf } from '../../pictures/index.ts';
import { country } from '../../state/place.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** Drawn a little wider than a sheet and put on it smaller, px. */
const paperWidth = 1100;

/** One sheet: the year in store, what to get, and a label to cut out for each lot. Made when it is printed. */
export function KeepSheet({ year }: { year: KeepYear }) {
  if (!isPrinting.value || year.lots.length === 0) return null;
  const speaker = voice.value;
  const { say } = speaker;
  const names = lotNames(year, speaker);
  return (
    <section class="sheet keep-sheet" aria-labelledby="sheet">
      <h1 id="sheet">{keepHeadline(year, today.value, speaker)}</h1>
      <StoreYear width={paperWidth} {...storeYearOf(year, today.value, speaker)} />
      <h2>{say('app.keep.print.list')}</h2>
      <ul>
        {shoppingOf(year).map((item) => {
          const sentence = shoppingSentence(item, country.value, speaker);
          return <li key={sentence}>{sentence}</li>;
        })}
      </ul>
      <h2>{say('app.keep.print.labels')}</h2>
      <div class="labels">
        {year.lots.map((lot, at) => (
          <LotLabel key={names[at]} lot={lot} name={names[at]} />
        ))}
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
