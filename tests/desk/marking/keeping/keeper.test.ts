import { describe, expect, test } from 'vitest';
import { Keeper, type Keeping, type Work } from '../../../../src/desk/marking/keeping/keeper.ts';
import type { Shelf, Shelved } from '../../../../src/desk/marking/keeping/shelf.ts';

/** A shelf in memory that keeps its promises; `breaks` makes it a full or a forbidden one. */
class MemoryShelf implements Shelf {
  lying: Shelved | null = null;
  breaks: 'full' | 'forbidden' | null = null;

  look(): Promise<Shelved | null | 'forbidden'> {
    return Promise.resolve(this.breaks === 'forbidden' ? 'forbidden' : this.lying);
  }

  read(): Promise<Shelved | null | 'forbidden'> {
    return this.look();
  }

  put(work: Shelved, over: string | null): ReturnType<Shelf['put']> {
    if (this.breaks !== null) return Promise.resolve(this.breaks);
    if (this.lying !== null && this.lying.stamp !== over) return Promise.resolve('elsewhere');
    this.lying = work;
    return Promise.resolve('kept');
  }

  noted: { readonly work: Shelved; readonly over: readonly (string | null)[] } | null = null;

  note(work: Shelved, over: readonly (string | null)[]): void {
    this.noted = { work, over };
  }

  forget(): void {
    this.noted = null;
  }

  finish(): Promise<void> {
    return Promise.resolve();
  }

  remove(over: string): ReturnType<Shelf['remove']> {
    if (this.lying !== null && this.lying.stamp !== over) return Promise.resolve('elsewhere');
    this.lying = null;
    return Promise.resolve('removed');
  }
}

let stamps = 0;

/** A tab: its keeper, and how keeping goes by what it was last told. */
function tabOn(shelf: Shelf): { readonly keeper: Keeper; keeping: Keeping } {
  const tab = {
    keeping: { state: 'waiting' } as Keeping,
    keeper: new Keeper(
      shelf,
      () => {
        stamps += 1;
        return `stamp ${stamps}`;
      },
      (keeping) => {
        tab.keeping = keeping;
      },
    ),
  };
  return tab;
}

const work = (text: string): Work => ({ text, summary: null });

describe('the work of one tab', () => {
  test('is kept as it changes, once the shelf was looked at', async () => {
    const place = new MemoryShelf();
    const { keeper } = tabOn(place);
    await keeper.keep(work('too early'));
    expect(place.lying).toBeNull();
    await keeper.look();
    await keeper.keep(work('a'));
    await keeper.keep(work('b'));
    expect(place.lying?.text).toBe('b');
  });

  test('is kept in the order in which it changed, each over the one before, though keeping takes a while', async () => {
    const place = new MemoryShelf();
    const put = place.put.bind(place);
    place.put = async (one, over) => {
      await new Promise((done) => setTimeout(done, 2));
      return put(one, over);
    };
    const tab = tabOn(place);
    await tab.keeper.look();
    await Promise.all([tab.keeper.keep(work('a')), tab.keeper.keep(work('b'))]);
    expect([tab.keeping.state, place.lying?.text]).toEqual(['kept', 'b']);
  });

  test('is noted at once as the page is left, over whatever may lie there by then, and no more once it is kept', async () => {
    const place = new MemoryShelf();
    const tab = tabOn(place);
    await tab.keeper.wake();
    await tab.keeper.keep(work('a'));
    const lay = place.lying?.stamp;
    const put = place.put.bind(place);
    place.put = async (one, over) => {
      await new Promise((done) => setTimeout(done, 2));
      return put(one, over);
    };
    const under = tab.keeper.keep(work('b'));
    await Promise.resolve();
    const left = tab.keeper.leave(work('c'));
    expect(place.noted?.work.text).toBe('c');
    expect(place.noted?.over).toEqual([lay, expect.stringMatching(/^stamp/)]);
    await Promise.all([under, left]);
    expect([place.noted, place.lying?.text]).toEqual([null, 'c']);
  });

  test('is told not to be kept where there is no room, or keeping is forbidden, and is kept when there is room again', async () => {
    const place = new MemoryShelf();
    const tab = tabOn(place);
    await tab.keeper.look();
    place.breaks = 'full';
    await tab.keeper.keep(work('a'));
    expect(tab.keeping).toEqual({ state: 'full' });
    place.breaks = null;
    await tab.keeper.keep(work('b'));
    expect([tab.keeping.state, place.lying?.text]).toEqual(['kept', 'b']);
    place.breaks = 'forbidden';
    const other = tabOn(place);
    await other.keeper.look();
    expect(other.keeping).toEqual({ state: 'forbidden' });
    expect(await other.keeper.read()).toBeNull();
  });
});

