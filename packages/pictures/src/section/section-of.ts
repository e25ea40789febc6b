import {
  defaultPlantValues,
  leafAreaTotals,
  type SeasonSummary,
  type Spread,
  type Verdict,
} from '@neckfall/engine';
import { type MessageKey, type Speaker, shown } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import { discMm, type Onion, type OnionForm, type OnionLook, type OnionShape } from './onion.ts';
import type { CaptionedOnion, SectionRowProps } from './section-row.tsx';

/** The picture's numbers without its width. */
export type SectionAnswer = { picture: Omit<SectionRowProps, 'width'>; table: DataTableProps };

const forms: Readonly<Record<Verdict, OnionForm>> = {
  good: 'bulb',
  small: 'bulb',
  bolts: 'bolted',
  'not-ripe': 'thick-neck',
  'no-bulb': 'green',
  'winter-killed': 'lost',
};

export const formWords: Readonly<Partial<Record<OnionForm, MessageKey>>> = {
  'thick-neck': 'picture.thick-neck',
  bolted: 'picture.bolted',
  green: 'picture.green',
  lost: 'picture.lost',
};

/** Stem of a plant without a bulb, mm across (common practice, no source). */
const stemMm = 14;
/** Dry skins beyond these fall off in the hand (common practice, no source). */
const mostSkins = 3;
const leastRings = 3;

/** As much of a season as is drawn of its onion. */
export type DrawnSeason = Pick<
  SeasonSummary,
  'plan' | 'outcome' | 'bulbDiameterMm' | 'leavesMadeAtOnset' | 'leavesGreenAtOnset'
>;

/** What a plan's plants come to, as an onion to be drawn; `at` picks a poor, the middle or a good year. */
export function onionOf(summary: DrawnSeason, look: OnionLook, at: keyof Spread = 'p50'): Onion {
  const across = summary.bulbDiameterMm?.[at] ?? 0;
  const form = forms[summary.outcome];
  const { ringLeaves, skins } = layersOf(summary, at);
  // a plan that mostly bolts or is lost may still have no bulb measured
  const hasBulb = across > 0;
  return {
    ...look,
    form: hasBulb || form === 'lost' ? form : 'green',
    acrossMm: hasBulb && form !== 'green' ? across : stemMm,
    ringLeaves,
    skins,
  };
}

/**
 * Leaves standing when bulbs start become rings, the oldest outside; those withered before are the dry skins. Each
 * ring is as thick as its leaf is large (the engine's leaf sizes).
 */
function layersOf({ plan, leavesMadeAtOnset, leavesGreenAtOnset }: DrawnSeason, at: keyof Spread) {
  const made = Math.max(leastRings, Math.round(leavesMadeAtOnset?.[at] ?? leastRings));
  const rings = Math.min(made, Math.max(leastRings, Math.round(leavesGreenAtOnset?.[at] ?? leastRings)));
  const { leafSizeScale, setLeafSizeScale } = defaultPlantValues.growth;
  const totals = leafAreaTotals(1, plan.start === 'sets' ? setLeafSizeScale : leafSizeScale);
  const ringLeaves = Array.from({ length: rings }, (_, i) => {
    const leaf = made - rings + 1 + i;
    return totals[leaf] - totals[leaf - 1];
  });
  return { ringLeaves, skins: Math.min(mostSkins, Math.max(1, made - rings)) };
}

/** Harvest of one plan: a poor, the middle and a good year beside a disc of a coin's size. */
export function sectionOf(summary: SeasonSummary, look: OnionLook, speaker: Speaker): SectionAnswer {
  const { say, quantity, quantityRange } = speaker;
  const form = onionOf(summary, look).form;
  const across = form !== 'green' && form !== 'lost' ? summary.bulbDiameterMm : null;
  const years: [keyof Spread, MessageKey][] = across
    ? [
        ['p10', 'picture.in-poor-year'],
        ['p50', 'picture.in-middle-year'],
        ['p90', 'picture.in-good-year'],
      ]
    : [['p50', formWords[form] ?? 'picture.in-middle-year']];
  const onions = years.map(([at, words]): CaptionedOnion => {
    const onion = onionOf(summary, look, at);
    const size = sizeText(onion, speaker);
    const what = formWords[onion.form];
    const lines = [size, say(words), what && what !== words ? say(what) : null];
    return { onion, lines: lines.filter((line) => line !== null) };
  });
  const middle = onionOf(summary, look);
  const summaryText = [
    across
      ? say('picture.section.sizes', {
          middle: quantity('bulbLength', across.p50),
          range: quantityRange('bulbLength', across.p10, across.p90),
        })
      : say(formWords[form] ?? 'picture.in-middle-year'),
    across ? say('picture.section.rings', { rings: middle.ringLeaves.length, skins: middle.skins }) : null,
  ];
  return {
    picture: {
      summary: summaryText.filter((sentence) => sentence !== null).join(' '),
      onions,
      discText: say('picture.disc', { across: whole(quantity('bulbLength', discMm)) }),
    },
    table: onionTable(onions, speaker),
  };
}

