import { describe, expect, test } from 'vitest';
import { LineCounter, parseDocument } from 'yaml';
import { syntaxFault } from '../../../src/cli/yaml/syntax-fault.ts';
import { say } from '../../../src/words/say.ts';

/** What is said of the text, with its line and column. */
function said(text: string): string {
  const lines = new LineCounter();
  const fault = syntaxFault(text, parseDocument(text, { lineCounter: lines }).errors);
  if (fault === null) return 'nothing';
  const { line, col } = lines.linePos(fault.offset);
  return `${line}:${col} ${say(fault.message, { language: 'en', unit: 'in' })}`;
}

const whole = `title: The top button
lesson: overlap
style:
  overlap: { value: 1 in, from: 1 in, to: 2 in }
reference:
  - { verb: foot, name: mark-1, from: neck-point, on: waist }
checks:
  - target: mark-1
    measure: level
    why: >-
      The front's edge, "as worn": {off} off.
  - target: mark-1
    measure: position
`;

function slip(from: string, to: string): string {
  expect(whole).toContain(from);
  return said(whole.replace(from, to));
}

describe('a file that can be read', () => {
  test('has no slip, whichever system it was written on', () => {
    expect(said(whole)).toBe('nothing');
    expect(said(whole.replaceAll('\n', '\r\n'))).toBe('nothing');
    expect(said(`\uFEFF${whole}`)).toBe('nothing');
    expect(said('')).toBe('nothing');
    expect(said('# to do\n')).toBe('nothing');
  });
});

describe('quotation marks', () => {
  test('that are opened and not closed are said where they open, though the reading went on to the end', () => {
    expect(slip('title: The', 'title: "The')).toMatchInlineSnapshot(
      `"1:8 The quotation mark that opens here is not closed on this line. Close it, or take it out: names and texts need none."`,
    );
    expect(slip('from: neck-point', 'from: "neck-point')).toMatch(/^6:39 The quotation mark/);
    expect(slip('title: The', "title: 'The")).toMatch(/^1:8 The quotation mark/);
  });

  test('and apostrophes end a text in quotation marks too early', () => {
    expect(slip('title: The top button', "title: 'The cutter's button'")).toMatchInlineSnapshot(
      `"1:20 A text in quotation marks has ended before this, and something follows it. Put a text with apostrophes or quotation marks in it on a line of its own under >-, without marks round it."`,
    );
    expect(slip('title: The top button', 'title: "The "top" button"')).toMatch(/^1:14 A text in quotation marks/);
  });
});

describe('the beginning of a line', () => {
  test('is no tab, and no space from a page', () => {
    expect(slip('    measure: level', '\tmeasure: level')).toMatchInlineSnapshot(
      `"9:1 This line begins with a tab. Indent with spaces, two for each step in."`,
    );
    expect(slip('    measure: level', '  \tmeasure: level')).toMatch(/^9:3 .*tab/);
    expect(slip('  overlap', '\u00a0\u00a0overlap')).toMatchInlineSnapshot(
      `"4:1 This line begins with a space that is not the ordinary one; text copied from a page may have it. Type the spaces again."`,
    );
  });

  test('does no harm in a line where nothing else stands, but within a text', () => {
    expect(slip('lesson: overlap', '\t\nlesson: overlap')).toBe('nothing');
    expect(slip('lesson: overlap', '  \t \nlesson: overlap')).toBe('nothing');
    expect(slip(`      The front's edge,`, ` \t\n      The front's edge,`)).toMatch(/^11:2 .*tab/);
    expect(slip('lesson: overlap', '\u00a0\nlesson: overlap')).toMatch(/^2:1 .*space/);
  });

  test('stands under what it belongs with', () => {
    expect(slip('    measure: level', '     measure: level')).toMatchInlineSnapshot(
      `"9:6 This line does not stand where it belongs. Fields of one group begin exactly under each other, and each entry of a list begins with a hyphen and a space."`,
    );
    expect(slip('    measure: level', '   measure: level')).toMatch(/^9:4 This line does not stand/);
  });

  test('has the hyphen of its entry, and a space after it', () => {
    expect(slip('checks:\n  - target', 'checks:\n    target')).toMatchInlineSnapshot(
      `"8:5 Before this first field of an entry its hyphen is missing. Each entry of a list begins with a hyphen and a space."`,
    );
    expect(slip('checks:\n  - target', 'checks:\n  -target')).toMatchInlineSnapshot(
      `"8:3 After this hyphen a space is missing. An entry of a list is written “- waist”."`,
    );
  });

  test('is the name of a field, with a colon and a space', () => {
    expect(slip('lesson: overlap', 'lesson overlap')).toMatchInlineSnapshot(
      `"2:1 This line is no field. A field is its name, a colon and a space: “lesson: overlap”. A text of several lines begins under >- and stands further in than the name of its field."`,
    );
    expect(slip('lesson: overlap', 'lesson:overlap')).toMatchInlineSnapshot(
      `"2:7 After this colon a space is missing. A field is written “lesson: overlap”."`,
    );
    expect(slip('      The front', '    The front')).toMatch(/^11:5 This line is no field/);
  });

  test('is there once for a field', () => {
    expect(slip('lesson: overlap', 'lesson: overlap\nlesson: roll-line')).toMatchInlineSnapshot(
      `"3:1 The field “lesson” is here for the second time. Keep one of the two."`,
    );
  });

  test('does not begin another file', () => {
    expect(said(`${whole}---\n`)).toMatchInlineSnapshot(
      `"14:1 Three hyphens begin another file. One file is one exercise: take this line out."`,
    );
  });
});

