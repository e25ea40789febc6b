import {
  type CultivarTraits,
  type DayLengthClass,
  type OnionType,
  type Site,
  typeForClass,
} from '@neckfall/engine';

/** Which onion: a class as on packets, or a type with what a cultivar does otherwise. */
export type CropAsked = { class: DayLengthClass } | { type: OnionType; traits: CultivarTraits | null };

/** What the engine calls that onion at this place. */
export function cropAt(site: Site, asked: CropAsked): { type: OnionType; traits: CultivarTraits | null } {
  return 'class' in asked ? { type: typeForClass(site, asked.class), traits: null } : asked;
}
