import type whole from 'jsxgraph';

/** JSXGraph as far as the table uses it; its types are the package's own. */
export declare const JXG: typeof whole;
