import type { Speaker } from '@neckfall/words';
import type { Answer } from '../answer/answer.ts';
import { answersAnswer } from '../answer/answers-answer.ts';
import type { OpenFrame } from '../frame/frame.ts';
import type { Setting } from '../options/place-options.ts';
import type { RawQuestionOptions } from '../options/question-options.ts';
import { pointOfRow } from './point-of-row.ts';
import type { Row } from './rows.ts';

export function answersOfRow(
  cells: Row['cells'],
  raw: RawQuestionOptions,
  setting: Setting,
  metric: Speaker,
  open: OpenFrame,
): Answer {
  return answersAnswer({ asked: pointOfRow(cells), ...setting }, null, raw, metric, open);
}
