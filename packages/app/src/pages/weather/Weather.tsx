import { standardOffsetH } from '@neckfall/answers';
import { civilDate, emptyGarden, recordOfGarden } from '@neckfall/engine';
import { useMemo, useRef, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { AnswerHeading } from '../../controls/AnswerHeading.tsx';
import { Fold } from '../../controls/Fold.tsx';
import { GardenSteps } from '../../controls/GardenSteps.tsx';
import { type Coming, withoutWeather, withWeather } from '../../garden/weather-of.ts';
import { changeGarden, gardenStanding } from '../../state/garden.ts';
import { place, placeName, site, siteKey } from '../../state/place.ts';
import { asked, hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { machineToday, today } from '../../state/today.ts';
import { weatherHere } from '../../state/weather.ts';
import type { WeatherFound } from '../../worker/weather-read.ts';
import { AskService } from './AskService.tsx';
import { ChooseFiles } from './ChooseFiles.tsx';
import { daysMeasured } from './days-measured.ts';
import { Found } from './Found.tsx';
import { forecastOf, KeptFigure, KeptLead, Sources } from './Kept.tsx';
import { Months } from './Months.tsx';
import type { Choice } from './Overlap.tsx';
import { ReadingState } from './ReadingState.tsx';
import { useReading } from './use-reading.ts';
import '../../look/garden.css';
import '../../look/weather.css';

/** The weather that came at the place: what is kept of it, and the ways to bring in more. */
export function Weather() {
  const { say } = voice.value;
  const main = useRef<HTMLDivElement>(null);
  const { latitudeDeg, longitudeDeg, timeZone } = place.value!;
  const utcOffsetH = standardOffsetH(timeZone, longitudeDeg, civilDate(today.value).year);
  const files = useReading({ latitudeDeg, longitudeDeg, utcOffsetH });
  const [answered, setAnswered] = useState<WeatherFound | null>(null);
  const usual = useAnswer(siteKey.value, () => ask('weatherUsual', site.value!)).answer;
  const kept = weatherHere.value;
  const record = useMemo(() => kept && recordOfGarden(kept), [kept]);
  const measured = kept && record ? daysMeasured(record, forecastOf(kept)) : 0;

  /** Of what stands in the garden then, whichever tab changed it last. */
  async function keep(coming: Coming, choice: Choice): Promise<void> {
    const { name } = asked.value;
    const called = name ?? placeName.value;
    const turn = files.turn();
    const isKept = await changeGarden({ code: 'weather-kept', name: called }, (now) =>
      withWeather(now ?? emptyGarden(), asked.value, called, coming, choice),
    );
    // other files may have been given meanwhile
    if (!isKept || files.turn() !== turn) return;
    files.leave();
    setAnswered(null);
    // the panel is gone: go on from what is kept now
    main.current?.focus();
    scrollTo(0, 0);
  }

  async function remove(): Promise<void> {
    const { at, name } = asked.value;
    if (!at) return;
    await changeGarden({ code: 'weather-removed', name: name ?? placeName.value }, (now) =>
      now ? withoutWeather(now, at) : now,
    );
    main.current?.focus();
  }

  const { reading } = files;
  const found = reading?.found ?? answered;
  return (
    <div class="weather garden" ref={main} tabIndex={-1}>
      {kept && record ? (
        <div class="spread">
          <div class="said">
            <KeptLead kept={kept} record={record} usual={usual} />
          </div>
          <div class="seen">
            <KeptFigure kept={kept} record={record} usual={usual} />
          </div>
          <div class="rest">
            <Onward />
          </div>
        </div>
      ) : (
        <div>
          <AnswerHeading text={say('app.weather.none', { place: placeName.value })} />
          <p>{say('app.weather.lead.none')}</p>
          <Onward />
        </div>
      )}
      <section aria-labelledby="bring-in">
        <h2 id="bring-in">{say('app.weather.choose')}</h2>
        <ChooseFiles
          onFiles={(chosen) => {
            setAnswered(null);
            files.start(chosen);
          }}
        />
        <ReadingState reading={reading} onStop={files.stop} />
      </section>
      {found && (
        <Found
          key={reading?.found ? 'files' : 'answer'}
          found={found}
          usual={usual}
          forecastFrom={reading?.found ? null : machineToday()}
          correct={reading?.found ? { corrections: reading.corrections, on: files.correct } : null}
          onKeep={(coming, choice) => void keep(coming, choice)}
          onLeave={() => {
            files.leave();
            setAnswered(null);
            main.current?.focus();
          }}
        />
      )}
      <AskService
        onAnswer={(answer) => {
          files.leave();
          setAnswered(answer);
        }}
      />
      {record && usual && measured > 0 && <Months record={record} usual={usual} days={measured} />}
      {kept && <Sources kept={kept} />}
      {gardenStanding.value && (kept || gardenStanding.value.undo) && (
        <Fold id="weather-steps" title={say('app.garden.file')}>
          <GardenSteps />
          {kept && (
            <p>
              <button type="button" onClick={() => void remove()}>
                {say('app.weather.remove')}
              </button>
            </p>
          )}
        </Fold>
      )}
    </div>
  );
}

function Onward() {
  const { say } = voice.value;
  return (
    <ul class="onward">
      <li>
        <a href={hrefTo('season')} class="next">
          {say('app.weather.to-season')}
        </a>
      </li>
      {gardenStanding.value?.garden && (
        <li>
          <a href={hrefTo('kept')}>{say('app.page.kept')}</a>
        </li>
      )}
    </ul>
  );
}
