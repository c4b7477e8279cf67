/** What only a desktop can do for the screen: system dialogs, the file manager, closing the window. */
import type { HostCalls, HostInfo, Reply } from '../bridge';

type ShellCall = 'pickJob' | 'pickSavePath' | 'pickFolder' | 'showInFolder' | 'allowClose';

/** One handler for each call that needs a desktop. */
export type Shell = { readonly kind: HostInfo['kind'] } & {
  readonly [K in ShellCall]: (request: HostCalls[K]['request']) => Promise<Reply<HostCalls[K]['reply']>>;
};
