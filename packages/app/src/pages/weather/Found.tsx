import {
  againstUsual,
  comingOf,
  recordGaps,
  type WeatherCorrections,
  type WeatherSeries,
} from '@neckfall/engine';
import { useEffect, useRef, useState } from 'preact/hooks';
import { questionOf } from '../../garden/weather-of.ts';
import { voice } from '../../state/settings.ts';
import { weatherHere } from '../../state/weather.ts';
import type { WeatherFound } from '../../worker/weather-read.ts';
import { Columns } from './Columns.tsx';
import { Doubts } from './Doubts.tsx';
import { FirstDays } from './FirstDays.tsx';
import { againstSentences, fileSentences, gapSentence } from './found-words.ts';
import { type Choice, Overlap } from './Overlap.tsx';

type Props = {
  found: WeatherFound;
  usual: WeatherSeries | null;
  /** Day number from which on it is forecast; null: none of it. */
  forecastFrom: number | null;
  /** Null where the columns are no question. */
  correct: { corrections: WeatherCorrections; on: (corrections: WeatherCorrections) => void } | null;
  onKeep: (choice: Choice) => void;
  onLeave: () => void;
};

/** What was found, before anything is kept. */
export function Found({ found, usual, forecastFrom, correct, onKeep, onLeave }: Props) {
  const speaker = voice.value;
  const { say, dayWithYear } = speaker;
  const head = useRef<HTMLHeadingElement>(null);
  // a thermometer in the garden is nearer to it than a model
  const [choice, choose] = useState<Choice>(forecastFrom === null ? 'take' : 'keep');
  const { record, files, check } = found;
  const coming = comingOf(found, '', null);
  const isKeepable = coming !== null && check.impossible === null;
  const measured = forecastFrom === null ? record.days : Math.max(0, forecastFrom - record.firstDay);
  const against =
    usual && isKeepable ? againstSentences(againstUsual(record, usual, measured), speaker) : null;
  const question = isKeepable ? questionOf(weatherHere.value, { ...coming, forecastFrom }) : null;
  // what was found is what the reader asked for: go on there
  useEffect(() => {
    head.current?.focus();
    head.current?.scrollIntoView?.({ block: 'start' });
  }, []);
  return (
    <section class="found" aria-labelledby="found">
      <h2 id="found" ref={head} tabIndex={-1}>
        {say('app.weather.found')}
      </h2>
      {files.map((file, at) => (
        <p key={file.file}>{fileSentences(file, found.awayKm[at], speaker).join(' ')}</p>
      ))}
      {isKeepable && (
        <>
          {forecastFrom !== null && (
            <p>{say('app.weather.forecast-from', { date: dayWithYear(forecastFrom) })}</p>
          )}
          <p>{gapSentence(record, recordGaps(record), speaker)}</p>
          {against && <p>{against.told}</p>}
          {against?.asked && <p class="alarm">{against.asked}</p>}
          {question && <Overlap question={question} choice={choice} onChoice={choose} />}
        </>
      )}
      {check.impossible !== null && coming && (
        <p class="alarm">{say(`app.weather.impossible.${check.impossible}`)}</p>
      )}
      <div class="row">
        {isKeepable && (
          <button type="button" class="do" onClick={() => onKeep(choice)}>
            {say('app.weather.keep')}
          </button>
        )}
        <button type="button" onClick={onLeave}>
          {say('app.weather.leave')}
        </button>
      </div>
      {record.days > 0 && <FirstDays record={record} />}
      <Doubts
        flagged={files.flatMap(({ flagged }) => flagged)}
        count={files.reduce((sum, { flaggedCount }) => sum + flaggedCount, 0)}
        findings={check.findings}
      />
      {correct &&
        files.map((file, at) => (
          <Columns
            key={file.file}
            id={`columns-${at}`}
            title={
              files.length === 1
                ? say('app.weather.columns')
                : say('app.weather.columns.of', { file: file.file })
            }
            found={file}
            corrections={correct.corrections}
            onCorrect={correct.on}
          />
        ))}
    </section>
  );
}
