import { noCorrections, readWeather } from '../packages/engine/src/index.ts';
import { medianMs, type Row } from './timing.ts';

/** Readings every ten minutes for two years, as a station writes them. */
function stationTable(): string {
  const rows = ['Date;Temperatur innen (°C);Temperatur außen (°C);Regen heute (mm);Solarstrahlung (W/m²)'];
  for (let at = 0; at < 100_000; at++) {
    const [day, minute] = [Math.floor(at / 144), (at % 144) * 10];
    const stamp = `${(day % 28) + 1}.${(Math.floor(day / 28) % 12) + 1}.${2020 + Math.floor(day / 336)}`;
    const clock = `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`;
    rows.push(`${stamp} ${clock};21,5;${at % 30},${at % 10};${(at % 144) / 10};${at % 800},0`);
  }
  return rows.join('\n');
}

/** Time that a megabyte of a table takes whose format nothing tells. */
export function weatherTableRows(): Row[] {
  const text = stationTable();
  const ms = medianMs(5, () => {
    const read = readWeather([{ file: 'table.csv', text, encoding: 'utf-8' }], noCorrections, {
      utcOffsetH: null,
    });
    if (!read.ok) throw new Error(`bench: the table was refused: ${JSON.stringify(read.issue)}`);
    return read.reading.record.days;
  });
  return [
    { what: 'a table of weather, a megabyte', value: (ms * 1e6) / text.length, unit: 'ms', limit: 100 },
  ];
}
