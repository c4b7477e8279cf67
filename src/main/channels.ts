/** The names under which main and preload speak: one channel for calls, one for progress, one for events. */

export const callChannel = 'matwright:call';
export const progressChannel = 'matwright:progress';
export const eventChannel = 'matwright:event';
