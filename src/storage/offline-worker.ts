import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';

/** The files of the page, put in when it is built: see vite.config.ts. */
declare const filesOfThePage: { url: string; revision: string | null }[];

/*
 * Every file of the page is stored when it is first visited, and served from there from then on. A newer page is stored
 * beside it as soon as there is one, and takes its place only when no window of this one is open any more: nobody's page
 * changes while it is used.
 */
precacheAndRoute(filesOfThePage, { ignoreURLParametersMatching: [/./] });
cleanupOutdatedCaches();
