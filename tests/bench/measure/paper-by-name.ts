import { registerHooks } from 'node:module';

// paper is typed by a name without an ending, which bundlers follow and Node does not.
const NAME = 'paper/dist/paper-core';
registerHooks({ resolve: (name, context, next) => next(name === NAME ? `${NAME}.js` : name, context) });
