import { setCommand } from './set-command.ts';
import { runCommand } from './speak.ts';

await runCommand(setCommand);
