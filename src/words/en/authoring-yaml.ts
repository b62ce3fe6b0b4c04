import { entry, plain } from '../entry.ts';

/** What keeps an exercise file from being read at all, said to somebody who knows a text editor and no YAML. */
export const authoringYaml = {
  'yaml.tab': plain('This line begins with a tab. Indent with spaces, two for each step in.'),
  'yaml.odd-space': plain(
    'This line begins with a space that is not the ordinary one; text copied from a page may have it. Type the spaces again.',
  ),
  'yaml.quote-open': plain(
    'The quotation mark that opens here is not closed on this line. Close it, or take it out: names and texts need none.',
  ),
  'yaml.quote-after': plain(
    'A text in quotation marks has ended before this, and something follows it. Put a text with apostrophes or quotation marks in it on a line of its own under >-, without marks round it.',
  ),
  'yaml.braces-after': plain(
    "What begins with '{' or [ is taken for a group or a list, and here something follows it. Put a text that begins so on a line of its own under >-, indented.",
  ),
  'yaml.twice': entry(['field'], 'The field “{field}” is here for the second time. Keep one of the two.'),
  'yaml.deep': plain(
    'Groups lie within one another here so deep that they cannot be read. Look for a bracket that is repeated, or for lines each indented further than the one before.',
  ),
  'yaml.dashes': plain('Three hyphens begin another file. One file is one exercise: take this line out.'),
  'yaml.sign': entry(
    ['sign'],
    'What begins with “{sign}” is not taken for text. Put the text on a line of its own under >-, indented.',
  ),
  'yaml.remark': entry(
    ['cut'],
    '“{cut}” is taken for a remark and left out of the text. Put the text on a line of its own under >-, or, if a remark is meant, write a space after the #.',
  ),
  'yaml.brace-open': plain(
    "A brace is opened here and not closed on this line. Write '}' where the step or the group ends.",
  ),
  'yaml.comma': plain(
    'Something is missing between these braces. In braces a comma stands after each field, and a colon with a space after each name: verb: cross, name: mark-1.',
  ),
  'yaml.colon-space': plain('After this colon a space is missing. A field is written “lesson: overlap”.'),
  'yaml.hyphen-space': plain('After this hyphen a space is missing. An entry of a list is written “- waist”.'),
  'yaml.hyphen-beside': plain(
    'A list does not begin beside the name of its field. Begin it on the next line, with a hyphen and a space before each entry; a text that begins with a hyphen stands there under >-.',
  ),
  'yaml.hyphen-missing': plain(
    'Before this first field of an entry its hyphen is missing. Each entry of a list begins with a hyphen and a space.',
  ),
  'yaml.two-colons': plain(
    'A second colon in one line is taken for another field. Put a text with a colon in it on a line of its own under >-, indented.',
  ),
  'yaml.beside': plain('Beside >- nothing may stand. Begin the text on the next line, indented.'),
  'yaml.loose': plain(
    'This line is no field. A field is its name, a colon and a space: “lesson: overlap”. A text of several lines begins under >- and stands further in than the name of its field.',
  ),
  'yaml.indent': plain(
    'This line does not stand where it belongs. Fields of one group begin exactly under each other, and each entry of a list begins with a hyphen and a space.',
  ),
  'yaml.other': entry(['why'], 'From here the file cannot be read ({why}). Look at this line and the one above it.'),
};
