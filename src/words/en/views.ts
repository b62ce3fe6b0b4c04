import { entry, plain } from '../entry.ts';

/** Views of a draft: as it is worn, how its collar will roll, and its collar walked along the neck seam. */
export const views = {
  'views.row': plain('Look at the draft'),
  'views.worn': plain('As it is worn'),
  'views.roll': plain('How it will roll'),
  'views.walk': plain('Walk the collar'),
  'views.step-back': plain('Step back'),
  'views.step-on': plain('Step on'),
  'views.move': plain('Show it move'),
  'views.length': entry(['length'], '{length}'),

  // As it is worn
  'views.lapel': plain('lapel'),
  'views.collar': plain('collar'),
  'views.worn-shows': entry(
    ['flaps', 'over'],
    'The front from above: {flaps, select, both {lapel and collar, turned} lapel {the lapel, turned} other {the collar, turned}} over the {over} onto the body.',
  ),
  'views.worn-shows-flat': entry(
    ['flaps', 'over'],
    'The front from above, flat as it is cut: {flaps, select, both {lapel and collar lie} lapel {the lapel lies} other {the collar lies}} in front of the {over}.',
  ),
  'views.worn-shows-part': entry(
    ['flaps', 'over', 'angle'],
    'The front from above: {flaps, select, both {lapel and collar stand} lapel {the lapel stands} other {the collar stands}} up on the {over}, turned over by {angle}.',
  ),
  'views.worn-flat': plain('Flat, as it is cut.'),
  'views.worn-part': entry(['angle'], 'Turned over by {angle} of 180°.'),
  'views.worn-over': plain('Turned over, as it is worn.'),
  'views.notch-below': entry(['notch', 'off', 'level'], 'Worn, the {notch} sits {off} below the {level}.'),
  'views.notch-on': entry(['notch', 'level'], 'Worn, the {notch} sits on the {level}.'),
  'views.notch-above': entry(
    ['notch', 'off', 'level'],
    'Worn, the {notch} sits {off} above the {level}: there it crowds the neck.',
  ),
  'views.off-below': entry(['off'], '{off} below'),
  'views.off-above': entry(['off'], '{off} above'),
  'views.worn-until': plain('Past the shoulder the collar goes round the neck, and a sheet of paper cannot show it.'),

  // How it will roll
  'views.roll-lies': plain('It will lie.'),
  'views.roll-long-enough': plain('Its outer edge is long enough, but its width is not right.'),
  'views.roll-pulls': entry(['off'], 'It will pull: the outer edge is {off} too short.'),
  'views.roll-ripples': entry(['off'], 'It will ripple: the outer edge is {off} too long.'),
  'views.roll-why': entry(
    ['verdict', 'needed', 'drawn', 'which'],
    'From the centre back to the shoulder the outer edge has to be {needed} longer than the neck edge, and it is {which, select, same {not longer at all} longer {{drawn} longer} other {{drawn} shorter}}.{verdict, select, lies {} irons {} pulls { Stress lines run across the shoulder.} other { It stands off in waves, and the stand drops.}}',
  ),
  'views.roll-edge': entry(
    ['cover', 'wanted'],
    'An edge of this length lies {cover} below the neck seam, where {wanted} is wanted.',
  ),
  'views.roll-bare': entry(
    ['wanted'],
    'An edge of this length does not come down over the neck seam at all, where {wanted} below it is wanted.',
  ),
  'views.roll-stand': entry(['stand', 'wanted'], 'That leaves a stand of {stand} in place of {wanted}.'),
  'views.roll-ironed': entry(['off'], 'It has to be stretched: the iron has to work {off} into the outer edge.'),
  'views.roll-unironed': plain(
    'This order has the edge worked with the iron. In cloth that is not stretched it would pull.',
  ),
  'views.roll-uncovered': plain('The fall is no longer than the stand: turned down, it does not cover the neck seam.'),
  'views.roll-strip': plain('No outer edge is drawn yet. This is the strip as it has been swung.'),
  'views.roll-width': entry(
    ['which', 'width', 'wanted', 'off'],
    'At the centre back the collar is {width} wide, where stand and fall together are {wanted}. Turned down over its stand, its edge comes to lie {off} {which, select, narrow {higher} other {lower}} than the picture has it.',
  ),
  'views.roll-sum': entry(
    ['fall', 'stand', 'turn', 'needed'],
    'Needed: the fall less the stand, {fall} − {stand}, times the {turn} that the neck seam turns through, taken in radians. That is {needed}.',
  ),
  'views.roll-shows': entry(
    ['verdict'],
    'The neck seam with back and front joined at the shoulder, and beside it the outer edge, turned down: {verdict, select, lies {it lies where it should} pulls {it lies too near the seam, and stress lines run across the shoulder} other {it is too long and stands off in waves}}.',
  ),
  'views.roll-table': plain('How much longer than the neck edge the outer edge is, from the centre back'),
  'views.roll-as-far': plain('as far as'),
  'views.roll-needed': plain('needed'),
  'views.roll-drawn': plain('drawn'),
  'views.roll-part': entry(
    ['part'],
    '{part, select, 1 {a quarter of the way} 2 {half way} 3 {three quarters} other {the shoulder}}',
  ),
  'views.neck-seam': plain('neck seam'),
  'views.edge-right': plain('where it should lie'),
  'views.edge-drawn': plain('where it will lie'),
  'views.edge-both': plain('outer edge, turned down'),

  // Walking
  'views.walk-shows': entry(
    ['walked', 'of'],
    'The garment’s neck seam with the shoulder joined, and the collar laid against it edge to edge, walked {walked} of {of} from the centre back.',
  ),
  'views.walk-meets': entry(['within'], 'It walks: every match mark meets its own, within {within}.'),
  'views.walk-over': entry(
    ['from', 'to', 'off', 'which'],
    'From the {from} to the {to} the collar is {off} {which, select, long {too long} other {too short}}.',
  ),
  'views.walk-past': entry(['mark', 'off'], 'Past the {mark} {off} of the collar is left over.'),
  'views.walk-begin': entry(['mark'], 'Laid together at the {mark}.'),
  'views.walk-at': entry(
    ['mark', 'off', 'where'],
    'Walked to the {mark}. {where, select, meets {The marks meet.} past {The collar’s mark lies {off} past the seam’s.} other {The collar’s mark lies {off} short of the seam’s.}}',
  ),
  'views.walk-table': plain('Collar and neck seam between match marks'),
  'views.walk-stretch': plain('between'),
  'views.walk-between': entry(['from', 'to'], '{from} and {to}'),
  'views.walk-seam': plain('garment'),
  'views.walk-collar': plain('collar'),
  'views.walk-left': plain('left over'),
};
