/** The table of commands: names and keys are its own, and keys are told apart as pressed. */
import { describe, expect, it } from 'vitest';
import { describeMenu } from '../../src/main/menu';
import { COMMANDS, commandNamed, keysOf } from '../../src/renderer/commands/commands';
import { isPressed, keysText, type Pressed } from '../../src/renderer/commands/keys';

const press = (key: string, more: Partial<Pressed> = {}): Pressed => ({
  key,
  code: '',
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...more,
});

describe('commands', () => {
  it('each have a name and words of their own', () => {
    expect(new Set(COMMANDS.map(({ name }) => name)).size).toBe(COMMANDS.length);
    expect(new Set(COMMANDS.map(({ label }) => label)).size).toBe(COMMANDS.length);
  });

  it.each(['browser', 'desktop'] as const)('each can be had by a key that no other has (%s)', (kind) => {
    const keys = COMMANDS.flatMap((command) => keysOf(command, kind));
    expect(new Set(keys).size).toBe(keys.length);
    expect(COMMANDS.filter((command) => keysOf(command, kind).length === 0)).toEqual([]);
  });

  it('know every command of the menu', () => {
    const sent: string[] = [];
    const click = (items: ReturnType<typeof describeMenu>) => {
      for (const item of items) {
        if (Array.isArray(item.submenu)) click(item.submenu);
        else if (item.click) (item.click as () => void)();
      }
    };
    click(describeMenu((name) => sent.push(name), false));
    expect(sent.length).toBeGreaterThan(8);
    expect(sent.filter((name) => commandNamed(name) === undefined)).toEqual([]);
  });
});

describe('keys', () => {
  it('are Ctrl here and the command key on a Mac', () => {
    expect(isPressed('Mod+S', press('s', { ctrlKey: true }), false)).toBe(true);
    expect(isPressed('Mod+S', press('s', { metaKey: true }), true)).toBe(true);
    expect(isPressed('Mod+S', press('s', { ctrlKey: true }), true)).toBe(false);
    expect(isPressed('Mod+S', press('s'), false)).toBe(false);
  });

  it('want exactly the keys held that are written', () => {
    expect(isPressed('Mod+Z', press('Z', { ctrlKey: true, shiftKey: true }), false)).toBe(false);
    expect(isPressed('Mod+Shift+Z', press('Z', { ctrlKey: true, shiftKey: true }), false)).toBe(true);
    expect(isPressed('F8', press('F8', { altKey: true }), false)).toBe(false);
  });

  it('are known by their place where Alt puts another character on them', () => {
    expect(isPressed('Alt+B', press('∫', { code: 'KeyB', altKey: true }), true)).toBe(true);
    expect(isPressed('Alt+1', press('¡', { code: 'Digit1', altKey: true }), true)).toBe(true);
    expect(isPressed('Alt+1', press('é', { code: 'Digit2', altKey: true }), false)).toBe(false);
  });

  it('are written as the system writes them', () => {
    expect(keysText('Mod+Shift+Z', false)).toBe('Ctrl+Shift+Z');
    expect(keysText('Mod+Shift+Z', true)).toBe('⌘⇧Z');
  });
});
