import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollReport } from '../../../src/garment/collar/roll-report.ts';
import { people } from '../../../src/garment/people.ts';
import { paperOf, paperPoint } from '../../geometry/oracle.ts';
import { drafted, drawnCollar, lapel, swung, toRollLine, usual, wholeCollar } from './collar-draft.ts';

const within = 3;
const person = fc.constantFrom(...people);
const style = fc.record({
  stand: fc.double({ min: 20, max: 45, noNaN: true }),
  cover: fc.double({ min: 2, max: 25, noNaN: true }),
  'break-rise': fc.double({ min: 0, max: 150, noNaN: true }),
  overlap: fc.double({ min: 20, max: 100, noNaN: true }),
});

function report(steps: Parameters<typeof drafted>[0], on: Partial<typeof usual> = {}, figure = people[0]?.figure) {
  const made = rollReport(drafted(steps, on, figure), within);
  if (!made) throw new Error('The collar cannot be judged.');
  return made;
}

describe('the ideal swung strip', () => {
  // Steiner: the swing (fall - stand) x phi at any radius, brought to the collar's width, opens exactly what is needed.
  test('has the outer edge it needs, wherever the swing is measured', () => {
    fc.assert(
      fc.property(person, style, fc.double({ min: 20, max: 250, noNaN: true }), ({ figure }, given, radius) => {
        const { cover, ...rest } = given;
        const swing = swung(`edge-ease * (${radius.toFixed(4)} mm / (stand + fall))`, `${radius.toFixed(4)} mm`);
        const made = report([...toRollLine, ...swing], { ...rest, fall: given.stand + cover }, figure);
        expect(made.drawn).toBeCloseTo(made.needed, 6);
        expect(made.verdict).toBe('lies');
        expect(made.settles.cover).toBeCloseTo(cover, 6);
        expect(made.settles.stand).toBeCloseTo(given.stand, 6);
      }),
      { numRuns: 60 },
    );
  });

  /** The strip swung by a part of what it needs, the wrong way where that is negative. */
  function swungBy(part: number, figure: (typeof people)[number]['figure']) {
    const turn = part < 0 ? 'anticlockwise' : 'clockwise';
    return report([...toRollLine, ...swung(`edge-ease * ${Math.abs(part)}`, undefined, turn)], {}, figure);
  }

  test('pulls when it is swung less and ripples when more, more so the further off it is', () => {
    const parts = [-0.5, -0.1, 0.1, 0.4, 0.7, 1, 1.3, 1.6, 2];
    fc.assert(
      fc.property(person, ({ figure }) => {
        const made = parts.map((part) => swungBy(part, figure));
        const gains = made.map(({ drawn }) => drawn);
        expect(gains).toEqual(gains.toSorted((a, b) => a - b));
        expect(new Set(gains).size).toBe(gains.length);
        const expected = ['pulls', 'pulls', 'pulls', 'pulls', 'pulls', 'lies', 'ripples', 'ripples', 'ripples'];
        expect(made.map(({ verdict }) => verdict)).toEqual(expected);
      }),
      { numRuns: 12 },
    );
  });

  // The edge of a strip of width w, turned through an angle, gains w times the angle: an arc.
  test('gains in the measure of its swing', () => {
    fc.assert(
      fc.property(person, fc.double({ min: 0.01, max: 3, noNaN: true }), ({ figure }, part) => {
        const { drawn, needed } = swungBy(Number(part.toFixed(6)), figure);
        expect(drawn).toBeCloseTo(needed * Number(part.toFixed(6)), 6);
      }),
      { numRuns: 30 },
    );
  });

  test('not swung at all gains nothing', () => {
    const steps = [...toRollLine, ...swung('edge-ease', '1000000 mm')];
    expect(report(steps).drawn).toBeCloseTo(0, 2);
  });
});

describe('the report', () => {
  // The turn of the joined seam: 90 degrees, less the slopes of front and back, plus the lean (docs/method.md).
  test('needs the fall less the stand, times what the joined neck seam turns through', () => {
    fc.assert(
      fc.property(person, style, ({ figure }, { cover, ...rest }) => {
        const sheet = drafted([...toRollLine, ...swung()], { ...rest, fall: rest.stand + cover }, figure);
        const roll = sheet.shapes.get('roll-line');
        if (roll?.kind !== 'line') throw new Error('There is no roll line.');
        const lean = Math.atan2(roll.line.direction.x, roll.line.direction.y);
        const turn = Math.PI / 2 - (2 * figure['shoulder-slope'] * Math.PI) / 180 + lean;
        expect(rollReport(sheet, within)?.needed).toBeCloseTo(cover * turn, 6);
      }),
      { numRuns: 40 },
    );
  });

  test.each(people)('judges the collar drawn for $name: it lies', ({ figure }) => {
    const made = report(wholeCollar, {}, figure);
    expect(made.edges.drawn).toBe(true);
    expect(made.verdict).toBe('lies');
    expect(Math.abs(made.drawn - made.needed)).toBeLessThan(1);
  });

  // paper.js measures the same stretch of the same edge.
  test('measures the outer edge as another library does', () => {
    const { edges, stations } = report(wholeCollar);
    const last = stations.at(-1);
    if (!last) throw new Error('There are no stations.');
    const along = (path: typeof edges.outer, p: typeof last.across.outer) => {
      const measured = paperOf(path);
      return measured.getOffsetOf(measured.getNearestPoint(paperPoint(p)));
    };
    expect(last.drawn).toBeCloseTo(along(edges.outer, last.across.outer) - along(edges.neck, last.across.neck), 3);
  });

  test('goes round from nothing at the centre back to the whole at the shoulder', () => {
    const { stations, needed, drawn } = report(wholeCollar);
    expect(stations.map(({ part }) => part)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(stations[0]).toMatchObject({ needed: 0, drawn: 0 });
    expect(stations.at(-1)).toMatchObject({ needed, drawn });
    for (const [index, { needed: need, drawn: has }] of stations.entries()) {
      const before = stations[index - 1];
      if (!before) continue;
      expect(need).toBeGreaterThan(before.needed);
      expect(has).toBeGreaterThan(before.drawn);
    }
  });

  test('a drawn collar that was not swung pulls; swung too far it ripples', () => {
    const flat = [...toRollLine, ...lapel, ...swung('edge-ease', '100000 mm'), ...drawnCollar];
    expect(report(flat).verdict).toBe('pulls');
    const wide = [...toRollLine, ...lapel, ...swung('edge-ease * 2'), ...drawnCollar];
    expect(report(wide).verdict).toBe('ripples');
    // What is too long lies further down, and the stand gives it.
    expect(report(wide).settles.cover).toBeGreaterThan(15);
    expect(report(wide).settles.stand).toBeLessThan(30);
  });

  test('takes its threshold from whoever asks', () => {
    const sheet = drafted([...toRollLine, ...swung('edge-ease - 2 mm')]);
    expect(rollReport(sheet, 3)?.verdict).toBe('lies');
    expect(rollReport(sheet, 1)?.verdict).toBe('pulls');
  });

  test('a fall no longer than the stand needs nothing, and a swing is too much', () => {
    expect(report([...toRollLine, ...swung('8 mm')], { fall: usual.stand }).needed).toBeCloseTo(0, 9);
    expect(report([...toRollLine, ...swung('8 mm')], { fall: usual.stand }).verdict).toBe('ripples');
  });

  test('waits until there is a collar to judge', () => {
    expect(rollReport(drafted([...toRollLine, ...lapel]), within)).toBeNull();
  });
});
