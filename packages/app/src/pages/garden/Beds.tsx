import type { Garden, GardenBed, GardenPlace } from '@neckfall/engine';
import { shown } from '@neckfall/words';
import { useRef, useState } from 'preact/hooks';
import {
  type BedSaid,
  nothingSaid,
  withBed,
  withBedChanged,
  withBedHere,
  withoutBed,
} from '../../garden/beds.ts';
import { changeGarden } from '../../state/garden.ts';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { BedForm } from './BedForm.tsx';
import { bedInWords } from './bed-words.ts';

type Props = {
  garden: Garden | null;
  beds: readonly GardenBed[];
  /** Null: that of the address, which the garden has not; lost: none that the garden has, where no bed is made. */
  place: GardenPlace | 'lost' | null;
};

/** The beds of a place, and the ways to make, change and remove them. */
export function Beds({ garden, beds, place }: Props) {
  const { say } = voice.value;
  const head = useRef<HTMLHeadingElement>(null);
  /** The bed that is being changed, or a new one. */
  const [open, setOpen] = useState<string | 'new' | null>(null);

  // the form or the button is gone: go on from the list
  function close(): void {
    setOpen(null);
    head.current?.focus();
  }

  async function make(said: BedSaid): Promise<void> {
    const name = asked.value.name ?? placeName.value;
    const isDone = await changeGarden({ code: 'bed-added', name: said.name }, (now) =>
      place && place !== 'lost' && now
        ? withBed(now, said, place.id)
        : withBedHere(now, said, asked.value, name),
    );
    if (isDone) close();
  }

  async function change(id: string, said: BedSaid): Promise<void> {
    const isDone = await changeGarden(
      { code: 'bed-changed', name: said.name },
      (now) => now && withBedChanged(now, id, said),
    );
    if (isDone) close();
  }

  async function remove({ id, name }: GardenBed): Promise<void> {
    await changeGarden({ code: 'bed-removed', name }, (now) => now && withoutBed(now, id));
    close();
  }

  return (
    <>
      <h3 ref={head} tabIndex={-1}>
        {say('app.bed')}
      </h3>
      {beds.length > 0 && (
        <ul>
          {beds.map((bed) =>
            open === bed.id ? (
              <li key={bed.id}>
                <BedForm before={bed} onKeep={(said) => change(bed.id, said)} onLeave={close} />
              </li>
            ) : (
              <li key={bed.id}>
                <strong>{shown(bed.name)}</strong> <span>{garden && bedInWords(bed, garden)}</span>{' '}
                <button
                  type="button"
                  class="plain"
                  aria-label={say('app.bed.change-of', { name: bed.name })}
                  onClick={() => setOpen(bed.id)}
                >
                  {say('app.bed.change')}
                </button>{' '}
                <button
                  type="button"
                  class="plain"
                  aria-label={say('app.bed.remove-of', { name: bed.name })}
                  onClick={() => void remove(bed)}
                >
                  {say('app.garden.plan.remove')}
                </button>
              </li>
            ),
          )}
        </ul>
      )}
      {open === 'new' && <BedForm before={nothingSaid} onKeep={make} onLeave={close} />}
      {open !== 'new' && place !== 'lost' && (
        <p>
          <button type="button" onClick={() => setOpen('new')}>
            {say('app.bed.make', { place: place?.name ?? asked.value.name ?? placeName.value })}
          </button>
        </p>
      )}
    </>
  );
}
