import { type GridPoint, type Region, wholeWorld } from '@neckfall/engine';

/** Parts of the Earth a map may be of, by boxes of our own choice that hold the land they are named after. */
export const atlasRegions = {
  all: wholeWorld,
  europe: { southDeg: 34, westDeg: -25, northDeg: 72, eastDeg: 46 },
  africa: { southDeg: -36, westDeg: -19, northDeg: 38, eastDeg: 53 },
  'west-asia': { southDeg: 5, westDeg: 25, northDeg: 56, eastDeg: 98 },
  'east-asia': { southDeg: -11, westDeg: 90, northDeg: 56, eastDeg: 155 },
  'north-asia': { southDeg: 45, westDeg: 40, northDeg: 72, eastDeg: -168 },
  'north-america': { southDeg: 13, westDeg: -170, northDeg: 72, eastDeg: -50 },
  'middle-america': { southDeg: 5, westDeg: -118, northDeg: 34, eastDeg: -58 },
  'south-america': { southDeg: -56, westDeg: -93, northDeg: 14, eastDeg: -33 },
  australia: { southDeg: -45, westDeg: 110, northDeg: -8, eastDeg: 157 },
  pacific: { southDeg: -24, westDeg: 154, northDeg: -4, eastDeg: -168 },
  'new-zealand': { southDeg: -48, westDeg: 165, northDeg: -33, eastDeg: 180 },
} as const satisfies Record<string, Region>;

export type AtlasRegionName = keyof typeof atlasRegions;
export const atlasRegionNames = Object.keys(atlasRegions) as AtlasRegionName[];

/** North and south of a place, and as far on the ground to its sides, degrees. */
const aboutDeg = 5;

/** The part of the Earth about a place, where it is covered. */
export function regionAbout({ latitudeDeg, longitudeDeg }: GridPoint): Region {
  const [southDeg, northDeg] = [
    Math.max(wholeWorld.southDeg, Math.floor(latitudeDeg) - aboutDeg),
    Math.min(wholeWorld.northDeg, Math.ceil(latitudeDeg) + aboutDeg),
  ];
  const wide = Math.ceil(aboutDeg / Math.cos((latitudeDeg * Math.PI) / 180));
  const turned = (degrees: number) => degrees - 360 * Math.round(degrees / 360);
  return {
    southDeg,
    northDeg,
    westDeg: turned(Math.floor(longitudeDeg) - wide),
    eastDeg: turned(Math.ceil(longitudeDeg) + wide),
  };
}