/** One plan of several, under the name a reader knows it by. */
export type NamedSummary = { name: string; summary: SeasonSummary; look: OnionLook };

/** Plans side by side, two or many: the middle year of each, and in words its range and how often it goes well. */
export function sectionRowOf(entries: readonly NamedSummary[], speaker: Speaker): SectionAnswer {
  const { say } = speaker;
  const onions = entries.map(({ name, summary, look }): CaptionedOnion => {
    const onion = onionOf(summary, look);
    const what = formWords[onion.form];
    const bolted = summary.boltedPlantsShare?.p50 ?? 0;
    const lines = [
      shown(name),
      rangeText(onion, summary, speaker),
      what ? say(what) : null,
      say('picture.row.good', { years: speaker.years(summary.seasonShares.good, summary.years) }),
      bolted >= 0.05 ? say('picture.row.bolts', { plants: speaker.plants(bolted) }) : null,
    ];
    return { onion, lines: lines.filter((line) => line !== null) };
  });
  const described = onions.map(({ onion, lines }) =>
    onion.form === 'green' || onion.form === 'lost'
      ? say('picture.row.one-without', {
          name: lines[0],
          form: say(formWords[onion.form] ?? 'picture.green'),
        })
      : say('picture.row.one', { name: lines[0], size: sizeText(onion, speaker) ?? '' }),
  );
  const table = onionTable(onions, speaker);
  return {
    picture: {
      summary: say('picture.row.summary', { onions: speaker.all(described) }),
      onions,
      discText: say('picture.disc', { across: whole(speaker.quantity('bulbLength', discMm)) }),
    },
    table: {
      ...table,
      head: [...table.head, say('picture.row.column-good'), say('picture.row.column-bolts')],
      rows: table.rows.map((row, i) => [
        onions[i].lines[0],
        ...row.slice(1),
        speaker.years(entries[i].summary.seasonShares.good, entries[i].summary.years),
        speaker.plants(entries[i].summary.boltedPlantsShare?.p50 ?? 0),
      ]),
    },
  };
}

/** A number and its unit are not torn apart at the end of a line. */
export function whole(quantity: string): string {
  return quantity.replaceAll(' ', '\u00a0');
}

export function sizeText({ form, shape, acrossMm }: Onion, { say, quantity }: Speaker): string | null {
  return form === 'green' || form === 'lost'
    ? null
    : say(acrossKey(shape), { across: whole(quantity('bulbLength', acrossMm)) });
}

/** Sizes are those of a globe of the same mass: said where the onion is drawn another width. */
function acrossKey(shape: OnionShape): 'picture.across' | 'picture.across-as-globe' {
  return shape === 'flat' || shape === 'long' ? 'picture.across-as-globe' : 'picture.across';
}

/** 8 years in 10. */
function rangeText(onion: Onion, { bulbDiameterMm: across }: SeasonSummary, speaker: Speaker): string | null {
  if (onion.form === 'green' || onion.form === 'lost' || across === null) return null;
  return speaker.say(acrossKey(onion.shape), {
    across: whole(speaker.quantityRange('bulbLength', across.p10, across.p90)),
  });
}

function onionTable(onions: readonly CaptionedOnion[], speaker: Speaker): DataTableProps {
  const { say } = speaker;
  return {
    caption: say('picture.section.table'),
    head: [say('picture.section.onion'), say('picture.section.across'), say('picture.section.leaves')],
    rows: onions.map(({ onion, lines }) => [
      lines.at(-1) ?? '',
      sizeText(onion, speaker) ?? say('none'),
      onion.form === 'lost' ? say('none') : speaker.number(onion.ringLeaves.length),
    ]),
  };
}
