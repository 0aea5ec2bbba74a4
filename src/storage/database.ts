import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { EarlierState, KeptNotebook } from './stored-notebook';

/** What is kept on the device. Texts stand apart from what the list shows, so that a list reads no texts. */
export interface Kept extends DBSchema {
  notebooks: { key: string; value: KeptNotebook };
  texts: { key: string; value: string };
  states: { key: [notebook: string, at: number]; value: EarlierState };
  stateTexts: { key: [notebook: string, at: number]; value: string };
  page: { key: 'last' | 'build' | 'order'; value: string };
}

export type Database = IDBPDatabase<Kept>;

const name = 'easewright';
const version = 1;

/**
 * Opens the database, and makes it on a first visit.
 *
 * @throws DOMException where the browser keeps nothing, or what it kept cannot be read
 */
export function openDatabase(onLost: () => void = () => {}): Promise<Database> {
  return openDB<Kept>(name, version, {
    upgrade(database) {
      database.createObjectStore('notebooks', { keyPath: 'id' });
      database.createObjectStore('texts');
      database.createObjectStore('states', { keyPath: ['notebook', 'at'] });
      database.createObjectStore('stateTexts');
      database.createObjectStore('page');
    },
    // A newer page, in another window, wants the database in another form: this one must not stand in its way.
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
      onLost();
    },
    terminated: onLost,
  });
}
