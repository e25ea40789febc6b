import { type FlaggedValue, heavyRainMm, type WeatherFinding } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';
import { exactly } from './exact.ts';

/** Told one by one; the others are counted. */
const mostTold = 20;

type Props = { flagged: readonly FlaggedValue[]; count: number; findings: readonly WeatherFinding[] };

/** What is doubtful in a record, by day, and as a whole. */
export function Doubts({ flagged, count, findings }: Props) {
  const { say } = voice.value;
  const told = flagged.slice(0, mostTold);
  return (
    <>
      {findings.map((finding) => (
        <p key={finding.code}>{findingSentence(finding)}</p>
      ))}
      {count > 0 && (
        <details>
          <summary>{say('app.weather.doubts', { count })}</summary>
          <ul>
            {told.map((value) => (
              <li key={`${value.day} ${value.field} ${value.why}`}>{flaggedSentence(value)}</li>
            ))}
            {count > told.length && <li>{say('app.weather.doubts.more', { count: count - told.length })}</li>}
          </ul>
        </details>
      )}
    </>
  );
}

function flaggedSentence({ day, field, value, why, leftOut }: FlaggedValue): string {
  const speaker = voice.value;
  const { temp, rain, sun, tempUnit, rainUnit } = exactly(speaker);
  const written = {
    tempMinC: () => `${temp(value)} ${tempUnit}`,
    tempMaxC: () => `${temp(value)} ${tempUnit}`,
    rainMm: () => `${rain(value)} ${rainUnit}`,
    solarMJ: () => `${sun(value)} MJ/m²`,
  };
  return speaker.say('app.weather.doubt', {
    date: speaker.dayWithYear(day),
    field: speaker.say(`app.weather.field.${field}`),
    value: written[field](),
    why: speaker.say(`app.weather.why.${why}`),
    leftOut: String(leftOut),
  });
}

function findingSentence(finding: WeatherFinding): string {
  const { say, dayWithYear, number, quantity } = voice.value;
  switch (finding.code) {
    case 'stuck':
      return say('app.weather.doubt.stuck', { days: finding.days, date: dayWithYear(finding.firstDay) });
    case 'sun-beyond-sky':
      return say('app.weather.doubt.sun-beyond-sky', { days: finding.days });
    case 'sun-weak':
      return say('app.weather.doubt.sun-weak', { percent: number(100 * finding.share) });
    case 'rain-heavy':
      return say('app.weather.doubt.rain-heavy', {
        days: finding.days,
        limit: quantity('rain', heavyRainMm),
        most: quantity('rain', finding.mostMm),
      });
  }
}
