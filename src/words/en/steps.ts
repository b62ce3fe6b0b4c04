import { entry } from '../entry.ts';

/** A step as a drafting instruction: one message a form of `forms`, each field of the form a value. */
export const steps = {
  'step.pencil': entry(['at'], 'Mark by eye at {at}.'),
  'step.along': entry(['on', 'from', 'distance', 'toward'], 'Mark along {on} from {from}, {distance} {toward}.'),
  'step.cross': entry(['one', 'other', 'near'], 'Mark where {one} crosses {other}{near}.'),
  'step.compass': entry(['about', 'radius', 'on', 'near'], 'Mark {radius} from {about}, by compass, on {on}{near}.'),
  'step.foot': entry(['from', 'on'], 'Mark the foot of the square from {from} to {on}.'),
  'step.part': entry(['from', 'to', 'fraction'], 'Mark {fraction} of the way from {from} to {to}.'),
  'step.rule': entry(['from', 'to'], 'Rule a line through {from} and {to}.'),
  'step.square': entry(['to', 'through'], 'Line square to {to} through {through}.'),
  'step.parallel': entry(['to', 'distance', 'side'], 'Line parallel to {to}, {distance} {side}.'),
  'step.parallel-through': entry(['to', 'through'], 'Line parallel to {to} through {through}.'),
  'step.slant': entry(['to', 'angle', 'turn', 'through'], 'Line {angle} {turn} from {to} through {through}.'),
  'step.curve': entry(['through', 'leave', 'arrive'], 'Curve through {through}{leave}{arrive}.'),
  'step.offset': entry(['of', 'distance', 'side'], 'Curve parallel to {of}, {distance} {side}.'),
  'step.seam': entry(['run'], 'Seam joined from {run}.'),
  'step.fold': entry(['what', 'over'], 'Fold {what} over {over}.'),
  'step.swing': entry(['what', 'about', 'by', 'at', 'turn'], 'Swing {what} about {about} by {by}, measured {at} out, {turn}.'),
  'step.swing-angle': entry(['what', 'about', 'angle', 'turn'], 'Swing {what} about {about} through {angle} {turn}.'),
  'step.tape': entry(['along', 'from', 'to'], 'Tape along {along}{from}{to}.'),
  'step.tape-between': entry(['from', 'to'], 'Tape straight from {from} to {to}.'),
};
