import { type PlaceProblem, townLabel } from '@neckfall/answers';
import { coverageKm } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Why there is no answer for a place. */
export function problemSentence(problem: PlaceProblem, speaker: Speaker): string {
  const { say, quantity } = speaker;
  switch (problem.problem) {
    case 'beyond-latitudes':
      return say('app.place.beyond-latitudes');
    case 'at-sea':
      return say('app.place.at-sea', {
        town: townLabel(problem.near.town, speaker),
        distance: quantity('distance', problem.near.distanceKm),
      });
    case 'beyond-nodes':
      return say('app.place.beyond-nodes', {
        distance: quantity('distance', problem.nearestNodeKm),
        limit: quantity('distance', coverageKm),
      });
  }
}
