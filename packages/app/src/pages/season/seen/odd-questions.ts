import { oddSentence } from '@neckfall/answers';
import { emptyGarden, type Observation, odd } from '@neckfall/engine';
import { withPlan } from '../../../garden/planting-of.ts';
import { planting, seen } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { planToSave } from '../keep-plan.ts';

/** What to ask about an entry before it is noted, beside what else is known of the crop; none where nothing is odd. */
export function oddQuestions(entry: Observation, ahead: SeasonAhead): string[] {
  const [asKept] = withPlan(emptyGarden(), null, planToSave(ahead)).garden.plantings;
  return odd(entry, planting.value ?? asKept, seen.value, today.value).map((found) =>
    oddSentence(found, voice.value),
  );
}
