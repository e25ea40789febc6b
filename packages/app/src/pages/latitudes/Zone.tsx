import { latitudeName, sameWinterSentences, warmthWords } from '@neckfall/answers';
import type { LatitudeClimates, SameWinter } from '@neckfall/engine';
import { askLong } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { Fault } from '../../controls/Fault.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { Working } from '../../controls/Working.tsx';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { BulbsFigure } from './BulbsFigure.tsx';
import { addressOf, type Setting } from './setting.ts';

type Props = { climates: LatitudeClimates; side: 1 | -1; from: number };

/** Two places with the same coldest night, where opposite kinds do best. */
export function Zone({ climates, side, from }: Props) {
  const { answer, isFresh, failed } = useAnswer(`${side} ${from}`, () =>
    askLong('latitudeWinters', { climates, side, from }),
  );
  const { say } = voice.value;
  return (
    <section class="zone" aria-labelledby="zone" data-waiting={isFresh ? undefined : true}>
      <h2 id="zone">{say('app.latitudes.zone')}</h2>
      {failed !== null ? (
        <Fault reason={failed} />
      ) : answer ? (
        <Opposite found={answer} />
      ) : isFresh ? (
        <p>{say('app.latitudes.zone.none')}</p>
      ) : (
        <Working />
      )}
    </section>
  );
}

function Opposite({ found }: { found: SameWinter }) {
  const speaker = voice.value;
  const { say, day, dayLength, quantity } = speaker;
  const [same, one, other, words] = sameWinterSentences(found, speaker);
  return (
    <>
      <p>{same}</p>
      <div class="pair">
        {found.opposite.map(({ latitudeDeg, warmerC, best, stranger }, at) => {
          const place = latitudeName(latitudeDeg, speaker);
          const { type, startDay } = best.summary.plan;
          const title = say('app.latitudes.zone.bulbs', { place, date: day(startDay) });
          const setting = { latitudeDeg, warmerC: Math.round(warmerC * 2) / 2, startDay, type };
          const own = [best.summary, stranger];
          return (
            <div key={latitudeDeg}>
              <h3>{title}</h3>
              <BulbsFigure
                title={title}
                summaries={at === 0 ? own : own.toReversed()}
                latitudeDeg={latitudeDeg}
                warmerC={setting.warmerC}
              />
              <p>{at === 0 ? one : other}</p>
              <Go setting={setting} place={place} />
            </div>
          );
        })}
      </div>
      <p class="because">{words}</p>
      <Twin
        caption={say('app.latitudes.zone.table', { night: quantity('temperature', found.coldestNightC) })}
        head={[
          say('picture.latitude.column-latitude'),
          say('app.latitudes.zone.warmth'),
          say('app.latitudes.zone.longest'),
          say('picture.latitude.column-best'),
          say('picture.latitude.column-sown'),
          say('picture.latitude.column-comes'),
        ]}
        rows={found.places.map(({ latitudeDeg, warmerC, longestDayH, best: { summary } }) => [
          latitudeName(latitudeDeg, speaker),
          warmthWords(Math.round(warmerC * 2) / 2, speaker),
          dayLength(longestDayH),
          say(`type.${summary.plan.type}`),
          day(summary.plan.startDay),
          say(`verdict.${summary.outcome}`),
        ])}
      />
    </>
  );
}

/** By itself: its address follows what is asked, and the pictures beside it do not. */
function Go({ setting, place }: { setting: Setting; place: string }) {
  return (
    <p>
      <a href={hrefTo('latitudes', addressOf(setting))}>
        {voice.value.say('app.latitudes.zone.go', { place })}
      </a>
    </p>
  );
}
