import type { Observation } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import {
  draftOf,
  emptyDraft,
  entryOf,
  isOfKind,
  saysSomething,
} from '../../../src/pages/season/seen/draft.ts';

/** 20 May 2027. */
const day = 20_958;

describe('an entry', () => {
  test('holds what was filled in and nothing else', () => {
    const draft = { ...emptyDraft(day, 8), numbers: { leavesGreen: 5.5, bulbMm: null } };
    const { id, ...entry } = entryOf(draft);
    expect(id).toMatch(/^[a-z2-9]{10}$/);
    expect(entry).toEqual({ plantingId: null, date: '2027-05-20', leavesGreen: 5.5, lookedAt: 8 });
  });

  test('of tops is of ten plants, and of the whole bed of no number', () => {
    const of = (numbers: object) => entryOf({ ...emptyDraft(day, 8), numbers }).lookedAt;
    expect(of({ topsOverShare: 0.4 })).toBe(10);
    expect(of({ standCount: 200 })).toBeUndefined();
    expect(of({ wateredLitres: 40 })).toBeUndefined();
  });

  test('comes back from its draft as it was, with fields of others', () => {
    const before: Observation = {
      id: 'a',
      plantingId: 'bed',
      date: '2027-05-20',
      leavesGreen: 4,
      lookedAt: 3,
      wateredLitres: 20,
      fedProduct: '10-5-8',
      fedG: 100,
      lifted: true,
      thickNeckCount: 3,
      soundCount: 12,
      note: 'Slugs',
      by: 'Bram Okoro',
    };
    expect(entryOf(draftOf(before, 5), before)).toEqual(before);
    const draft = draftOf(before, 5);
    expect(['watered', 'fed', 'measured', 'lifted'].every((kind) => isOfKind(draft, kind as 'fed'))).toBe(
      true,
    );
    expect(isOfKind(draft, 'counted')).toBe(false);
  });

  test('without anything but its day is none', () => {
    expect(saysSomething(entryOf(emptyDraft(day, 5)))).toBe(false);
    expect(saysSomething(entryOf({ ...emptyDraft(day, 5), note: '  ' }))).toBe(false);
    expect(saysSomething(entryOf({ ...emptyDraft(day, 5), note: 'Slugs' }))).toBe(true);
  });
});
