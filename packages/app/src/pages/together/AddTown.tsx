import type { Town } from '@neckfall/data';
import { TownSearch } from '../../controls/TownSearch.tsx';
import { go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { mostLines, type PlaceInLink, writePlaces } from './together-address.ts';
import { isSame } from './use-comparison.ts';

type Props = { places: readonly PlaceInLink[]; tell: (told: string) => void };

/** Puts one more town at the end; a seventh, or one that is there, is refused in words. */
export function AddTown({ places, tell }: Props) {
  const { say } = voice.value;
  function add({ name, latitudeDeg, longitudeDeg }: Town): void {
    const place = { name, latitudeDeg, longitudeDeg };
    if (places.some((other) => isSame(other, place))) tell(say('app.together.twice', { name }));
    else if (places.length >= mostLines) tell(say('app.together.full'));
    else {
      go({ places: writePlaces([...places, place]) }, { replace: true });
      tell(say('app.together.added', { name }));
    }
  }
  return (
    <>
      <h3>{say('app.together.add')}</h3>
      <TownSearch onTown={add} />
    </>
  );
}
