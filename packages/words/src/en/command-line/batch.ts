/** Many places at once. */
export const batch = {
  'help.batch':
    'many places at once: a CSV file with a row each, or - for standard input; one line of JSON a row',
  'batch.progress': '{rows, number} rows answered, {rate, number} a second',
  'batch.some-failed':
    '{failed, plural, one {# row of {rows, number} was} other {# rows of {rows, number} were}} not answered; {failed, plural, one {its line says} other {their lines say}} why. The first: {first}',
  'error.batch-missing':
    '--batch {value}: there is no such file. Expected a CSV file with the columns {expected}.',
  'error.batch-folder': '--batch {value} is a folder: expected a CSV file with the columns {expected}.',
  'error.batch-unreadable':
    '--batch {value} could not be read ({reason}). Expected a CSV file that you may read.',
  'error.batch-encoding':
    '--batch {value} is not text in UTF-8, or in UTF-16 with a byte order mark. Save it as “CSV UTF-8”.',
  'error.batch-too-big':
    '--batch {value} is larger than {limit, number} MB, the most that is read as one batch. Cut it into several files.',
  'error.batch-too-many':
    '--batch {value} has more than {limit, number} lines, the most that is answered as one batch. Cut it into several files.',
  'error.batch-first-line':
    '--batch {value}, line 1: more than {limit, number} characters before the line ends. Expected a CSV file with the names of its columns in the first line.',
  'error.batch-empty':
    '--batch {value} has no rows: expected a line that names the columns, then a line for each place.',
  'error.batch-column':
    '--batch {value}, line 1: no column is called "{column}".{near, plural, =0 {} other { Did you mean {nearest}?}} The columns are {expected}.',
  'error.batch-column-twice':
    '--batch {value}, line 1: the column "{column}" comes twice. Leave one of them out.',
  'error.batch-column-missing':
    '--batch {value}, line 1: the column "{column}" is missing. The columns are {expected}; latitude and longitude are needed.',
  'error.batch-none-answered':
    '--batch {value}: {rows, plural, one {its one row was not} other {none of its # rows was}} answered. The first: {first}',
  'error.not-in-batch': '{field} does not go with --batch: {why} Leave one of them out.',
  'clash.batch-has-places': 'the file names the places.',
  'clash.batch-is-lines': 'the answer is a line of JSON a row.',
  'clash.record-of-one-place': 'a weather record belongs to one place.',
  'error.row-too-long':
    'Line {line}: more than {limit, number} characters before the line ends. Is a quotation mark left open?',
  'error.row-long-cell': 'Line {line}: a cell has more than {limit, number} characters. Shorten it.',
  'error.row-encoding': 'Line {line} is not text. Save the file as “CSV UTF-8”.',
  'error.row-cells':
    'Line {line} has {received, plural, one {# cell} other {# cells}} where the first line names {expected, plural, one {# column} other {# columns}}. Is a separator missing, or a quotation mark?',
  'error.row-empty': '{field} is empty: expected degrees from −{most} to {most}.',
  'error.row-date-limits': '{field} {value} is beyond the limits: expected a date from {from} to {to}.',
} as const;
