import { cultivarAssumption, keepingOf, packetAssumptions } from '@neckfall/answers';
import { type Cultivar, findCultivar, plantOf } from '@neckfall/data';
import {
  type CropAsked,
  type CultivarTraits,
  dayLengthClasses,
  gardenRanges,
  type OnionType,
  type OwnCultivar,
  type Packet,
  type Plan,
  plantOfPacket,
  type Site,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type GardenFile, readGardenFile } from '../files/garden-file.ts';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { parseNumber } from '../values/number.ts';

/** Options that say which onion, as commander gives them. */
export type RawOnionOptions = {
  class?: string;
  cultivar?: string;
  packetHours?: string;
  packetDays?: string;
  garden?: string;
};

/** An onion as a plan has it, and what was assumed of it, in sentences. */
type OnionPlant = { type: OnionType; traits: CultivarTraits | null; assumed: string[] };

/** The onion asked for; its plant may depend on the place. */
export type AskedOnion = {
  /** The name asked by; null for a packet or a class. */
  name: string | null;
  plantAt(site: Site, year: number, use?: Pick<Plan, 'start' | 'startDay'>): OnionPlant;
  /** The same for the engine; `year` is that of the starts. */
  cropIn(year: number): CropAsked;
  /** How long it usually keeps. */
  keepsMonths: readonly [number, number];
  /** What was changed in reading the garden file. */
  warnings: readonly string[];
};

export function readOnion(raw: RawOnionOptions, speaker: Speaker): AskedOnion {
  const garden = raw.garden === undefined ? null : readGardenFile(raw.garden, speaker);
  const warnings = garden?.warnings ?? [];
  const keeping = (onion: Parameters<typeof keepingOf>[1]) =>
    keepingOf(garden?.garden.cultivars ?? [], onion);
  if (raw.cultivar !== undefined) {
    refusePacketBesides(raw, speaker);
    const named = namedOnion(raw.cultivar, '--cultivar', garden, speaker);
    return { ...named, keepsMonths: keeping({ cultivar: raw.cultivar, class: null }), warnings };
  }
  const packet = readPacket(raw, speaker);
  const keepsMonths = keeping({ cultivar: null, class: packet.class });
  return { name: null, keepsMonths, warnings, ...packetPlant(packet, speaker) };
}

/** Own onions come before those of the catalogue. */
function namedOnion(
  name: string,
  field: string,
  garden: GardenFile | null,
  speaker: Speaker,
): Omit<AskedOnion, 'keepsMonths' | 'warnings'> {
  const own = garden?.find(name);
  if (own) return { name: own.name, ...packetPlant(packetOf(own, name, field), speaker) };
  const cultivar = findBulbOnion(name, field, garden);
  const assumed = [cultivarAssumption(cultivar, speaker)];
  return {
    name: cultivar.name,
    plantAt: () => ({ ...plantOf(cultivar), assumed: [...assumed] }),
    cropIn: () => plantOf(cultivar),
  };
}

export function findBulbOnion(name: string, field: string, garden: GardenFile | null): Cultivar {
  const { match, ...answer } = findCultivar(name);
  if (!match) {
    const near = 'nearest' in answer ? answer.nearest : [];
    throw refuse('cultivar-unknown', {
      field,
      values: { value: name },
      nearest: [...(garden?.like(name) ?? []), ...near].slice(0, 3),
    });
  }
  if (match.kind !== 'bulb-onion')
    throw refuse('cultivar-not-modelled', { field, values: { value: match.name } });
  return match;
}

/** What the garden file has of an onion, as a packet; refused where that is too little. */
export function packetOf(own: OwnCultivar, name: string, field: string): Packet {
  if (own.class === null && own.packetHours === null) {
    throw refuse('own-cultivar-bare', { field, values: { value: name } });
  }
  return { class: own.class, hours: own.packetHours, days: own.packetDays };
}

function packetPlant(packet: Packet, speaker: Speaker): Pick<AskedOnion, 'plantAt' | 'cropIn'> {
  return {
    plantAt(site, year, use) {
      const plant = plantOfPacket(site, packet, year, use);
      return { type: plant.type, traits: plant.traits, assumed: packetAssumptions(plant, speaker) };
    },
    cropIn: (year) => ({ packet, year }),
  };
}

function readPacket(raw: RawOnionOptions, speaker: Speaker): Packet {
  if (raw.class === undefined && raw.packetHours === undefined) {
    throw refuse('missing-option', { field: '--class', expected: speaker.any(dayLengthClasses) });
  }
  const number = (
    text: string | undefined,
    field: string,
    range: keyof typeof gardenRanges,
    unit: string,
  ) => {
    const [min, max] = gardenRanges[range];
    return text === undefined ? null : parseNumber(text, { field, min, max, unit });
  };
  return {
    class: raw.class === undefined ? null : parseChoice(raw.class, '--class', dayLengthClasses, speaker),
    hours: number(raw.packetHours, '--packet-hours', 'packetHours', 'h'),
    days: number(raw.packetDays, '--packet-days', 'packetDays', 'days'),
  };
}

function refusePacketBesides(raw: RawOnionOptions, { say }: Speaker): void {
  const besides = [
    ['--class', raw.class],
    ['--packet-hours', raw.packetHours],
    ['--packet-days', raw.packetDays],
  ].find(([, value]) => value !== undefined);
  if (besides) {
    const values = { other: `--cultivar ${raw.cultivar}`, why: say('clash.cultivar-has-class') };
    throw refuse('contradiction', { field: besides[0] ?? '', values });
  }
}
