import type { Town } from '@neckfall/data';
import { useState } from 'preact/hooks';
import { goToPlace } from '../state/route.ts';
import { voice } from '../state/settings.ts';
import { CoordinatesField } from './CoordinatesField.tsx';
import { HereButton } from './HereButton.tsx';
import { Later } from './Later.tsx';
import { TownSearch } from './TownSearch.tsx';

type Props = { onDone?: () => void; autoFocus?: boolean };

const loadMap = () => import('./LandMap.tsx').then(({ LandMap }) => LandMap);

/** All ways to say where one grows: a town first, the others folded away. */
export function PlacePicker({ onDone = () => {}, autoFocus = false }: Props) {
  const { say } = voice.value;
  const [isMapWanted, wantMap] = useState(false);

  function takeTown({ latitudeDeg, longitudeDeg, name }: Town): void {
    goToPlace({ at: { latitudeDeg, longitudeDeg }, name, elevation: null });
    onDone();
  }
  function takePoint(at: { latitudeDeg: number; longitudeDeg: number }, name: string | null = null): void {
    goToPlace({ at, name, elevation: null });
    onDone();
  }

  return (
    <div>
      <TownSearch onTown={takeTown} autoFocus={autoFocus} />
      <details>
        <summary>{say('app.other-ways')}</summary>
        <HereButton onPoint={takePoint} />
        <CoordinatesField onPoint={takePoint} />
        <details onToggle={(event) => wantMap(event.currentTarget.open)}>
          <summary>{say('app.map')}</summary>
          {isMapWanted && <Later load={loadMap} own={{ onPoint: takePoint }} />}
        </details>
      </details>
    </div>
  );
}
