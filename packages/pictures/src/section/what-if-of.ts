import type { GrownSo, WhatIf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import { discMm, type OnionLook } from './onion.ts';
import { type DrawnSeason, formWords, onionOf, sizeText, whole } from './section-of.ts';
import type { CaptionedOnion, SectionRowProps } from './section-row.tsx';

/** Leaves that have withered by the time bulbs begin, and are its skins (common practice, no source). */
const witheredLeaves = 2;
/** From this share of the plants on, flowers are told. */
const someBolted = 0.05;

/** The onion of a season with a cause at work beside that of the same season without it. */
export function whatIfSectionOf(
  { atWork, grown }: WhatIf,
  look: OnionLook,
  speaker: Speaker,
): Omit<SectionRowProps, 'width'> {
  const { say } = speaker;
  const onions = [
    captioned(say('app.why.with'), atWork, look, speaker),
    captioned(say('app.why.without'), grown, look, speaker),
  ];
  const [withIt, without] = onions.map(({ lines }) => lines.slice(1).join(', '));
  return {
    summary: say('app.why.picture', { with: withIt, without }),
    onions,
    discText: say('picture.disc', { across: whole(speaker.quantity('bulbLength', discMm)) }),
  };
}

/** The same as a table: each crop and what is said of it. */
export function whatIfTableOf({ onions }: Pick<SectionRowProps, 'onions'>, { say }: Speaker): DataTableProps {
  return {
    caption: say('picture.section.table'),
    head: [say('picture.section.onion'), say('app.why.picture.comes')],
    rows: onions.map(({ lines: [name, ...said] }) => [name, said.join(', ')]),
  };
}

function captioned(name: string, season: GrownSo, look: OnionLook, speaker: Speaker): CaptionedOnion {
  const { say, plants } = speaker;
  const onion = onionOf(drawnOf(season), look);
  const flowers = season.boltedShare >= someBolted;
  // a bulb run to flower says so by how many have
  const words = flowers && onion.form === 'bolted' ? undefined : formWords[onion.form];
  const lines = [
    name,
    sizeText(onion, speaker),
    words ? say(words) : null,
    flowers ? say('picture.row.bolts', { plants: plants(season.boltedShare) }) : null,
  ];
  return { onion, lines: lines.filter((line) => line !== null) };
}

function drawnOf({ plan, outcome, bulbDiameterMm, leavesAtOnset }: GrownSo): DrawnSeason {
  const inAll = (value: number) => ({ p10: value, p50: value, p90: value });
  return {
    plan,
    outcome,
    bulbDiameterMm,
    leavesMadeAtOnset: leavesAtOnset === null ? null : inAll(leavesAtOnset),
    leavesGreenAtOnset: leavesAtOnset === null ? null : inAll(leavesAtOnset - witheredLeaves),
  };
}
