import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fileOfBytes } from './file-of-bytes.ts';
import { garden, openFile, press, whole } from './kept-garden.ts';
import { type App, hasChromium, openApp, openDetails, ready, textOf } from './open-app.ts';
import {
  giveWeather,
  keepWeather,
  letter,
  otherThermometer,
  stationFile,
  weatherHere,
} from './weather-files.ts';

describe.skipIf(!hasChromium)('the weather that came', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());
  const alone = async () => app.page(weatherHere, { context: await app.context() });

  test('a stranger’s station file is told, looked at and kept', async () => {
    const page = await alone();
    expect(await textOf(page)).toContain('no weather is kept yet');
    await giveWeather(page, stationFile());
    const found = await page.locator('.found').textContent();
    expect(found).toContain(
      'a personal station’s table, 1 March 2027 to 29 April 2027, several rows a day. It holds temperature outdoors (°C) and rain of the day so far (mm).',
    );
    expect(found).toContain(
      '7 days are missing and are filled from what is usual here: 21 March 2027 to 27 March',
    );
    expect(found).toMatch(/days measured were \d+(\.\d)?°C (warmer|colder) than usual here/);
    // indoors is no weather
    await openDetails(page);
    expect(await page.getByLabel('Innen Temperatur(°C): taken as').inputValue()).toBe('none');
    const firstDay = page.locator('.found tbody tr').first();
    expect(await firstDay.locator('th, td').allTextContents()).toEqual(['1 March', '4.0', '12.0', '6.0']);
    await keepWeather(page);
    await page
      .locator('h1', { hasText: 'The weather from 1 March 2027 to 29 April 2027 is kept, but for 7 days.' })
      .waitFor();
    expect(await page.locator('.weather-days').getAttribute('aria-label')).toContain('1 March 2027');
    const saved = (await whole(page)) as typeof garden & {
      weather: { rainMm: (number | null)[]; placeId: string }[];
    };
    expect(saved.weather).toHaveLength(1);
    expect(saved.weather[0].rainMm.slice(18, 28)).toEqual([6, 0, ...Array(7).fill(null), 6]);
    expect(saved.places.map(({ id, name }) => ({ id, name }))).toEqual([
      { id: saved.weather[0].placeId, name: 'Pencarreg Bank' },
    ]);
    await page.context().close();
  });

  test('a column taken wrongly is put right before anything is kept, and what can’t be is told', async () => {
    const page = await alone();
    await giveWeather(page, stationFile());
    await openDetails(page);
    await page.getByLabel('Innen Temperatur(°C): taken as').selectOption('tempC');
    await page.getByLabel('Outdoor Temperatur(°C): taken as').selectOption('none');
    const firstDay = page.locator('.found tbody tr').first();
    await firstDay.getByText('20.5').first().waitFor();
    await page.getByLabel('Outdoor Temperatur(°C): taken as').selectOption('tempC');
    await page.getByLabel('Innen Temperatur(°C): taken as').selectOption('none');
    await page.getByLabel('Outdoor Temperatur(°C): unit').selectOption('°F');
    await firstDay.getByText('-15.6').waitFor();
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(await page.locator('.found').count()).toBe(0);
    expect(await textOf(page)).toContain('no weather is kept yet');
    await page.context().close();
  });

  test('of days that differ one says which shall stand; agreeing days are no question', async () => {
    const page = await alone();
    await giveWeather(page, stationFile());
    await keepWeather(page);
    await giveWeather(page, stationFile());
    expect(await page.getByText('Which shall stand?').count()).toBe(0);
    await giveWeather(page, otherThermometer(2));
    await page.getByText('23 days that are kept already differ, by up to 2°C. Which shall stand?').waitFor();
    await page.getByLabel('What was there').check();
    await keepWeather(page);
    const keptDays = async () =>
      ((await whole(page)) as unknown as { weather: { tempMinC: (number | null)[] }[] }).weather[0].tempMinC;
    // the week without power is filled by the other one
    expect((await keptDays()).slice(20, 27).filter((value) => value === null)).toEqual([]);
    expect((await keptDays())[0]).toBe(4);
    await giveWeather(page, otherThermometer(2));
    await page.getByLabel('The new record').check();
    await keepWeather(page);
    expect((await keptDays())[0]).toBe(6);
    await press(page, /Take back: weather of “Pencarreg Bank” kept/);
    await ready(page);
    expect((await keptDays())[0]).toBe(4);
    await press(page, 'Remove the weather of this place');
    await page.locator('h1', { hasText: 'no weather is kept yet' }).waitFor();
    await press(page, /Take back: weather of “Pencarreg Bank” removed/);
    await page.locator('h1', { hasText: 'is kept' }).waitFor();
    await page.context().close();
  });

  test('what is no record is refused in one line, and nothing is lost', async () => {
    const page = await alone();
    await giveWeather(page, stationFile());
    await keepWeather(page);
    await giveWeather(page, letter);
    expect(await page.locator('main [role=alert]').textContent()).toBe(
      'letter.csv begins with “Dear Bram, the onions are well.”, which is no record that is known here: a table needs a line a day or a reading, with a date in it. Nothing here was changed.',
    );
    await giveWeather(page, fileOfBytes('huge.csv', 48_000_001, 'a'));
    expect(await page.locator('main [role=alert]').textContent()).toContain('huge.csv is larger than 48 MB');
    expect(await page.locator('h1').textContent()).toContain('is kept');
    await page.context().close();
  });

  test('weather belongs to the point: the garden’s places and plantings stay as they were', async () => {
    const page = await app.page('#/kept?at=52.08,-3.13&name=Pencarreg+Bank&today=2027-06-20', {
      context: await app.context(),
    });
    await openFile(page, garden);
    await page.evaluate((hash) => {
      location.hash = hash;
    }, weatherHere);
    await page.getByLabel('Weather files, one or several').waitFor();
    await giveWeather(page, stationFile());
    await keepWeather(page);
    const saved = (await whole(page)) as typeof garden & { weather: { placeId: string }[] };
    expect(saved.places).toHaveLength(1);
    expect(saved.plantings).toHaveLength(2);
    expect(saved.weather[0].placeId).toBe('bank');
    await page.getByRole('link', { name: 'Kept here', exact: true }).click();
    await page.getByText('Weather kept from 1 March 2027 to 29 April 2027: 53 days measured.').waitFor();
    await page.context().close();
  });

  test('speaks Spanish, and °F and inches to those who want them', async () => {
    const page = await app.page(weatherHere, { context: await app.context({ locale: 'es-ES' }) });
    await page.getByLabel('Archivos de tiempo, uno o varios').setInputFiles([stationFile()]);
    await page.locator('.found').waitFor();
    expect(await page.locator('.found').textContent()).toContain('la tabla de una estación propia');
    await page.getByLabel('°F').check();
    await page.locator('.found').getByText('Mínima, °F').first().waitFor();
    await page.context().close();
    app.expectClean();
  });

  test('the copy as it is built asks nobody, and says so', async () => {
    const page = await alone();
    expect(await textOf(page)).toContain('This copy of Neckfall asks nobody for weather; files are the way.');
    expect(await page.getByRole('button', { name: /^Ask for/ }).count()).toBe(0);
    expect(await page.locator('meta[http-equiv=Content-Security-Policy]').getAttribute('content')).toContain(
      "connect-src 'self';",
    );
    await page.context().close();
  });
});
