/* Parts of the room that are fetched when they are first wanted. */
export const loadBackgroundTrials = () => import('./background-trials');
export const loadBackgroundWhatIfs = () => import('./background-what-ifs');
export const loadSheetClient = () => import('./client');
