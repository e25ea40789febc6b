import {
  type CultivarTraits,
  type DayLengthClass,
  type OnionType,
  type Packet,
  type PacketPlant,
  plantOfPacket,
  type Site,
} from '@neckfall/engine';

/**
 * Which onion: a class as on packets, all that a packet says (`year` is that of the starts), or a type with what a
 * cultivar does otherwise.
 */
export type CropAsked =
  | { class: DayLengthClass }
  | { packet: Packet; year: number }
  | { type: OnionType; traits: CultivarTraits | null };

/** What the engine calls that onion at this place. */
export function cropAt(site: Site, asked: CropAsked): Pick<PacketPlant, 'type' | 'traits'> {
  const { type, traits } = onionAt(site, asked);
  return { type, traits };
}

/** The same, with what was made of a packet. */
export function onionAt(site: Site, asked: CropAsked): PacketPlant {
  if ('type' in asked) return { ...asked, notes: [] };
  if ('packet' in asked) return plantOfPacket(site, asked.packet, asked.year);
  return plantOfPacket(site, { class: asked.class, hours: null, days: null }, 0);
}
