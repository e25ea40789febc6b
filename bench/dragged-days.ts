import type { App } from '../test/app/open-app.ts';

const when = '#/when?at=45.748,4.847&name=Lyon&class=long&start=sets&date=2027-02-01&today=2027-05-03';
const days = 60;

/** Phones are taken as this much slower than this machine. */
export const phoneSlowdown = 4;

export type DraggedDay = {
  /** From the start moved to the season of the new day painted, ms. */
  paintedMs: number;
  /** Longest that the page was busy at a stretch, ms; 0 where never over 50. */
  longestTaskMs: number;
};

/** A start dragged over the year of the When page on a phone's screen: each day, the season must follow. */
export async function draggedDays(app: App, slowdown: number): Promise<DraggedDay[]> {
  const page = await app.page(when, { width: 360 });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  const found = await page.evaluate(async (count) => {
    const slider = document.querySelector<HTMLInputElement>('.start-slider input');
    const season = document.querySelector('.season-from');
    if (!slider || !season) throw new Error('no start to drag');
    let longest = 0;
    const observer = new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longest = Math.max(longest, duration);
    });
    observer.observe({ entryTypes: ['longtask'] });
    const heading = season.querySelector('h2');
    const first = slider.valueAsNumber;
    const measured: DraggedDay[] = [];
    for (let day = 1; day <= count; day++) {
      const before = heading?.textContent;
      longest = 0;
      const from = performance.now();
      slider.value = String(first + day);
      slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
      await new Promise<void>((resolve) => {
        const changes = new MutationObserver(() => {
          if (heading?.textContent === before) return;
          changes.disconnect();
          resolve();
        });
        changes.observe(season, { subtree: true, childList: true, characterData: true });
      });
      // a message sent in a frame is met after that frame is painted
      await new Promise<void>((resolve) => {
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve();
          port2.postMessage(null);
        });
      });
      const paintedMs = performance.now() - from;
      await new Promise((resolve) => setTimeout(resolve, 20));
      measured.push({ paintedMs, longestTaskMs: longest });
    }
    return measured;
  }, days);
  await page.close();
  return found;
}