describe('braces', () => {
  test('are closed, and hold commas', () => {
    expect(slip(', on: waist }', ', on: waist')).toMatchInlineSnapshot(
      `"6:5 A brace is opened here and not closed on this line. Write } where the step or the group ends."`,
    );
    expect(slip('verb: foot,', 'verb: foot')).toMatchInlineSnapshot(
      `"6:5 Something is missing between these braces. In braces a comma stands after each field, and a colon with a space after each name: verb: cross, name: mark-1."`,
    );
  });

  test('at the beginning of a text are not taken for a measure', () => {
    expect(slip('title: The top button', 'title: {overlap} and button')).toMatchInlineSnapshot(
      `"1:17 What begins with { or [ is taken for a group or a list, and here something follows it. Put a text that begins so on a line of its own under >-, indented."`,
    );
  });
});

describe('a text beside its field', () => {
  test('has no second colon', () => {
    expect(slip('title: The top button', 'title: Buttons: the top one')).toMatchInlineSnapshot(
      `"1:8 A second colon in one line is taken for another field. Put a text with a colon in it on a line of its own under >-, indented."`,
    );
  });

  test('does not begin with a sign that means something else', () => {
    for (const sign of ['*', '&', '!', '%', '@', '`']) {
      expect(slip('title: The top', `title: ${sign}top`)).toBe(
        `1:8 What begins with “${sign}” is not taken for text. Put the text on a line of its own under >-, indented.`,
      );
    }
    expect(slip('title: The', 'title: - The')).toMatchInlineSnapshot(
      `"1:8 A list does not begin beside the name of its field. Begin it on the next line, with a hyphen and a space before each entry; a text that begins with a hyphen stands there under >-."`,
    );
  });

  test('is not cut off by a number sign, though a remark may follow it', () => {
    expect(slip('title: The top button', 'title: Button #1')).toMatchInlineSnapshot(
      `"1:15 “#1” is taken for a remark and left out of the text. Put the text on a line of its own under >-, or, if a remark is meant, write a space after the #."`,
    );
    expect(slip('lesson: overlap', 'lesson: overlap # for now\n#and a line of remarks\n  # another')).toBe('nothing');
    expect(slip('worn": {off} off', 'worn" #1: {off} off')).toBe('nothing');
  });

  test('does not stand beside its >-', () => {
    expect(slip('why: >-\n      The', 'why: >- The')).toMatchInlineSnapshot(
      `"10:10 Beside >- nothing may stand. Begin the text on the next line, indented."`,
    );
  });
});

test('a slip that is not known says what the parser says, once, and where to look', () => {
  expect(said('a: "\\q"\n')).toMatchInlineSnapshot(
    `"1:5 From here the file cannot be read (Invalid escape sequence \\q). Look at this line and the one above it."`,
  );
});
