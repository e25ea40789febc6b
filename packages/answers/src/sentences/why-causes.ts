import { type Cause, causeKinds, type SeenCause } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Colder soil holds seed up for weeks, °C (Harrington's table: 13 days at 10 °C, 31 at 5 °C). */
const seedbedC = 10;
/** Deepest that seed is sown, mm (Minnesota and Iowa extension: up to 13 and 19 mm). */
const deepestMm = 15;

/** A clause to head a line with, without its full stop. */
export function causeLabel(cause: Cause, { say }: Speaker): string {
  return say(`why.cause.${cause}`);
}

/** What to do otherwise next year. */
export function causeAdvice(cause: Cause, { say, quantity }: Speaker): string {
  return say(`why.advice.${cause}`, {
    temp: quantity('temperature', seedbedC),
    depth: quantity('bulbLength', deepestMm),
  });
}

/** What to look at to know whether it was this; null of a cause that running the season again tells. */
export function causeLook(cause: Cause, { say }: Speaker): string | null {
  return isSeen(cause) ? say(`why.look.${cause}`) : null;
}

function isSeen(cause: Cause): cause is SeenCause {
  return causeKinds[cause] === 'seen';
}
