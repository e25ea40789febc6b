import {
  defaultPlantValues,
  degreesAbove,
  type OnionType,
  type PlantValues,
  photoperiodFactor,
  ramp,
  ripeningPhotoperiodFactor,
  shadePenaltyH,
} from '../../packages/engine/src/index.ts';

/** Plants past the juvenile stage under constant lamps and warmth, as in a growth room. */
export type Room = { type: OnionType; lampHours: number; tempC: number; shadeShare?: number };

export type RoomResult = { onsetDays: number | null; ripeDays: number | null };

/** Longest experiment, days. */
const roomDays = 120;

export function growthRoom(
  { type, lampHours, tempC, shadeShare = 0 }: Room,
  values: PlantValues = defaultPlantValues,
): RoomResult {
  const { growth } = values;
  const kind = values.types[type];
  const critical = kind.criticalPhotoperiodH + shadePenaltyH(shadeShare);
  const perDay =
    lampHours < critical
      ? 0
      : growth.bulbingRate *
          photoperiodFactor(lampHours, critical, growth.photoperiodRampH) *
          ramp(tempC, growth.bulbingBaseC, growth.bulbingFullC) -
        growth.bulbingLossPerDay;
  if (perDay * roomDays < 1) return { onsetDays: null, ripeDays: null };
  const onsetDays = Math.ceil(1 / perDay);
  const ripening =
    (degreesAbove(tempC, kind.ripeningBaseC, kind.ripeningCapC) / kind.ripeningTT) *
    ripeningPhotoperiodFactor(lampHours, critical, kind.ripeningPhotoperiodSlope);
  return { onsetDays, ripeDays: onsetDays + Math.ceil(1 / ripening) };
}
