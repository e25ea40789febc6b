import type { Speaker } from '@neckfall/words';
import type { Answer } from '../answer/answer.ts';
import { whereAnswer } from '../answer/where-answer.ts';
import type { OpenFrame } from '../frame/frame.ts';
import type { Setting } from '../options/place-options.ts';
import { pointOfRow } from './point-of-row.ts';
import type { Row } from './rows.ts';

export function whereOfRow(cells: Row['cells'], setting: Setting, metric: Speaker, open: OpenFrame): Answer {
  return whereAnswer({ asked: pointOfRow(cells), ...setting }, metric, open);
}
