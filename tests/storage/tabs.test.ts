import { describe, expect, test } from 'vitest';
import { createTabBus } from '../../lib/storage/memory/memory-tabs';
import type { TabEvent } from '../../lib/storage/tab-lock';

const listen = () => {
  const heard: TabEvent[] = [];
  return { heard, listener: (event: TabEvent) => void heard.push(event) };
};

describe('tabs at one clinic', () => {
  test('have one writer; the reader hears of its changes and follows when it crashes', async () => {
    const bus = createTabBus();
    const [a, b] = [bus.open(), bus.open()];
    const [ears1, ears2] = [listen(), listen()];
    const first = await a.tabs.join('clinic', ears1.listener);
    const second = await b.tabs.join('clinic', ears2.listener);
    expect([first.isWriter(), second.isWriter()]).toEqual([true, false]);
    first.announceChanged(7);
    expect(ears2.heard).toEqual([{ kind: 'changed', revision: 7 }]);
    expect(ears1.heard).toEqual([]);
    a.crash();
    expect([first.isWriter(), second.isWriter()]).toEqual([false, true]);
    expect(ears2.heard.at(-1)).toEqual({ kind: 'writer' });
  });

  test('can take the writing over, and get it back when the other leaves', async () => {
    const bus = createTabBus();
    const ears = listen();
    const first = await bus.open().tabs.join('clinic', ears.listener);
    const second = await bus.open().tabs.join('clinic', () => undefined);
    await second.takeOver();
    expect([first.isWriter(), second.isWriter()]).toEqual([false, true]);
    await second.leave();
    expect(first.isWriter()).toBe(true);
    expect(ears.heard).toEqual([{ kind: 'taken-over' }, { kind: 'writer' }]);
  });

  test('at two clinics do not stand in each other’s way', async () => {
    const bus = createTabBus();
    const one = await bus.open().tabs.join('a', () => undefined);
    const other = await bus.open().tabs.join('b', () => undefined);
    expect([one.isWriter(), other.isWriter()]).toEqual([true, true]);
  });

  test('do not clean while one of them is between file and manifest', async () => {
    const bus = createTabBus();
    const [a, b] = [bus.open().tabs, bus.open().tabs];
    let finish: () => void = () => undefined;
    const keeping = a.whileKeeping(() => new Promise<void>((resolve) => (finish = resolve)));
    await Promise.resolve();
    expect(await b.ifNobodyKeeps(() => Promise.resolve('cleaned'))).toBeUndefined();
    finish();
    await keeping;
    expect(await b.ifNobodyKeeps(() => Promise.resolve('cleaned'))).toBe('cleaned');
  });
});
