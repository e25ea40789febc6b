import type { Plugin } from 'vite';
import { connectSources, weatherHostOf } from '../../tools/setup/weather-host.mjs';

const strict = connectSources(null);

/** Lets a build ask the weather service it was made for, and no other; without one nothing changes. */
export function withWeatherHost(): Plugin {
  const host = weatherHostOf();
  return {
    name: 'with-weather-host',
    config: () => ({ define: { weatherHostOfBuild: JSON.stringify(host) } }),
    transformIndexHtml(html) {
      if (!html.includes(strict)) throw new Error(`index.html: no ${strict} found`);
      return html.replace(strict, connectSources(host));
    },
  };
}
