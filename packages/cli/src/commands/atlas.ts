import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { deliverMap, readMapForm } from '../atlas/deliver-map.ts';
import { joinParts } from '../atlas/join-parts.ts';
import { growPart } from '../atlas/part-file.ts';
import { tellWhenStopped } from '../atlas/tell-when-stopped.ts';
import { watchOn } from '../atlas/watch.ts';
import { withPart } from '../atlas/with-part.ts';
import { workTiles } from '../atlas/work-tiles.ts';
import { addOutputOptions } from '../options/add-options.ts';
import { type RawAtlas, readAtlasOptions, readShard, refuseBesideJoin } from '../options/atlas-options.ts';
import { example } from '../options/example.ts';
import { readersSpeaker } from '../options/speaker-for.ts';
import { tell } from '../output/tell.ts';
import { ownAssets } from '../place/assets.ts';
import { refuse } from '../refusal/refusal.ts';

export function addAtlas(root: Command, say: Say): void {
  const command = root
    .command('atlas')
    .description(say('help.atlas'))
    .argument('[join]', say('help.map-join'))
    .argument('[parts...]', say('help.map-parts'))
    .option('--region <name|s,w,n,e>', say('help.map-region'))
    .option('--step <degrees>', say('help.map-step'))
    .option('--class <name>', say('help.map-class'))
    .option('--start <how>', say('help.map-start'))
    .option('--every', say('help.map-every'))
    .option('--shows <kind|good|start|tops|size>', say('help.map-shows'))
    .option('--shard <i/n>', say('help.map-shard'))
    .option('--today <date>', say('help.today'))
    .option('--sun <hours>', say('help.sun'))
    .option('--warmer <celsius>', say('help.warmer'))
    .option('--years <n>', say('help.map-years'))
    .option('--seed <n>', say('help.seed'));
  addOutputOptions(command, say)
    .addHelpText('after', example(say, 'atlas --region new-zealand --step 5'))
    .action((word: string | undefined, parts: readonly string[], raw: RawAtlas) => {
      if (word === undefined) return raw.shard === undefined ? wholeMap(raw) : shardOfMap(raw);
      if (word !== 'join') throw refuse('map-word', { values: { value: word } });
      return joinedMap(parts, raw);
    });
}

/** Which onions do best at the points of a region. A map for a file goes on where an earlier run of it was stopped. */
async function wholeMap(raw: RawAtlas): Promise<void> {
  const speaker = readersSpeaker(raw);
  const settings = readAtlasOptions(raw, ownAssets.gazetteer, speaker);
  const form = readMapForm(raw);
  await withPart(raw.out, settings, async (part, path) => {
    const hear = raw.out === undefined ? null : tellWhenStopped(path, speaker);
    await workTiles(settings, readShard(undefined), part, watchOn(speaker));
    hear?.done();
    await deliverMap(part, form, raw);
  });
}

/** One part of a map that several machines make. */
async function shardOfMap(raw: RawAtlas): Promise<void> {
  const speaker = readersSpeaker(raw);
  const settings = readAtlasOptions(raw, ownAssets.gazetteer, speaker);
  const shard = readShard(raw.shard);
  const { out } = raw;
  if (out === undefined)
    throw refuse('map-shard-out', { field: '--shard', values: { value: raw.shard ?? '' } });
  if (raw.json || raw.csv) throw refuse('map-shard-form', { field: raw.json ? '--json' : '--csv' });
  const part = growPart(out, settings);
  const hear = tellWhenStopped(out, speaker);
  await workTiles(settings, shard, part, watchOn(speaker));
  hear.done();
  part.close();
  tell(speaker.say('mapping.shard-done', { ...shard, tiles: part.count(), file: out }));
}

/** The map of all its parts: the same as one run would have made. */
async function joinedMap(parts: readonly string[], raw: RawAtlas): Promise<void> {
  const speaker = readersSpeaker(raw);
  refuseBesideJoin(raw, speaker);
  if (parts.length === 0) throw refuse('map-no-parts');
  const part = joinParts(parts);
  await deliverMap(part, readMapForm(raw), raw);
  part.close();
}
