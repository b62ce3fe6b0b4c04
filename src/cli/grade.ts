import { gradeCommand } from './grade-command.ts';
import { runCommand } from './speak.ts';

await runCommand(gradeCommand);
