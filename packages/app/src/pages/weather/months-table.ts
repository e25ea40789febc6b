import { civilDate, climateDayOf, type DailyRecord, type WeatherSeries } from '@neckfall/engine';
import type { DataTableProps } from '@neckfall/pictures';
import { voice } from '../../state/settings.ts';
import { exactly } from './exact.ts';

type Month = {
  year: number;
  month: number;
  tempDays: number;
  sumC: number;
  usualC: number;
  rainDays: number;
  rainMm: number;
  usualMm: number;
};

/** A record beside what is usual, a month a row, over its first `days`. */
export function monthsTable(record: DailyRecord, usual: WeatherSeries, days: number): DataTableProps {
  const speaker = voice.value;
  const { say, monthWithYear } = speaker;
  const { temp, rain, tempUnit, rainUnit } = exactly(speaker);
  const none = say('app.weather.unknown');
  return {
    caption: say('app.weather.months'),
    head: [
      say('app.weather.month'),
      say('app.weather.month.days'),
      say('app.weather.month.mean', { unit: tempUnit }),
      say('app.weather.month.usual-mean', { unit: tempUnit }),
      say('app.weather.month.rain', { unit: rainUnit }),
      say('app.weather.month.usual-rain', { unit: rainUnit }),
    ],
    rows: monthsOf(record, usual, days).map(
      ({ year, month, tempDays, sumC, usualC, rainDays, rainMm, usualMm }) => [
        monthWithYear(year, month),
        speaker.number(tempDays),
        tempDays > 0 ? temp(sumC / tempDays) : none,
        tempDays > 0 ? temp(usualC / tempDays) : none,
        rainDays > 0 ? rain(rainMm) : none,
        rainDays > 0 ? rain(usualMm) : none,
      ],
    ),
  };
}

function monthsOf({ firstDay, known, ...values }: DailyRecord, usual: WeatherSeries, days: number): Month[] {
  const months: Month[] = [];
  for (let at = 0; at < days; at++) {
    const { year, month } = civilDate(firstDay + at);
    let row = months.at(-1);
    if (row?.month !== month) {
      row = { year, month, tempDays: 0, sumC: 0, usualC: 0, rainDays: 0, rainMm: 0, usualMm: 0 };
      months.push(row);
    }
    const day = climateDayOf(firstDay + at);
    if (known.tempMinC[at] === 1 && known.tempMaxC[at] === 1) {
      row.tempDays++;
      row.sumC += (values.tempMinC[at] + values.tempMaxC[at]) / 2;
      row.usualC += (usual.tempMinC[day] + usual.tempMaxC[day]) / 2;
    }
    if (known.rainMm[at] === 1) {
      row.rainDays++;
      row.rainMm += values.rainMm[at];
      row.usualMm += usual.rainMm[day];
    }
  }
  return months;
}
