/** Keeps the window on its own page and without powers: no new windows, no other address, no permission, no stranger's call. */
import type { App, IpcMainInvokeEvent, Session } from 'electron';

/** Binds every page the program ever opens. */
export function guardPages(app: App): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
    contents.on('will-navigate', (event) => event.preventDefault());
    contents.on('will-redirect', (event) => event.preventDefault());
    contents.on('will-attach-webview', (event) => event.preventDefault());
  });
}

/** The screen needs no camera, place, notification or the like. */
export function denyPermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.setPermissionCheckHandler(() => false);
}

/** True of a call from the top frame of the program's own page. */
export function isOwnPage(event: IpcMainInvokeEvent, page: URL): boolean {
  const frame = event.senderFrame;
  if (!frame || frame.parent) return false;
  const { protocol, pathname } = new URL(frame.url);
  return protocol === page.protocol && pathname === page.pathname;
}
