import { noOnion } from '../address/no-onion.ts';
import { askedOfOwn, canGrow } from '../garden/own-onion.ts';
import { ownOnions } from './garden.ts';
import { onion } from './onion.ts';
import { go } from './route.ts';
import { voice } from './settings.ts';

/** An onion of the grower's own as a value of a choice field. */
export type OwnChoice = `own ${string}`;

/** Those of their own that can be worked out, for a field in which one onion is chosen. */
export function ownChoices(): { value: OwnChoice; label: string }[] {
  const { say } = voice.value;
  return ownOnions.value
    .filter((own) => canGrow(own) || own === onion.value.own)
    .map((own) => ({ value: `own ${own.id}`, label: say('app.garden.onion.choice', { name: own.name }) }));
}

/** The one of them that the page shows; null for any other onion. */
export function ownChosen(): OwnChoice | null {
  const { own } = onion.value;
  return own && `own ${own.id}`;
}

export function isOwnChoice(value: string): value is OwnChoice {
  return value.startsWith('own ');
}

/** Shows that onion, with what else is to be in the address. */
export function goToOwn(value: OwnChoice, changes: Parameters<typeof go>[0] = {}): void {
  const own = ownOnions.value.find(({ id }) => value === `own ${id}`);
  if (own) go({ ...changes, ...noOnion, ...askedOfOwn(own) });
}
