import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

const lyon = '#/where?at=45.748,4.847&name=Lyon&today=2027-05-03';

describe.skipIf(!hasChromium)('the app', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('shows what a link says as text, never as markup or script', async () => {
    const nasty = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const keys = ['name', 'cultivar', 'have', 'class', 'date', 'sun', 'at', 'soil', 'colour'];
    const params = keys.map((key) => `${key}=${encodeURIComponent(nasty)}`).join('&');
    const page = await app.at(`#/where?at=52.08,-3.13&${params.replace(/&at=[^&]*/, '')}`);
    expect(await page.locator('h1').textContent()).toContain(nasty);
    expect(await page.locator('.notice').textContent()).toContain(nasty.slice(0, 80));
    expect(await page.locator('main img, main script, .notice img, .place img').count()).toBe(0);
    expect(await page.title()).toContain('Where: <img');
  });

  test('names the values of a link that it leaves out', async () => {
    const page = await app.at(`${lyon}&sun=lots&date=2027-02-30`);
    const notice = await page.locator('.notice').textContent();
    expect(notice).toContain('sun as “lots”');
    expect(notice).toContain('date as “2027-02-30”');
  });

  test('lets no inline script run and frames nothing', async () => {
    const response = await fetch(app.url);
    const policy = response.headers.get('content-security-policy') ?? '';
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain('unsafe');
    expect(policy).toContain("frame-ancestors 'none'");
    const page = await app.page('', {
      before:
        'addEventListener("securitypolicyviolation", (e) => { (window.held ??= []).push(e.effectiveDirective) })',
    });
    const held = await page.evaluate(async () => {
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      document.body.insertAdjacentHTML('beforeend', '<p style="color: red">x</p>');
      await new Promise((resolve) => setTimeout(resolve, 0));
      const { ran, held } = window as unknown as { ran?: boolean; held?: string[] };
      return { ran: ran ?? false, held: held ?? [] };
    });
    expect(held.ran).toBe(false);
    expect(held.held).toEqual(expect.arrayContaining(['script-src-elem', 'style-src-attr']));
    await page.close();
  });

  test('works where the browser refuses to keep anything, and says so', async () => {
    const before = `
      for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches'])
        Object.defineProperty(window, name, { get() { throw new DOMException('refused', 'SecurityError'); } });`;
    const page = await app.page(lyon, { before });
    expect(await page.locator('h1').textContent()).toContain('Lyon, France');
    expect(await page.locator('.foot').textContent()).toContain('keeps nothing for us');
    await page.getByLabel('°F, inches, ounces').check();
    expect(await page.locator('main').textContent()).toContain('°F');
    await page.close();
  });

  test('goes back and forward through places and pages', async () => {
    const page = await app.at(lyon);
    await page.getByRole('link', { name: 'About' }).click();
    await page.locator('h1', { hasText: 'Which onion' }).waitFor();
    await page.getByRole('button', { name: 'Another place' }).click();
    await page.getByRole('combobox').fill('Oslo');
    await page.getByRole('option').first().click();
    await page.locator('h1', { hasText: 'Oslo' }).waitFor();
    await page.goBack();
    await page.locator('h1', { hasText: 'Which onion' }).waitFor();
    await page.goBack();
    await page.locator('h1', { hasText: 'Lyon' }).waitFor();
    await page.goForward();
    await page.goForward();
    await page.locator('h1.answer', { hasText: 'Oslo' }).waitFor();
    expect(await page.title()).toBe('Where: Oslo, Norway – Neckfall');
  });

  test('opens again where one left, without the day that a link named', async () => {
    const context = await app.context();
    const page = await app.page(lyon, { context });
    await page.close();
    const again = await app.page('', { context });
    await again.locator('h1', { hasText: 'Lyon' }).waitFor();
    expect(again.url()).not.toContain('today');
    await context.close();
  });

  test('forgets the place and the settings when asked to', async () => {
    const context = await app.context();
    const page = await app.page(lyon, { context });
    await page.getByLabel('dark', { exact: true }).check();
    await page.getByRole('link', { name: 'About' }).click();
    await page.getByRole('button', { name: 'Forget the place' }).click();
    await page.getByRole('combobox').waitFor();
    expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([]);
    const again = await app.page('', { context });
    expect(await again.getByRole('combobox').count()).toBe(1);
    await context.close();
  });

  test('copies a link that opens to the same answer', async () => {
    const page = await app.at(`${lyon}&sun=7`);
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: app.url });
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await page.getByText('Copied.').waitFor();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toBe(`${app.url}#/where?at=45.748,4.847&name=Lyon&sun=7`);
    await page.context().clearPermissions();
  });

  test('shows the link where it may not be copied', async () => {
    const page = await app.page(lyon, {
      before: 'Object.defineProperty(navigator, "clipboard", { value: undefined })',
    });
    await page.getByRole('button', { name: 'Copy a link' }).click();
    expect(await page.getByLabel('Copy this link by hand').inputValue()).toContain('name=Lyon');
    await page.close();
  });

  test('uses the position of the device when asked to, rounded, and says what to do when refused', async () => {
    const context = await app.context();
    await context.setGeolocation({ latitude: 52.083_21, longitude: -3.131_99 });
    const page = await app.page('', { context });
    await page.getByText('Other ways to say where').click();
    await page.getByRole('button', { name: 'Use where I am' }).click();
    await page.getByText('did not give the position').waitFor();
    await context.grantPermissions(['geolocation'], { origin: app.url });
    await page.getByRole('button', { name: 'Use where I am' }).click();
    await page.locator('h1.answer').waitFor();
    expect(page.url()).toContain('at=52.08,-3.13');
    await context.close();
  });

  test('follows a change of units made in another tab', async () => {
    const context = await app.context();
    const one = await app.page(lyon, { context });
    const other = await app.page(lyon, { context });
    await one.getByLabel('°F, inches, ounces').check();
    await other.waitForFunction(() => document.querySelector('main')?.textContent?.includes('°F'));
    expect(await other.getByLabel('°F, inches, ounces').isChecked()).toBe(true);
    await context.close();
  });

  test('follows the look one chooses, against that of the device', async () => {
    const page = await app.at(lyon, { dark: true });
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const night = await ground();
    await page.getByLabel('light', { exact: true }).check();
    expect(await ground()).not.toBe(night);
    await page.getByLabel('as the device has it').check();
    expect(await ground()).toBe(night);
  });

  test('says what did not arrive, and answers once it does', async () => {
    const context = await app.context();
    let isCut = true;
    await context.route(/climate/, (route) => (isCut ? route.abort() : route.continue()));
    const page = await app.page(lyon, { context });
    expect(await page.getByRole('alert').textContent()).toContain('did not arrive');
    isCut = false;
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.locator('h1.answer').waitFor();
    await ready(page);
    await context.close();
  });

  test('today moves on at midnight in a page left open, where the address names no day', async () => {
    const context = await app.context();
    const page = await context.newPage();
    await page.clock.install({ time: new Date(2027, 5, 20, 23, 50) });
    await page.goto(`${app.url}#/when?at=52.08,-3.13&name=Pencarreg+Bank`);
    await ready(page);
    const answer = page.locator('main');
    await answer.getByText('20 June').first().waitFor();
    await page.clock.fastForward('20:00');
    await answer.getByText('21 June').first().waitFor();
    await page.evaluate(() => {
      location.hash += '&today=2027-05-03';
    });
    await answer.getByText('3 May').first().waitFor();
    await page.clock.fastForward('24:00:00');
    await ready(page);
    expect(await answer.textContent()).toContain('3 May');
    await context.close();
  });
});
