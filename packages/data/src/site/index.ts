export { locatePoint, locateTown, type PlaceAssets, type PlaceProblem, type Point } from './locate.ts';
export type { Place } from './place.ts';
export { type SiteAsked, type SiteAssets, siteAt, siteOptionsAt, usualSite } from './site-at.ts';
