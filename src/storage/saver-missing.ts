/** What is said where the part of the page that saves did not come: the one message that the page itself has to know. */
export const saverMissing =
  'Not saved yet: the part of the page that saves did not load. It is tried again; until then, save a file before you close this window.';
