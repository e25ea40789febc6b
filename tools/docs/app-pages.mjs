// node tools/docs/app-pages.mjs: pictures of the app's pages of the invented demo garden, for docs/app.md.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { appFolder, buildApp } from '../setup/build-app.mjs';
import { findChromium } from '../setup/chromium.mjs';
import { serve } from '../setup/serve-app.mjs';
import { root } from '../setup/steps.mjs';

const target = join(root, 'docs', 'app');
const garden = 'at=52.08,-3.13&name=Pencarreg+Bank&elevation=160&sun=14&today=2027-03-01';
// the same grower on a visit, for the talk to friends there; invented
const elsewhere = 'at=19.9,73.8&name=Mango+Terrace&today=2027-08-20';
const failed = garden.replace('2027-03-01', '2027-09-10');
const onion = 'class=long&start=sets';
const phone = { width: 360, height: 740 };
const desk = { width: 1100, height: 900 };

const pages = [
  { name: 'first-visit', hash: '', size: phone, scheme: 'light' },
  { name: 'where', hash: `#/where?${garden}`, size: desk, scheme: 'light' },
  { name: 'where-phone', hash: `#/where?${garden}`, size: phone, scheme: 'dark' },
  { name: 'which', hash: `#/which?${garden}`, size: desk, scheme: 'light' },
  { name: 'sets-in-hand', hash: `#/which?${garden}&packet=yes&holds=sets`, size: phone, scheme: 'light' },
  { name: 'mild', hash: `#/which?${garden}&mild=yes`, size: phone, scheme: 'light' },
  { name: 'elsewhere', hash: `#/where?${elsewhere}`, size: phone, scheme: 'light' },
  { name: 'when', hash: `#/when?${garden}&${onion}`, size: desk, scheme: 'light' },
  { name: 'season', hash: `#/season?${garden}&${onion}&date=2027-04-14`, size: desk, scheme: 'light' },
  { name: 'keep', hash: `#/keep?${garden}&people=4`, size: desk, scheme: 'light' },
  { name: 'why', hash: `#/why?${failed}`, size: desk, scheme: 'light' },
  {
    name: 'why-answer',
    hash: `#/why?${failed}&${onion}&date=2027-04-14&saw=flowered`,
    size: desk,
    scheme: 'light',
  },
  { name: 'map-page', hash: '#/map?view=europe&today=2027-03-01', size: desk, scheme: 'light' },
  { name: 'together', hash: '#/together?today=2027-05-03', size: desk, scheme: 'light' },
  {
    name: 'latitudes',
    hash: '#/latitudes?latitude=52&date=2027-03-20&today=2027-03-01',
    size: desk,
    scheme: 'light',
  },
  { name: 'sheet', hash: `#/sheet?${garden}&heading=Garden+club`, size: desk, scheme: 'light' },
  { name: 'questions', hash: `#/questions?${garden}&shows=kitchen-onions`, size: desk, scheme: 'light' },
];

// the same garden with leaves counted, as far as its invented grower did
const grown = `${garden.replace('2027-03-01', '2027-06-10')}&class=long&start=raised-seedlings&date=2027-02-20&planting=bed`;
const counts = { '2027-05-14': 3, '2027-05-26': 4, '2027-06-08': 5 };
const gardenFile = {
  schema: 'neckfall/garden@1',
  places: [
    {
      id: 'bank',
      name: 'Pencarreg Bank',
      latitudeDeg: 52.08,
      longitudeDeg: -3.13,
      elevationM: 160,
      sunHours: 14,
    },
  ],
  plantings: [
    {
      id: 'bed',
      name: 'The long bed',
      placeId: 'bank',
      class: 'long',
      start: 'raised-seedlings',
      startDate: '2027-02-20',
    },
  ],
  observations: Object.entries(counts).map(([date, leavesGreen]) => ({
    id: date,
    plantingId: 'bed',
    date,
    leavesGreen,
    lookedAt: 5,
  })),
};
pages.push(
  { name: 'season-seen', hash: `#/season?${grown}`, size: desk, scheme: 'light', gardenFile },
  { name: 'season-seen-phone', hash: `#/season?${grown}`, size: phone, scheme: 'dark', gardenFile },
);

