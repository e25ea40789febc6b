import { countryOf, type PlaceProblem, placeLabel } from '@neckfall/answers';
import { landWarmingSinceNormalsC, type Plan } from '@neckfall/engine';
import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Asked } from '../address/address-form.ts';
import { askGround } from '../ask/ask.ts';
import type { Located } from '../worker/locate.ts';
import type { SiteAsked } from '../worker/site.ts';
import { startsHeld } from './held.ts';
import { asked } from './route.ts';
import { voice } from './settings.ts';

/** The place of the address, as far as it is known. */
export type PlaceState =
  | { state: 'none' }
  | { state: 'looking' }
  | { state: 'found'; place: Located }
  | { state: 'refused'; problem: PlaceProblem }
  | { state: 'failed'; message: string };

/** As on the command line, so that both give the same numbers. */
const years = 30;
const seed = 1;

const known = signal<PlaceState>({ state: 'none' });
export const placeState: ReadonlySignal<PlaceState> = computed(() => known.value);

/** The place found; null while there is none. */
export const place: ReadonlySignal<Located | null> = computed(() =>
  known.value.state === 'found' ? known.value.place : null,
);

const ownName = computed(() => (place.value && !place.value.town ? asked.value.name : null));
const label = computed(() => (place.value ? placeLabel(place.value, voice.value) : ''));

/** What the place is called in sentences: a town with its country, the reader's own name, or the point. */
export const placeName: ReadonlySignal<string> = computed(() => ownName.value ?? label.value);

/** The same where it must not be mistaken: a name of the reader's own with the point it stands for. */
export const placeInFull: ReadonlySignal<string> = computed(() =>
  ownName.value === null
    ? label.value
    : voice.value.say('app.place.own', { name: ownName.value, label: label.value }),
);

/** ISO alpha-2 code of its country, for what shops have there; null where it is not sure. */
export const country: ReadonlySignal<string | null> = computed(() =>
  place.value ? countryOf(place.value) : null,
);

/** The ground to try plans on, for {@link ask}; null while there is no place. */
export const site: ReadonlySignal<SiteAsked | null> = computed(() =>
  place.value ? siteOn(place.value) : null,
);

/** The ground of a place, be it the one of the address or another that may be chosen next. */
export function siteOn({ climate, practice }: Located): SiteAsked {
  return {
    climate,
    warmerC: landWarmingSinceNormalsC,
    frostHollow: asked.value.hollow === true,
    years,
    seed,
    practice,
    atHand: startsHeld.value,
  };
}

/** A key of {@link site} that changes when an answer does. */
export const siteKey: ReadonlySignal<string | null> = computed(() => {
  const { value } = place;
  if (!value) return null;
  const { latitudeDeg, longitudeDeg, elevationM } = value;
  return [latitudeDeg, longitudeDeg, elevationM, asked.value.hollow, ...startsHeld.value].join(' ');
});

type Practice = Partial<Pick<Plan, 'sunHours' | 'cover' | 'water' | 'soil'>>;

/** How things are grown here, where it is otherwise than usual. */
export const practice: ReadonlySignal<Practice> = computed(() => practiceOf(asked.value));

export function practiceOf({ sun, cover, water, soil }: Asked): Practice {
  return {
    ...(sun === null ? {} : { sunHours: sun }),
    ...(cover === null ? {} : { cover }),
    ...(water === null ? {} : { water }),
    ...(soil === null ? {} : { soil }),
  };
}

const whereAsked = computed(() => {
  const { at, name, elevation } = asked.value;
  return at && JSON.stringify({ ...at, name, elevationM: elevation });
});

function pointOf(wanted: string): string {
  const { latitudeDeg, longitudeDeg, name } = JSON.parse(wanted);
  return JSON.stringify([latitudeDeg, longitudeDeg, name]);
}

/** Looks for the place whenever the address names another. */
export function followPlace(): void {
  let lastPoint: string | null = null;
  effect(() => {
    const wanted = whereAsked.value;
    if (wanted === null) {
      lastPoint = null;
      known.value = { state: 'none' };
      return;
    }
    // another height of the same ground changes the answer, not the page one is on
    if (pointOf(wanted) !== lastPoint) known.value = { state: 'looking' };
    lastPoint = pointOf(wanted);
    void askGround('locate', JSON.parse(wanted)).then((reply) => {
      if (whereAsked.peek() !== wanted || reply.state === 'overtaken') return;
      known.value =
        reply.state === 'failed'
          ? reply
          : 'problem' in reply.answer
            ? { state: 'refused', problem: reply.answer }
            : { state: 'found', place: reply.answer };
    });
  });
}
