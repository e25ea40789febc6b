import { keepLotSentence, shoppingOf, shoppingSentence } from '@neckfall/answers';
import type { KeepLot, KeepYear } from '@neckfall/engine';
import { lotNames } from '@neckfall/pictures';
import { askedOfLot } from '../../garden/lot-asked.ts';
import { country } from '../../state/place.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { keepLot, keptLot } from './keep-lot.ts';

/** More cards are folded away. */
const mostShown = 3;

/** One card a lot: what to start, when, how much; its season, and the way into the garden. */
export function Lots({ year }: { year: KeepYear }) {
  const { say } = voice.value;
  if (year.lots.length === 0) return null;
  const names = lotNames(year, voice.value);
  const cards = year.lots.map((lot, at) => (
    <LotCard key={names[at]} lot={lot} name={names[at]} year={year} />
  ));
  return (
    <section aria-labelledby="lots">
      <h2 id="lots">{say('app.keep.lots')}</h2>
      <div class="lots">{cards.slice(0, mostShown)}</div>
      {cards.length > mostShown && (
        <details>
          <summary>{say('app.keep.lots.more', { count: cards.length - mostShown })}</summary>
          <div class="lots">{cards.slice(mostShown)}</div>
        </details>
      )}
    </section>
  );
}

function LotCard({ lot, name, year }: { lot: KeepLot; name: string; year: KeepYear }) {
  const speaker = voice.value;
  const { say } = speaker;
  const kept = keptLot(lot);
  return (
    <article class="lot">
      <h3>{name}</h3>
      <p>{keepLotSentence(lot, today.value, country.value, speaker)}</p>
      <div class="row">
        <a href={hrefTo('season', askedOfLot(lot))} aria-label={say('app.keep.lot.season-of', { lot: name })}>
          {say('app.keep.lot.season')}
        </a>
        {!kept && (
          <button
            type="button"
            aria-label={say('app.keep.lot.keep-of', { lot: name })}
            onClick={() => void keepLot(lot, name)}
          >
            {say('app.keep.lot.keep')}
          </button>
        )}
      </div>
      <p role="status">{kept && say('app.keep.lot.kept', { name: kept.name })}</p>
      <details>
        <summary aria-label={say('app.keep.lot.figures-of', { lot: name })}>
          {say('app.keep.lot.figures')}
        </summary>
        <Figures lot={lot} year={year} />
      </details>
    </article>
  );
}

function Figures({ lot, year }: { lot: KeepLot; year: KeepYear }) {
  const speaker = voice.value;
  const { say, quantity, number, dayRange } = speaker;
  const { bedM2, need, ready, lastsUntil, kind } = lot;
  const [from, to] = kind.keepsMonths;
  const items = shoppingOf(year).filter((item) => item.lot === lot);
  const rows: [string, string | null][] = [
    [say('app.keep.lot.area'), quantity('area', bedM2)],
    [say('app.keep.lot.plants'), number(need.plants)],
    [say('app.keep.lot.row'), quantity('rowLength', need.rowM)],
    [say('app.keep.lot.ready'), ready.days && dayRange(ready.days.p10, ready.days.p90)],
    [say('app.keep.lot.lasts'), lastsUntil.days && dayRange(lastsUntil.days.p10, lastsUntil.days.p90)],
    [say('app.keep.lot.keeps'), say('app.keep.lot.months', { from, to, of: kind.keepsFrom })],
    [
      say('app.keep.lot.shop'),
      items.length > 0 ? items.map((item) => shoppingSentence(item, country.value, speaker)).join(' ') : null,
    ],
  ];
  return (
    <dl>
      {rows.map(
        ([title, value]) =>
          value !== null && (
            <div key={title}>
              <dt>{title}</dt>
              <dd>{value}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
