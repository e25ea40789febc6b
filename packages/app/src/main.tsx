import { render } from 'preact';
import { languagesKnown } from './turns/languages-known.ts';
import './look/colours.css';
import './look/fonts.css';
import './look/base.css';
import './look/tables.css';
import './look/shell.css';
import './look/pages.css';
import './look/print.css';
import { followUpdates } from './offline/updates.ts';
import { Shell } from './shell/Shell.tsx';
import { followGarden } from './state/garden.ts';
import { followPlace } from './state/place.ts';
import { followAddress } from './state/route.ts';
import { followSettings } from './state/settings.ts';
import { followToday } from './state/today.ts';
import { nextTurn } from './turns/next-turn.ts';

const languageLoaded = followSettings();
followAddress();
followToday();
followPlace();
// reading the code was one task; each of these is another
Promise.all([languagesKnown, languageLoaded]).then(() =>
  nextTurn(() => render(<Shell />, document.getElementById('app')!)),
);
nextTurn(followUpdates);
nextTurn(() => void followGarden());
