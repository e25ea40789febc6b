import { isBareGround } from '@neckfall/answers';
import type { GridPoint } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { ReadonlySignal } from '@preact/signals';
import { voice } from '../../state/settings.ts';
import { type leadsOf, mapYears } from './atlas-held.ts';

type Leads = ReturnType<typeof leadsOf>;
type Props = { hovered: ReadonlySignal<GridPoint | null>; stepDeg: number; leads: Leads };

/** What the map has under the pointer, in a line: of the grid's point whose field it lies in. */
export function PointLine({ hovered, stepDeg, leads }: Props) {
  return <p class="atlas-line">{lineOf(hovered.value, stepDeg, leads, voice.value)}</p>;
}

function lineOf(
  point: GridPoint | null,
  stepDeg: number,
  { leadAt }: Leads,
  { say, day, years, quantity }: Speaker,
): string {
  if (point === null) return say('app.atlas.line.none');
  const onGrid = (degrees: number) => Math.round(degrees / stepDeg) * stepDeg;
  const longitude = onGrid(point.longitudeDeg);
  const lead = leadAt({
    latitudeDeg: onGrid(point.latitudeDeg),
    longitudeDeg: longitude >= 180 ? longitude - 360 : longitude,
  });
  if (!lead) return say('app.atlas.line.unknown');
  const { entry } = lead;
  if (isBareGround(entry)) return say('app.atlas.line.bare');
  return say('app.atlas.line', {
    type: say(`type-head.${entry.type}`),
    start: say(`start.${entry.start}`),
    years: years(entry.goodShare, mapYears),
    startDay: day(entry.startDay),
    tops: entry.neckFallDay === null ? say('never') : day(entry.neckFallDay),
    size: entry.bulbDiameterMm === null ? say('none') : quantity('bulbLength', entry.bulbDiameterMm),
  });
}
