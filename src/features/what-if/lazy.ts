/* Parts of the room that are fetched when they are first wanted. */
export const loadOverPage = () => import('./OverPage.svelte');
export const loadWhatIfs = () => import('./WhatIfs.svelte');
