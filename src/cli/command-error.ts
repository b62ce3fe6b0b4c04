/** Something the person at the command line can mend; its message is all they need to read. */
export class CommandError extends Error {
  override readonly name: string = 'CommandError';
}

/** A command that was called wrongly: the message, and then how it is called. */
export class UsageError extends CommandError {
  override readonly name: string = 'UsageError';
}
