import { entry, plain } from '../entry.ts';

/** What the marker writes. A target's name comes as `{target}`; what is off, and which way, as `{way}`. */
export const grader = {
  'grader.problem': entry(['step', 'problem'], 'Step {step}: {problem}'),
  'grader.right': entry(['target'], 'Your {target} is right.'),
  'grader.right-figure': entry(['target', 'figure'], 'Your {target} is right: {figure}.'),
  'figure.from': entry(['measured', 'from'], '{measured} from the {from}'),
  'figure.level': entry(['measured'], '{measured} above the waist'),
  'figure.size': entry(['measured'], '{measured}'),
  'figure.walk': entry(['measured', 'expected'], 'it measures {measured}, and the seam it is walked along {expected}'),
  'grader.right-judged': entry(
    ['target', 'judged', 'count'],
    'Your {target} is right, as seen from your own {judged}: {count, plural, one {that slip was} other {those slips were}} marked there and not counted again.',
  ),
  'grader.missing': entry(['target'], 'Nothing on the sheet is pointed out as the {target} yet.'),
  'grader.unclaimed': entry(
    ['target', 'step'],
    'Step {step} makes a right {target}, but is not pointed out as it. Say of step {step} that it is your {target}; nothing need be drawn again.',
  ),
  'grader.not-made': entry(
    ['target', 'step', 'problem'],
    'Your {target} (step {step}) could not be drawn. {problem} Mend step {step} first.',
  ),
  'grader.not-made-yet': entry(
    ['target', 'step', 'problem'],
    'Your {target} (step {step}) could not be drawn. {problem}',
  ),
  'grader.other-rule-why': plain(
    'As drafting that is no fault. But a house keeps to one rule, so that whatever is cut there goes together.',
  ),
  'grader.claimed-twice': entry(
    ['target', 'steps', 'last'],
    'Steps {steps} answer the same target, the {target}; the later one, step {last}, counts. Take the answer off the others.',
  ),
  'grader.wrong-kind': entry(
    ['target', 'found', 'wanted'],
    'What you point out as the {target} is a {found}; a {wanted} is wanted.',
  ),
  'grader.other-rule': entry(
    ['target', 'other', 'ours'],
    'Your {target} is where another house has it: there, {other}. By the house rule on this order, {ours}.',
  ),
  'grader.wrong-unit': entry(
    ['target', 'step', 'wrote', 'meant'],
    'Your {target} is off by a unit, and by nothing else: step {step} says {wrote}, and with {meant} it would be right. Write the unit that the order has, or the name of the measure in place of a figure.',
  ),
  'grader.added': entry(
    ['target', 'step', 'added'],
    'Without the {added} added in step {step} your {target} would be right. If that is a seam allowance, leave it out: a draft is net, its lines are the ones that are sewn, and the allowance comes when the pattern is cut.',
  ),
  'grader.wrong-way': entry(
    ['target', 'step', 'wrote', 'meant'],
    'Your {target} went the opposite way, and has no other fault: step {step} goes {wrote}. Let it go {meant}.',
  ),
  'grader.taken-for': entry(['target', 'other'], 'What you point out as the {target} is the {other}.'),
  'grader.exchanged': entry(
    ['target', 'other'],
    'You have exchanged the {target} and the {other}: what you point out as the one is the other. Nothing need be drawn again; point each out as what it is.',
  ),
  'grader.unreadable': entry(
    ['target'],
    'Your {target} runs so far off that it cannot be measured against the right one.',
  ),
  'grader.across': entry(
    ['target', 'from', 'angle'],
    'Your {target} runs across the {from}, {angle} to it, and has no one distance from it.',
  ),
  'grader.crosswise': entry(['target', 'angle'], 'Your {target} runs across the right one, {angle} to it.'),
  'grader.upright': entry(['target', 'angle'], 'Your {target} stands {angle} to the level, and has no one height.'),
  'grader.at-right-angles': plain('at right angles'),
  'grader.at-angle': entry(['angle'], 'at {angle}'),
  'grader.near': entry(
    ['marks', 'of'],
    'That is close, and earns {marks} of {of, plural, one {# mark} other {# marks}}.',
  ),
  'off.under-millimetre': plain('under 1 mm'),
  'off.under-sixteenth': plain('under 1/16 in'),
  'off.under-tenth-degree': plain('under 0.1°'),

  'grader.both-ways': entry(['one', 'other'], '{one} and {other}'),
  'grader.no-way': plain('a hair off'),
  'grader.too-high': entry(['off'], '{off} too high'),
  'grader.too-low': entry(['off'], '{off} too low'),
  'grader.too-near-tip': entry(['off'], '{off} too far toward the shoulder tip'),
  'grader.too-near-edge': entry(['off'], '{off} too far toward the front edge'),

  'grader.too-far': entry(['off'], '{off} too far from it'),
  'grader.too-near': entry(['off'], '{off} too near to it'),

  'grader.position': entry(['target', 'way'], 'Your {target} lies {way}.'),
  'grader.distance-on': entry(['target', 'from', 'way'], 'Your {target} should lie on the {from}; it is {way}.'),
  'grader.distance': entry(
    ['target', 'from', 'measured', 'expected', 'way'],
    'Your {target} is {measured} from the {from}, where {expected} is wanted: {way}.',
  ),
  'grader.distance-none': entry(
    ['target', 'from', 'expected'],
    'Your {target} lies on the {from} itself, where {expected} from it is wanted.',
  ),
  'grader.distance-at': entry(
    ['target', 'from', 'spot', 'measured', 'expected', 'way'],
    'Your {target} is {measured} from the {from} at the {spot}, where {expected} is wanted: {way}.',
  ),
  'grader.distance-across': entry(
    ['target', 'from', 'measured', 'expected'],
    'Your {target} is {measured} from the {from}, on the wrong side of it; {expected} on the other side is wanted.',
  ),
  'grader.line': entry(['target', 'spot', 'way'], 'Your {target} strays most at the {spot}: there it runs {way}.'),
  'grader.square': entry(['target', 'to', 'off'], 'Your {target} is {off} out of square with the {to}.'),
  'grader.along': entry(
    ['target', 'to', 'off'],
    'Your {target} should run as the {to} does; it is {off} away from that.',
  ),
  'grader.square-leaning': entry(
    ['target', 'to', 'off', 'lean'],
    'Your {target} is {off} out of square with the {to}: it leans {lean}.',
  ),
  'grader.along-leaning': entry(
    ['target', 'to', 'off', 'lean'],
    'Your {target} should run as the {to} does; it leans {off} {lean}.',
  ),
  'lean.front': plain('toward the front edge at the top'),
  'lean.tip': plain('toward the shoulder tip at the top'),
  'lean.rises': plain('up toward the shoulder tip'),
  'lean.falls': plain('down toward the shoulder tip'),
  'grader.angle': entry(
    ['target', 'to', 'measured', 'expected'],
    'Your {target} makes {measured} with the {to}, where {expected} is wanted.',
  ),
  'grader.level': entry(['target', 'way'], 'Your {target} is {way}.'),
  'grader.too-long': entry(
    ['target', 'measured', 'expected', 'off'],
    'Your {target} measures {measured}, where {expected} is wanted: {off} too long.',
  ),
  'grader.too-short': entry(
    ['target', 'measured', 'expected', 'off'],
    'Your {target} measures {measured}, where {expected} is wanted: {off} too short.',
  ),
  'grader.angle-wide': entry(
    ['target', 'measured', 'expected', 'off'],
    'Your {target} comes to {measured}, where {expected} is wanted: {off} too much.',
  ),
  'grader.angle-narrow': entry(
    ['target', 'measured', 'expected', 'off'],
    'Your {target} comes to {measured}, where {expected} is wanted: {off} too little.',
  ),
  'grader.walk-over': entry(
    ['target', 'measured', 'expected', 'off'],
    'Walked along its seam, your {target} has {off} left over: it measures {measured} and the seam {expected}.',
  ),
  'grader.walk-short': entry(
    ['target', 'measured', 'expected', 'off'],
    'Walked along its seam, your {target} comes {off} short: it measures {measured} and the seam {expected}.',
  ),
  'grader.through': entry(['target', 'spot', 'way'], 'Your {target} should pass the {spot}; there it runs {way}.'),
  'grader.bow': entry(
    ['target', 'measured', 'expected'],
    'Your {target} bows {measured} from the straight, where {expected} is wanted.',
  ),
  'grader.shape': entry(['target', 'off'], 'Your {target} strays up to {off} from the right curve.'),
  'grader.smoothness': entry(
    ['target', 'off'],
    'Your {target} has a corner of {off} in it, where it should run smooth.',
  ),
  'grader.wavers': entry(
    ['target', 'measured', 'off'],
    'Your {target} bends to and fro: it bends back {measured}, {off} more than it should.',
  ),
  'grader.wavers-alone': entry(
    ['target', 'measured'],
    'Your {target} bends to and fro: it bends back by {measured}, and should not bend back at all.',
  ),
  'grader.inflection': entry(
    ['target', 'measured', 'expected'],
    'The slight reverse bend of your {target} is {measured} deep, where {expected} is wanted.',
  ),
  'grader.bow-range': entry(
    ['target', 'measured', 'bound'],
    'Your {target} bows {measured} from the straight, and {bound} is the most allowed to that side.',
  ),
  'grader.bow-side': entry(
    ['target', 'measured'],
    'Your {target} bows {measured} from the straight to the wrong side; none is allowed there.',
  ),
  'grader.wavers-range': entry(
    ['target', 'measured', 'bound'],
    'Your {target} bends to and fro: its bends back add up to {measured}, and {bound} is the most allowed.',
  ),
  'grader.shape-range': entry(
    ['target', 'measured', 'bound'],
    'Your {target} strays up to {measured} from the run that its marks ask for, and {bound} is left to taste.',
  ),
  'grader.bend-stretch': entry(
    ['target', 'stretch', 'measured', 'bound'],
    'Your {target} turns too sharply in one place: within {stretch} by {measured} more than its marks ask for, and {bound} is left to taste.',
  ),
  'grader.bend-whole': entry(
    ['target', 'measured', 'bound'],
    'Your {target} turns about too much: in all by {measured} more than its marks ask for, and {bound} is left to taste.',
  ),
  'grader.through-range': entry(
    ['target', 'spot', 'measured', 'bound'],
    'Your {target} passes {measured} from the {spot}; {bound} is the most allowed.',
  ),
  'grader.from-least': entry(
    ['target', 'from', 'measured', 'bound'],
    'Your {target} is {measured} from the {from}; at least {bound} is wanted.',
  ),
  'grader.from-most': entry(
    ['target', 'from', 'measured', 'bound'],
    'Your {target} is {measured} from the {from}; at most {bound} is wanted.',
  ),
  'grader.least': entry(
    ['target', 'measured', 'least'],
    'Your {target} comes to {measured}; at least {least} is wanted.',
  ),
  'grader.most': entry(['target', 'measured', 'most'], 'Your {target} comes to {measured}; at most {most} is wanted.'),

  'grader.judged-from-right': entry(
    ['judged', 'count'],
    '(Your {judged} {count, plural, one {is right, and this was judged from it} other {are right, and this was judged from them}}.)',
  ),
  'grader.judged-from-slip': entry(
    ['judged', 'count'],
    '(This was judged from your own {judged}, so {count, plural, one {that slip is} other {those slips are}} not counted twice.)',
  ),

  'kind.point': plain('point'),
  'kind.line': plain('line'),
  'kind.curve': plain('curve'),
  'kind.length': plain('length'),
  'kind.angle': plain('angle'),
};
