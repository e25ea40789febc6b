import type { CultivarTraits, DayLengthClass, OnionType, StartMethod } from '../plant/index.ts';
import type { Plan, Site } from '../season/index.ts';
import { type Packet, type PacketPlant, plantOfPacket } from './packet.ts';
import { type ClassUse, usesOfClass } from './type-for-class.ts';

/**
 * Which onion: a class as on packets, all that a packet says (`year` is that of the starts), or a type with what a
 * cultivar does otherwise.
 */
export type CropAsked =
  | { class: DayLengthClass }
  | { packet: Packet; year: number }
  | { type: OnionType; traits: CultivarTraits | null };

/** How and when it is started: packets of a class hold one type for spring and another for autumn. */
export type CropUse = Pick<Plan, 'start' | 'startDay'>;

/** What packets hold through the year where only a class is said; null: one plant all year. */
export function usesAt(site: Site, asked: CropAsked, start: StartMethod): ClassUse[] | null {
  if ('type' in asked) return null;
  const printed = 'packet' in asked ? (asked.packet.hours === null ? asked.packet.class : null) : asked.class;
  return printed && usesOfClass(site, printed, start);
}

/** What the engine calls that onion at this place. */
export function cropAt(
  site: Site,
  asked: CropAsked,
  use: CropUse | null = null,
): Pick<PacketPlant, 'type' | 'traits'> {
  const { type, traits } = onionAt(site, asked, use);
  return { type, traits };
}

/** The same, with what was made of a packet. */
export function onionAt(site: Site, asked: CropAsked, use: CropUse | null = null): PacketPlant {
  if ('type' in asked) return { ...asked, notes: [] };
  if ('packet' in asked) return plantOfPacket(site, asked.packet, asked.year, use);
  return plantOfPacket(site, { class: asked.class, hours: null, days: null }, 0, use);
}
