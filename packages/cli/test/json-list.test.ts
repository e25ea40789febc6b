import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withEntry } from '../src/files/json-list.ts';

const entry = { id: 'x', plantingId: 'a', leavesGreen: 5.5, note: 'A "quote", a [ and a }' };
const added = (text: string) => withEntry(text, 'observations', entry);

describe('an entry is written as those beside it:', () => {
  test.each([
    ['indented', JSON.stringify({ a: 1, observations: [{ id: 'o' }], b: [] }, null, 2)],
    ['indented by tabs', JSON.stringify({ observations: [{ id: 'o' }, { id: 'p' }] }, null, '\t')],
    ['without any space', JSON.stringify({ observations: [{ id: 'o' }], b: { c: [] } })],
    ['into an empty list, indented', JSON.stringify({ observations: [] }, null, 4).replace('[]', '[]')],
    ['into a list that was not there, indented', JSON.stringify({ a: 1 }, null, 2)],
    ['into a list that was not there', JSON.stringify({ a: 1 })],
    ['into an empty object', '{}'],
  ])('%s', (_, text) => {
    const indent = /\n([ \t]+)"/.exec(text)?.[1];
    const found = JSON.parse(text);
    found.observations = [...(found.observations ?? []), entry];
    expect(added(text)).toBe(JSON.stringify(found, null, indent));
  });

  test('on a line of its own, spaced, where those beside it are', () => {
    const text = '{\r\n  "observations": [\r\n    { "id": "o" },\r\n    { "id": "p" }\r\n  ]\r\n}\r\n';
    const [, line] = /\},\r\n {4}(\{ "id": "x".*)\r\n {2}\]/.exec(added(text)) ?? [];
    expect(JSON.parse(line)).toEqual(entry);
    expect(line.startsWith('{ "id": "x", "plantingId": "a",')).toBe(true);
    expect(added(text).replace(`,\r\n    ${line}`, '')).toBe(text);
  });

  test('whatever of the numbers and escapes around it no program would write again', () => {
    const text =
      '{ "a": 1.0e+02, "\\u0062": "\\/", "observations": [ {"at": 3.130} ], "c": 12345678901234567890 }';
    expect(added(text)).toBe(text.replace('{"at": 3.130}', `{"at": 3.130}, ${JSON.stringify(entry)}`));
  });

  test('into the last of lists of one name, which is the one that counts', () => {
    const text = '{"observations":[{"id":"o"}],"observations":[]}';
    expect(JSON.parse(added(text)).observations).toEqual([entry]);
  });

  test.each(['null', '7', '"[]"', '{"id":"o"}', 'true'])('in the place of %s, which is no list', (value) => {
    for (const text of [`{"observations":${value},"b":1}`, `{"b":1,"observations":${value}}`])
      expect(JSON.parse(added(text))).toEqual({ observations: [entry], b: 1 });
  });

  test('behind a byte order mark', () => {
    expect(added('\ufeff{"observations":[]}')).toBe(`\ufeff{"observations":[${JSON.stringify(entry)}]}`);
  });
});

test('of any document all else stays as it was', () => {
  const lists = fc.array(fc.jsonValue({ maxDepth: 2 }), { maxLength: 4 });
  const documents = fc.tuple(
    fc.dictionary(fc.string(), fc.jsonValue({ maxDepth: 3 })),
    fc.option(lists, { nil: undefined }),
    fc.constantFrom(undefined, 2, 4, '\t'),
  );
  fc.assert(
    fc.property(documents, ([rest, observations, indent]) => {
      // read back, as the order of names such as "1" is that of the reader
      const text = JSON.stringify(observations ? { ...rest, observations } : rest, null, indent);
      const was = JSON.parse(text);
      const list = Array.isArray(was.observations) ? was.observations : [];
      expect(JSON.parse(added(text))).toEqual({ ...was, observations: [...list, entry] });
      const twice = withEntry(added(text), 'observations', { id: 'y' });
      expect(JSON.parse(twice).observations).toEqual([...list, entry, { id: 'y' }]);
    }),
    { seed: 20270520, numRuns: 500 },
  );
});
