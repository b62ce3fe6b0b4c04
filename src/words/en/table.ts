import { entry, plain } from '../entry.ts';

/** The drafting table and every drawing of a sheet. */
export const table = {
  'table.label': entry(['name'], '{name}'),
  'table.shows-given': entry(['names'], 'On the sheet lies the block: {names}.'),
  'table.shows-made': entry(['names'], 'Drawn so far: {names}.'),
  'table.shows-nothing': plain('The sheet is empty.'),
};
