import { symptoms } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { svgText } from '../src/drawing/svg-text.ts';
import { SymptomDrawing } from '../src/symptoms/index.ts';
import { everyInk } from './scenes.ts';

const drawn = (symptom: (typeof symptoms)[number]) =>
  svgText(<SymptomDrawing of={symptom} />, { colours: everyInk, title: symptom });

test('each thing that may be seen has a drawing of its own', () => {
  const all = symptoms.map((symptom) => drawn(symptom).replace(/<title>.*?<\/title>/, ''));
  expect(new Set(all).size).toBe(symptoms.length);
  for (const [at, svg] of all.entries()) {
    expect({ symptom: symptoms[at], bad: /NaN|undefined|null/.exec(svg) }).toEqual({
      symptom: symptoms[at],
      bad: null,
    });
    expect(svg.match(/<(path|circle|ellipse)/g)!.length).toBeGreaterThanOrEqual(2);
  }
});
