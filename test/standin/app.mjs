// The stand-in's `app`: readiness, the single-instance lock, and quitting in Electron's order.
import { EventEmitter } from 'node:events';
import { closeAllWindows, closeBrowser } from './browser-window.mjs';

class App extends EventEmitter {
  isPackaged = false;

  /** Electron's lock is taken by an earlier copy where the test says so. */
  requestSingleInstanceLock() {
    return process.env.STANDIN_SECOND !== '1';
  }

  async whenReady() {}

  /** Asks every window first; one that stays open stops the quitting. */
  quit() {
    setImmediate(async () => {
      this.emit('before-quit', {});
      if (!closeAllWindows()) return;
      this.emit('will-quit', {});
      await closeBrowser();
      this.emit('quit', {});
      process.exit(0);
    });
  }
}

export const app = new App();
