// Stands in for Electron where its program can't be had: the built main and preload run unchanged over Debian's Chromium.
// It proves the wiring (calls, events, menu, dialogs, guards), not Electron itself.
export { app } from './app.mjs';
export { BrowserWindow } from './browser-window.mjs';
export { dialog, Menu, screen, session, shell } from './desktop.mjs';
export { ipcMain } from './ipc.mjs';
