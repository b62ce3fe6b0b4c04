/*
 * The parts of JSXGraph that the table uses: a board drawn as SVG, points and curves. Its own entry also brings charts,
 * solids, readers of other programs' files and more, 90 kB of compressed script that no page here would run.
 */
import '../../../node_modules/jsxgraph/src/base/constants.js';
import '../../../node_modules/jsxgraph/src/base/board.js';
import '../../../node_modules/jsxgraph/src/options.js';
import '../../../node_modules/jsxgraph/src/jsxgraph.js';
import '../../../node_modules/jsxgraph/src/base/point.js';
import '../../../node_modules/jsxgraph/src/base/curve.js';

export { default as JXG } from '../../../node_modules/jsxgraph/src/jxg.js';
