import { expect, test } from 'vitest';
import { scenes } from '../../src/course/figures/index.ts';
import { paint, type Scene } from '../../src/course/figures/scene.ts';
import { widthOf } from '../../src/table/drawing/box.ts';
import { placeLabels } from '../../src/table/drawing/labels.ts';
import type { Message } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';

/** As wide as a figure stands on a phone, px. */
const NARROW = 340;

const speak = (words: Message): string => say(words, { language: 'en', unit: 'cm' });

/** The names that find no seat in a figure as it stands on a phone. */
function unseated(scene: Scene): readonly string[] {
  const drawing = paint(scene, 'cm');
  const seated = placeLabels(drawing, NARROW / widthOf(drawing.box), speak).map(({ text }) => text);
  return drawing.labels.map(({ words }) => speak(words)).filter((name) => !seated.includes(name));
}

test('on a phone a figure has the names its caption speaks of; only where marks crowd some are left to the text', () => {
  const lacking = [...scenes.values()]
    .filter(({ view }) => view?.alone !== true)
    .map((scene) => [scene.id, unseated(scene)] as const)
    .filter(([, names]) => names.length > 0);
  expect(Object.fromEntries(lacking)).toEqual({
    'lapel-design': ['lapel point as worn'],
    'worked-lapel': ['lapel point as worn'],
    'worked-notch': ['collarbone level', 'lapel point'],
    'worked-swing': ['neck edge mark'],
    'shoulder-drag': ['mark over the shoulder'],
    'worked-pattern': ['mark over the shoulder', 'outer edge of the top collar'],
    'form-trued': ['walked end'],
  });
});