describe('work of another day', () => {
  test('is offered, and nothing is kept over it before the teacher chose', async () => {
    const place = new MemoryShelf();
    place.lying = { stamp: 'old', summary: null, text: 'old work' };
    const tab = tabOn(place);
    await tab.keeper.look();
    expect(tab.keeping).toEqual({ state: 'offered', summary: null });
    await tab.keeper.keep(work('new'));
    expect(place.lying.text).toBe('old work');
    const found = await tab.keeper.read();
    if (found) tab.keeper.took(found);
    await tab.keeper.keep(work('old work, and new'));
    expect(place.lying.text).toBe('old work, and new');
  });

  test('is put away when the teacher says so, unless another tab has changed it since it was offered', async () => {
    const place = new MemoryShelf();
    place.lying = { stamp: 'old', summary: null, text: 'old work' };
    const tab = tabOn(place);
    await tab.keeper.look();
    place.lying = { stamp: 'newer', summary: null, text: 'newer work' };
    await tab.keeper.remove();
    expect([tab.keeping.state, place.lying?.text]).toEqual(['offered', 'newer work']);
    await tab.keeper.remove();
    expect([tab.keeping.state, place.lying]).toEqual(['kept', null]);
  });

  test('stays where it lies when it is damaged, until the teacher starts clean', async () => {
    const place = new MemoryShelf();
    place.lying = { stamp: 'old', summary: null, text: '{"oops' };
    const tab = tabOn(place);
    await tab.keeper.look();
    const found = await tab.keeper.read();
    if (found) tab.keeper.foundDamaged(found);
    await tab.keeper.look();
    await tab.keeper.keep(work('new'));
    expect([tab.keeping, place.lying.text]).toEqual([{ state: 'damaged', raw: '{"oops' }, '{"oops']);
    await tab.keeper.remove();
    await tab.keeper.keep(work('new'));
    expect(place.lying?.text).toBe('new');
  });
});

describe('two tabs', () => {
  test('do not write over each other: the one that comes second says so, and keeps nothing until the teacher chose', async () => {
    const place = new MemoryShelf();
    const [one, other] = [tabOn(place), tabOn(place)];
    await one.keeper.look();
    await one.keeper.keep(work('a'));
    await other.keeper.look();
    const found = await other.keeper.read();
    if (found) other.keeper.took(found);
    await other.keeper.keep(work('a, changed there'));
    await one.keeper.keep(work('a, changed here'));
    expect([one.keeping.state, place.lying?.text]).toEqual(['elsewhere', 'a, changed there']);
    await one.keeper.keepOver(work('a, changed here'));
    expect([one.keeping.state, place.lying?.text]).toEqual(['kept', 'a, changed here']);
    await other.keeper.look();
    expect(other.keeping.state).toBe('elsewhere');
  });

  test('that began at the same time: the second is offered what the first has kept', async () => {
    const place = new MemoryShelf();
    const [one, other] = [tabOn(place), tabOn(place)];
    await Promise.all([one.keeper.look(), other.keeper.look()]);
    await Promise.all([one.keeper.keep(work('one')), other.keeper.keep(work('other'))]);
    expect([one.keeping.state, other.keeping.state, place.lying?.text]).toEqual(['kept', 'offered', 'one']);
  });

  test('keep on where the other has put the work away', async () => {
    const place = new MemoryShelf();
    const [one, other] = [tabOn(place), tabOn(place)];
    await one.keeper.look();
    await one.keeper.keep(work('a'));
    await other.keeper.look();
    await other.keeper.remove();
    await one.keeper.keep(work('b'));
    expect([one.keeping.state, place.lying?.text]).toEqual(['kept', 'b']);
  });
});
