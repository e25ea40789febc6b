import { dayNumber, formatDay } from '@neckfall/engine';
import type { Page } from 'playwright-core';
import { ready } from './open-app.ts';

export const weatherHere = '#/weather?at=52.08,-3.13&name=Pencarreg+Bank&today=2027-06-20';

/** A file as a page is given it. */
export type Given = { name: string; mimeType: string; buffer: Buffer };

const given = (name: string, text: string, encoding: BufferEncoding = 'utf8'): Given => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text, encoding),
});

/** Of Ines Tarrant’s invented station: a mean that goes round in a fortnight, from 1 March 2027 on. */
const meanC = (day: number) => 8 + day / 20 + 3 * Math.sin((2 * Math.PI * day) / 14);
const monthDay = (day: number) => formatDay(dayNumber(2027, 3, 1) + day).split('-');
const comma = (value: number) => value.toFixed(1).replace('.', ',');

/**
 * A station's export as they are: Windows-1252, decimal commas, heads half German and half English, indoors beside
 * outdoors, rain as a counter set back at midnight, a week without power.
 */
export function stationFile(days = 60): Given {
  const lines = ['Zeit;Outdoor Temperatur(°C);Outdoor Feuchte(%);Innen Temperatur(°C);Regen Heute(mm)'];
  for (let day = 0; day < days; day++) {
    if (day >= 20 && day < 27) continue;
    const [year, month, date] = monthDay(day);
    for (let hour = 0; hour < 24; hour++) {
      const outC = meanC(day) - 4 * Math.cos((2 * Math.PI * (hour - 3)) / 24);
      const rainMm = day % 3 === 0 ? Math.min(6, hour / 2) : 0;
      lines.push(
        `${date}.${month}.${year} ${String(hour).padStart(2, '0')}:00;${comma(outC)};71;20,5;${comma(rainMm)}`,
      );
    }
  }
  return given('Wetterstation Garten.csv', `${lines.join('\r\n')}\r\n`, 'latin1');
}

/** Days of the same place by another thermometer, so much warmer. */
export function otherThermometer(warmerC: number, days = 30): Given {
  const rows = Array.from({ length: days }, (_, day) => {
    const mean = meanC(day) + warmerC;
    return [monthDay(day).join('-'), (mean - 4).toFixed(1), (mean + 4).toFixed(1)].join();
  });
  return given('wall.csv', `date,temp_min_c,temp_max_c\n${rows.join('\n')}\n`);
}

export const letter = given('letter.csv', 'Dear Bram, the onions are well.\nInes\n');

/** Gives the page files, and waits for what becomes of it. */
export async function giveWeather(page: Page, ...files: Given[] | [path: string]): Promise<void> {
  await page.getByLabel('Weather files, one or several').setInputFiles(files as Given[] | string[]);
  await page.locator('.found, main [role=alert]').first().waitFor();
  await ready(page);
}

/** Keeps what was found, and waits until it is. */
export async function keepWeather(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Keep it' }).click();
  await page.locator('.found').waitFor({ state: 'detached' });
  await page.locator('h1', { hasText: 'is kept' }).waitFor();
  await ready(page);
}
