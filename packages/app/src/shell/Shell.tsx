import { loadLater } from '@neckfall/words';
import type { ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { isOfPlace, type PageName } from '../address/address.ts';
import { Later } from '../controls/Later.tsx';
import { Where } from '../pages/where/Where.tsx';
import { placeName, siteKey } from '../state/place.ts';
import { page } from '../state/route.ts';
import { voice } from '../state/settings.ts';
import { Foot } from './Foot.tsx';
import { Head } from './Head.tsx';
import { NeedsPlace } from './NeedsPlace.tsx';
import { Notices } from './Notices.tsx';
import { PlaceBar } from './PlaceBar.tsx';

/** Pages other than the first are fetched with their words when first opened, or by the service worker before. */
const later: Record<Exclude<PageName, 'where'>, () => Promise<ComponentType>> = {
  which: () => import('../pages/which/Which.tsx').then(({ Which }) => Which),
  when: () => import('../pages/when/When.tsx').then(({ When }) => When),
  season: () => import('../pages/season/Season.tsx').then(({ Season }) => Season),
  keep: () => import('../pages/keep/Keep.tsx').then(({ Keep }) => Keep),
  why: () => import('../pages/why/Why.tsx').then(({ Why }) => Why),
  teach: () => import('../pages/teach/Teach.tsx').then(({ Teach }) => Teach),
  map: () => import('../pages/map/MapPage.tsx').then(({ MapPage }) => MapPage),
  together: () => import('../pages/together/Together.tsx').then(({ Together }) => Together),
  latitudes: () => import('../pages/latitudes/Latitudes.tsx').then(({ Latitudes }) => Latitudes),
  sheet: () => import('../pages/sheet/SheetPage.tsx').then(({ SheetPage }) => SheetPage),
  questions: () => import('../pages/questions/Questions.tsx').then(({ Questions }) => Questions),
  weather: () => import('../pages/weather/Weather.tsx').then(({ Weather }) => Weather),
  about: () => import('../pages/about/About.tsx').then(({ About }) => About),
  kept: () => import('../pages/garden/GardenPage.tsx').then(({ GardenPage }) => GardenPage),
};

export function Shell() {
  const { say } = voice.value;
  const main = useRef<HTMLElement>(null);
  const current = page.value;
  const isFirst = useRef(true);

  useEffect(() => {
    const name = say(`app.page.${current}`);
    document.title = placeName.value
      ? say('app.title', { page: name, place: placeName.value })
      : say('app.title-bare', { page: name });
  }, [current, placeName.value, say]);

  // when another page is opened, reading begins at its head
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return;
    }
    scrollTo(0, 0);
    main.current?.focus();
  }, [current]);

  // the field in which a place was chosen is gone: go on from the answer
  useEffect(() => {
    if (siteKey.value && document.activeElement === document.body && !isFirst.current) {
      main.current?.focus({ preventScroll: true });
    }
  }, [siteKey.value]);

  return (
    <>
      <button type="button" class="skip" onClick={() => main.current?.focus()}>
        {say('app.skip')}
      </button>
      <Head />
      <PlaceBar />
      <Notices />
      <main ref={main} id="answer" tabIndex={-1}>
        {current === 'where' ? (
          <NeedsPlace>
            <Where />
          </NeedsPlace>
        ) : isOfPlace(current) ? (
          <NeedsPlace>
            <LaterPage name={current} />
          </NeedsPlace>
        ) : (
          <LaterPage name={current} />
        )}
      </main>
      <Foot />
    </>
  );
}

function LaterPage({ name }: { name: keyof typeof later }) {
  return <Later key={name} load={() => withWords(later[name])} own={{}} />;
}

async function withWords(load: () => Promise<ComponentType>): Promise<ComponentType> {
  const [Page] = await Promise.all([load(), loadLater()]);
  return Page;
}
