import { referenceCommand } from './reference-command.ts';
import { runCommand } from './speak.ts';

await runCommand(referenceCommand);
