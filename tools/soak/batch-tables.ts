import { misbehaviourWith } from '../../packages/cli/test/fuzz/answer-table.ts';
import { tables } from '../../packages/cli/test/fuzz/tables.ts';
import { attack } from './attack.ts';

export const ofTables = attack('batch tables: whole, torn and mistaken', 7, tables, (table) =>
  misbehaviourWith(table, { lines: 0, refused: 0 }),
);
