import { useEffect, useRef } from 'preact/hooks';
import { askedOfKitchen } from '../../garden/kitchen-of.ts';
import { gardenStanding } from '../../state/garden.ts';
import { go } from '../../state/route.ts';

/** Follows the kitchen of the garden when that is changed while the page stands: taken back, or in another tab. */
export function useGardenKitchen(): void {
  const kitchen = gardenStanding.value?.garden?.kitchen ?? null;
  const said = JSON.stringify(askedOfKitchen(kitchen));
  const isLooking = gardenStanding.value === null;
  const before = useRef<string | null>(null);
  useEffect(() => {
    if (isLooking) return;
    if (before.current !== null && before.current !== said) go(askedOfKitchen(kitchen), { replace: true });
    before.current = said;
  }, [said, isLooking]);
}
