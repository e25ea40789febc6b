import { speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import { refusalOf, refuse } from '../src/refusal/refusal.ts';
import { refusalLine } from '../src/refusal/refusal-line.ts';

test('an onion of one’s own that is called none is offered by its name', () => {
  const refusal = refusalOf(
    refuse('cultivar-unknown', { field: '--cultivar', values: { value: 'non' }, nearest: ['none'] }),
  );
  expect(refusalLine(refusal!, speaker('metric'))).toContain('Did you mean none?');
});

test('without a like name none is asked after', () => {
  const refusal = refusalOf(refuse('cultivar-unknown', { field: '--cultivar', values: { value: 'non' } }));
  expect(refusalLine(refusal!, speaker('metric'))).not.toContain('Did you mean');
});