// the weather of that spring from an invented station in the garden, without power for some days
const springDays = 100;
const wave = (at, days, of) => of * Math.sin((2 * Math.PI * at) / days);
const meanC = (at) => 6.5 + at / 13 + wave(at, 23, 2.1) + wave(at, 9.3, 1.4) + wave(at, 3.7, 0.8);
const halfRangeC = (at) => 4.6 + wave(at, 6.1, 1.7) + wave(at, 2.9, 0.7);
const rainMm = (at) => Math.max(0, Math.round(10 * (wave(at, 6.1, -7) + wave(at, 17, 4) - 1)) / 10);
const hasPower = (at) => at < 47 || at > 51;
const spring = (of) =>
  Array.from({ length: springDays }, (_, at) => (hasPower(at) ? Math.round(10 * of(at)) / 10 : null));
const weathered = {
  ...gardenFile,
  weather: [
    {
      id: 'spring',
      placeId: 'bank',
      firstDate: '2027-03-01',
      tempMinC: spring((at) => meanC(at) - halfRangeC(at)),
      tempMaxC: spring((at) => meanC(at) + halfRangeC(at)),
      rainMm: spring(rainMm),
      solarMJ: spring(() => 0).map(() => null),
      forecastFrom: null,
      sources: [{ name: 'Wetterstation Garten.csv', from: '2027-03-01', to: '2027-06-08' }],
    },
  ],
};
const comma = (value) => value.toFixed(1).replace('.', ',');
const stationRows = Array.from({ length: springDays * 24 }, (_, hour) => {
  const at = Math.floor(hour / 24);
  const [year, month, day] = new Date(Date.UTC(2027, 2, 1, hour)).toISOString().split(/[-T]/);
  const outC = meanC(at) - halfRangeC(at) * Math.cos((2 * Math.PI * ((hour % 24) - 3)) / 24);
  const fallen = (rainMm(at) * (hour % 24)) / 23;
  return hasPower(at)
    ? [
        `${day}.${month}.${year} ${String(hour % 24).padStart(2, '0')}:00;${comma(outC)};20,5;${comma(fallen)}`,
      ]
    : [];
}).flat();
const station = {
  name: 'Wetterstation Garten.csv',
  mimeType: 'text/csv',
  // as such stations write it
  buffer: Buffer.from(
    `Zeit;Temperatur außen(°C);Temperatur innen(°C);Regen heute(mm)\r\n${stationRows.join('\r\n')}\r\n`,
    'latin1',
  ),
};
const came = `#/weather?${garden.replace('2027-03-01', '2027-06-10')}`;
pages.push(
  { name: 'weather', hash: came, size: desk, scheme: 'light', gardenFile: weathered },
  { name: 'weather-found', hash: came, size: phone, scheme: 'light', gives: station },
);

const program = findChromium();
if (!program) throw new Error('no Chromium: install one or name it in CHROMIUM_PATH');
await buildApp();
const { server, url } = await serve(appFolder);
const browser = await chromium.launch({
  executablePath: program,
  // letters as most screens show them, whichever Chromium it is
  args: ['--no-sandbox', '--disable-gpu', '--font-render-hinting=none'],
});
mkdirSync(target, { recursive: true });
for (const { name, hash, size, scheme, gardenFile: held, gives } of pages) {
  const context = await browser.newContext({
    viewport: size,
    colorScheme: scheme,
    locale: 'en-GB',
    serviceWorkers: 'block',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  if (held) {
    await page.goto(`${url}#/kept`);
    const buffer = Buffer.from(JSON.stringify(held));
    const file = { name: 'bank.neckfall.json', mimeType: 'application/json', buffer };
    await page.locator('input[type=file]').first().setInputFiles(file);
    await page.locator('.opened').waitFor();
  }
  await page.goto(url + hash);
  await page.locator('main :is(h1, [role=alert])').first().waitFor();
  // a map has a button to stop it until it is whole
  const unfinished = '[data-waiting], .atlas-progress button';
  await page.waitForFunction((waits) => document.querySelector(waits) === null, unfinished, {
    timeout: 600_000,
  });
  if (gives) {
    // the page goes to what was found
    await page.locator('input[type=file]').setInputFiles(gives);
    await page.locator('.found').waitFor();
  }
  await page.screenshot({ path: join(target, `${name}.png`) });
  await context.close();
}
await browser.close();
server.close();
