import {
  adviceOfList,
  adviceOfPlace,
  choicesHereFirst,
  countryOf,
  districtAssumption,
  practiceAssumptions,
  setsWarning,
} from '@neckfall/answers';
import { type Choice, groupKinds, kindNow, kindsOf, rankChoices, surveyOf } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { yearOf } from '../documents/values.ts';
import { whichDocument, whichRows } from '../documents/which-document.ts';
import { openFrame, siteOptionsOf } from '../frame/frame.ts';
import { weatherWarnings } from '../frame/weather-notes.ts';
import { growApart } from '../grow/grow-apart.ts';
import { addOutputOptions, addPlaceOptions, addPracticeOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { type RawOutputOptions, type RawPlaceOptions, readPlaceOptions } from '../options/place-options.ts';
import { type RawPlanOptions, readGrowing } from '../options/plan-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { offersWanted, type RawWhichOptions, readWanted, type Wanted } from '../options/which-options.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import { whichText } from '../text/which-text.ts';

type Raw = RawPlaceOptions & RawOutputOptions & RawWhichOptions & Omit<RawPlanOptions, keyof RawWhichOptions>;

export function addWhich(root: Command, say: Say): void {
  const command = root.command('which').description(say('help.which'));
  addPlaceOptions(command, say);
  command
    .option('--start <how>', say('help.which-start'))
    .option('--class <name>', say('help.filter-class'))
    .option('--colour <name>', say('help.colour'))
    .option('--keeps <months>', say('help.keeps'))
    .option('--mild', say('help.mild'))
    .option('--have <names>', say('help.have'))
    .option('--limit <n>', say('help.limit'))
    .option('--garden <file>', say('help.garden'));
  addPracticeOptions(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'which Lyon --keeps 6'))
    .action(async (place: string | undefined, raw: Raw) => deliver(await which(place, raw), raw));
}

/** Which onions do best at a place, each at its best start of the year from today on. */
async function which(town: string | undefined, raw: Raw): Promise<Answer> {
  const speaker = speakerFor(raw);
  const options = readPlaceOptions(town, raw);
  const wanted = readWanted(raw, speaker);
  const growing = readGrowing(raw, speaker);
  const frame = openFrame(options, speaker);
  const { site, assumed, warnings } = frame;
  const offers = offersWanted(wanted, site, yearOf(options.today));
  const kinds = kindsOf(offers);
  if (kinds.length === 0) {
    const filters = ['start', 'class', 'colour', 'keeps', 'mild'] as const;
    const given = filters.filter((filter) => raw[filter] !== undefined).map((filter) => `--${filter}`);
    throw refuse('no-such-onion', { field: given[0] ?? '--have', values: { filters: speaker.all(given) } });
  }
  warnings.push(
    ...(wanted.garden?.warnings ?? []),
    ...weatherWarnings(frame, options.today, options.today + 364),
  );
  const practice = { ...growing, sunHours: options.sunHours };
  const job = { site: siteOptionsOf(frame), kinds, firstDay: options.today, options: practice };
  const country = countryOf(frame.place);
  const ranked = rankChoices(site, await growApart(site, job));
  const survey = isAnything(wanted) ? surveyOf(site, options.today, practice) : null;
  const choices = choicesHereFirst(ranked, country, survey && (survey.now() ?? survey.lead()).summary.plan);
  const shown = choices.slice(0, wanted.limit);
  const firsts = groupKinds(choices).map(({ choices: [{ kind }] }) => kind);
  const advice = survey
    ? adviceOfPlace(survey)
    : adviceOfList(choices, kindNow(site, firsts, options.today, practice)?.summary ?? null);
  // a size that was asked for is worth a word wherever its crop comes in
  const flowers = setsWarning(raw.setSize === undefined ? shown : choices, speaker);
  if (flowers !== null) warnings.push(flowers);
  const { say, day } = speaker;
  assumed.push(
    say('which.assumed-catalogue', { count: offers.length, kinds: kinds.length }),
    say('which.assumed-day', { date: day(options.today) }),
    ...districtAssumption(site.practice, speaker),
    ...practiceOf(shown, speaker),
  );
  const document = () => whichDocument(frame, shown, kinds.length);
  return {
    text: () =>
      whichText(frame, choices, {
        limit: wanted.limit,
        advice,
        isAll: survey !== null,
        compare: wanted.have?.length === 1,
        // who says which names they can get need not be told what shops have
        country: wanted.have === null ? country : null,
      }),
    json: document,
    csv: () => csv(whichRows(document())),
    warnings,
  };
}

/** Whether nothing narrows the choice. */
function isAnything({ start, class: asked, colour, keepsMonths, mild, have, garden }: Wanted): boolean {
  return [start, asked, colour, keepsMonths, have, garden].every((said) => said === null) && !mild;
}

/** What was taken for granted about growing, for every way of starting that is shown, each sentence once. */
function practiceOf(shown: readonly Choice[], speaker: Speaker): string[] {
  const sentences = groupKinds(shown).flatMap(({ choices: [{ summary }] }) =>
    practiceAssumptions(summary.plan, speaker),
  );
  return [...new Set(sentences)];
}
