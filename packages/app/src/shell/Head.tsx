import { pagesInHead } from '../address/address.ts';
import { hrefTo, page } from '../state/route.ts';
import { voice } from '../state/settings.ts';

/** The name and the pages, in words. */
export function Head() {
  const { say } = voice.value;
  return (
    <header>
      <div class="head">
        <p class="name">{say('app.name')}</p>
        <nav aria-label={say('app.nav')}>
          <ul class="pages">
            {pagesInHead.map((name) => (
              <li key={name}>
                <a href={hrefTo(name)} aria-current={page.value === name ? 'page' : undefined}>
                  {say(`app.page.${name}`)}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </div>
      <div class="rings" />
    </header>
  );
}
