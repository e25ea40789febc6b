import {
  keepCautions,
  keepEatFirst,
  keepGapSentence,
  keepHeadline,
  keepLotSentence,
  keepUnmetSentence,
  ofLot,
  shoppingOf,
  shoppingSentence,
  storedEatFirst,
  storedSentence,
} from '@neckfall/answers';
import type { KeepYear } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { KeepTold } from '../documents/keep-document.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** The bed that keeps a kitchen, lot by lot; the year in store; when it is bare; what to eat first and what to get. */
export function keepText({ frame, year, inStore, lift, country }: KeepTold): string {
  const { speaker, options } = frame;
  const { say } = speaker;
  const { today } = options;
  const unmet = keepUnmetSentence(year, speaker);
  const lead = [keepHeadline(year, today, speaker), ...(unmet === null ? [] : [unmet])];
  const lots = year.lots.map((lot, at) => ofLot(at, keepLotSentence(lot, today, country, speaker), speaker));
  const gaps = year.gaps.map((gap) => keepGapSentence(gap, speaker));
  const shopping = shoppingOf(year).map((item) => shoppingSentence(item, country, speaker));
  const sections = [
    lead.map((sentence) => wrap(sentence)).join('\n'),
    ...(lift ? titled(say('keep-table.lift', { name: lift.name }), lift.sentences) : []),
    ...titled(say('keep-table.lots'), lots),
    ...(year.lots.length > 0 ? [`${say('keep-table.year')}\n${monthTable(year, speaker)}`] : []),
    ...titled(say('keep-table.gaps'), gaps),
    ...titled(
      say('keep-table.in-store'),
      inStore.map((one) => storedSentence(one, today, speaker)),
    ),
    ...titled(say('keep-table.eat-first'), [
      ...storedEatFirst(inStore, today, speaker),
      ...keepEatFirst(year, today, speaker),
    ]),
    ...titled(say('keep-table.shopping'), shopping),
    ...(year.lots.length > 0 ? titled(say('app.cautions'), keepCautions(speaker)) : []),
    howWeKnow(frame, null, null),
  ];
  return `${sections.join('\n\n')}\n`;
}

function titled(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [[title, ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n')];
}

function monthTable({ months, years }: KeepYear, speaker: Speaker): string {
  const { say, quantity, quantityRange, monthWithYear, all, years: told } = speaker;
  const titles = ['month', 'need', 'store', 'span', 'lost', 'from', 'supplied'] as const;
  return table(
    titles.map((title) => ({
      title: say(`keep-table.${title}`),
      right: title === 'need' || title === 'store' || title === 'span' || title === 'lost',
    })),
    months.map(({ year, month, needKg, storeKg, lostKg, from, suppliedShare }) => [
      monthWithYear(year, month),
      quantity('crop', needKg),
      quantity('crop', storeKg.p50),
      quantityRange('crop', storeKg.p10, storeKg.p90),
      quantity('crop', lostKg),
      from.length === 0 ? '–' : all(from.map((lot) => String(lot + 1))),
      told(suppliedShare, years),
    ]),
  );
}
