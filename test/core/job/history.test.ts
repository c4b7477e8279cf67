/** Undo and redo: nothing the user made is lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commit, redo, settle, startHistory, undo, type History } from '../../../src/core/job/history';
import { written } from '../open';

const titled = (title: string) => written({ title });
const title = (history: History) => history.present.written.title;

describe('steps', () => {
  const three = ['a', 'b', 'c'].reduce(
    (history, name) => commit(history, titled(name), `Write ${name}`),
    startHistory(titled('')),
  );

  it('go back and forward one by one, with their labels', () => {
    expect(title(undo(three))).toBe('b');
    expect(undo(three).present.label).toBe('Write b');
    expect(title(undo(undo(undo(three))))).toBe('');
    expect(title(redo(undo(three)))).toBe('c');
  });

  it('stop at either end', () => {
    const start = startHistory(titled(''));
    expect(undo(start)).toBe(start);
    expect(redo(three)).toBe(three);
  });

  it('an edit after undo leaves the old future behind', () => {
    const other = commit(undo(three), titled('d'), 'Write d');
    expect(other.future).toEqual([]);
    expect(title(undo(other))).toBe('b');
  });

  it('an edit that changes nothing leaves history as it is, redo included', () => {
    const back = undo(three);
    expect(commit(back, titled('b'), 'Nothing')).toBe(back);
    expect(title(redo(commit(back, { ...titled('b') }, 'Nothing')))).toBe('c');
  });
});

describe('merging', () => {
  it('makes typing in one field one step', () => {
    const typed = ['F', 'Fe', 'Fern'].reduce(
      (history, name) => commit(history, titled(name), 'Title', 'title'),
      startHistory(titled('')),
    );
    expect(title(typed)).toBe('Fern');
    expect(title(undo(typed))).toBe('');
    expect(typed.past).toHaveLength(1);
  });

  it('ends with another key, with no key, and when settled', () => {
    const first = commit(startHistory(titled('')), titled('a'), 'Title', 'title');
    expect(commit(first, titled('b'), 'Notes', 'notes').past).toHaveLength(2);
    expect(commit(first, titled('b'), 'Notes').past).toHaveLength(2);
    expect(commit(settle(first), titled('b'), 'Title', 'title').past).toHaveLength(2);
    expect(settle(settle(first))).toEqual(settle(first));
  });

  it('does not reach over an undo', () => {
    const two = commit(commit(startHistory(titled('')), titled('a'), 'Title', 'title'), titled('b'), 'Notes');
    const after = commit(undo(two), titled('c'), 'Title', 'title');
    expect(title(undo(after))).toBe('a');
  });
});

describe('any course of edits', () => {
  const courses = fc.array(
    fc.record({ title: fc.string({ maxLength: 3 }), key: fc.constantFrom(undefined, 'title', 'notes') }),
    { maxLength: 30 },
  );
  const after = (course: readonly { title: string; key: string | undefined }[]) =>
    course.reduce(
      (history, step) => commit(history, titled(step.title), step.title, step.key),
      startHistory(titled('')),
    );

  it('undo then redo is identity, however far', () => {
    fc.assert(
      fc.property(courses, fc.nat(40), (course, times) => {
        const history = after(course);
        const far = Math.min(times, history.past.length);
        let moved = history;
        for (let step = 0; step < far; step += 1) moved = undo(moved);
        for (let step = 0; step < far; step += 1) moved = redo(moved);
        expect(moved).toEqual(history);
      }),
    );
  });

  it('undone to the end is the job as it was opened', () => {
    fc.assert(
      fc.property(courses, (course) => {
        let history = after(course);
        while (history.past.length > 0) history = undo(history);
        expect(history.present).toEqual({ written: titled(''), label: 'Opened' });
      }),
    );
  });

  it('keeps a thousand steps and no more', () => {
    let history = startHistory(titled(''));
    for (let step = 0; step < 1100; step += 1) history = commit(history, titled(String(step)), 'Step');
    expect(history.past).toHaveLength(1000);
    expect(title(undo(history))).toBe('1098');
  });
});
