import { authoring } from './authoring.ts';
import { authoringYaml } from './authoring-yaml.ts';
import { classWords } from './class.ts';
import { commands } from './commands.ts';
import { course } from './course.ts';
import { desk } from './desk.ts';
import { expressions } from './expressions.ts';
import { feedback } from './feedback.ts';
import { figures } from './figures.ts';
import { files } from './files.ts';
import { garment } from './garment.ts';
import { grader } from './grader.ts';
import { keeping } from './keeping.ts';
import { letsGo } from './lets-go.ts';
import { marked } from './marked.ts';
import { names } from './names.ts';
import { paper } from './paper.ts';
import { problems } from './problems.ts';
import { reading } from './reading.ts';
import { sets } from './sets.ts';
import { steps } from './steps.ts';
import { table } from './table.ts';
import { teacherMarks } from './teacher-marks.ts';
import { tools } from './tools.ts';
import { verdict } from './verdict.ts';
import { views } from './views.ts';
import { wanted } from './wanted.ts';
import { work } from './work.ts';

/** The English catalogue: every sentence of the interface, the grader, the readers and the commands. */
export const en = {
  ...names,
  ...garment,
  ...steps,
  ...expressions,
  ...problems,
  ...reading,
  ...grader,
  ...verdict,
  ...files,
  ...sets,
  ...authoring,
  ...authoringYaml,
  ...wanted,
  ...commands,
  ...table,
  ...tools,
  ...letsGo,
  ...marked,
  ...keeping,
  ...views,
  ...paper,
  ...course,
  ...figures,
  ...desk,
  ...work,
  ...teacherMarks,
  ...feedback,
  ...classWords,
};
