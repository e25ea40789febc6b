import { render } from 'preact';
import './look/colours.css';
import './look/base.css';
import './look/shell.css';
import './look/pages.css';
import './look/print.css';
import { followUpdates } from './offline/updates.ts';
import { Shell } from './shell/Shell.tsx';
import { followPlace } from './state/place.ts';
import { followAddress } from './state/route.ts';
import { followSettings } from './state/settings.ts';
import { followToday } from './state/today.ts';

followSettings();
followAddress();
followToday();
followPlace();
render(<Shell />, document.getElementById('app')!);
followUpdates();
