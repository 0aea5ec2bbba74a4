/* Parts of the room that are fetched when they are first wanted. */
export const loadAddCell = () => import('./AddCell.svelte');
export const loadAddCheck = () => import('./AddCheck.svelte');
export const loadChecks = () => import('./Checks.svelte');
export const loadEmpty = () => import('./Empty.svelte');
export const loadSidePanel = () => import('./side-panel/SidePanel.svelte');
