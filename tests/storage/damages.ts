/** What of a notebook can still be had after a damage. */
export type Left =
  /** It opens as it was. */
  | 'opens'
  /** Its text is there, as it is, but is no notebook. */
  | 'text'
  /** Its text is gone, an earlier one is there. */
  | 'earlier';

/** One way in which a database may be damaged. */
export interface Damaging {
  readonly what: string;
  readonly left: Left;
  /** Whether the list has to say that the notebook is damaged. */
  readonly reported: boolean;
  /**
   * Does the damage to a notebook in one transaction over all stores. It knows nothing of what is around it, so that it
   * can be done in a browser too.
   */
  readonly damage: (store: (name: string) => IDBObjectStore, id: string) => void;
}

const entry = (
  what: string,
  isReported: boolean,
  damage: (store: (name: string) => IDBObjectStore, id: string) => void,
): Damaging => ({ what, left: 'opens', reported: isReported, damage });

/** Ways in which records may be damaged, each by what a fault of a browser or of a page could leave behind. */
export const damages: readonly Damaging[] = [
  entry('a time that is no number', true, (store, id) => {
    store('notebooks').get(id).onsuccess = ({ target }) =>
      store('notebooks').put({ ...(target as IDBRequest<object>).result, changed: NaN, made: 'Monday' });
  }),
  entry('an entry of wrong types', true, (store, id) => {
    store('notebooks').put({ id, title: 7, made: null, changed: [], revision: '2', cells: {}, sizes: -1 });
  }),
  entry('an entry with nothing but its id', true, (store, id) => {
    store('notebooks').put({ id });
  }),
  entry('a text whose entry is gone', true, (store, id) => {
    store('notebooks').delete(id);
  }),
  entry('fields that nobody knows', false, (store, id) => {
    store('notebooks').get(id).onsuccess = ({ target }) =>
      store('notebooks').put({ ...(target as IDBRequest<object>).result, more: { of: ['these'] } });
  }),
  entry('deleted at no time', false, (store, id) => {
    store('notebooks').get(id).onsuccess = ({ target }) =>
      store('notebooks').put({ ...(target as IDBRequest<object>).result, deleted: NaN });
  }),
  entry('a text that was kept as data', false, (store, id) => {
    store('texts').get(id).onsuccess = ({ target }) =>
      store('texts').put(JSON.parse((target as IDBRequest<string>).result), id);
  }),
  entry('the last one points nowhere', false, (store) => {
    store('page').put('nowhere', 'last');
    store('page').put('some', 'order');
  }),
  entry('the last one is no id', false, (store) => {
    store('page').put({ id: 3 }, 'last');
    store('page').delete('order');
  }),
  entry('an earlier state without its record, or of no time', false, (store, id) => {
    store('states').clear();
    store('states').put({ notebook: id, at: Infinity, cells: 'three' });
    store('stateTexts').put('{}', [id, Infinity]);
    store('states').put({ notebook: id, at: 5, cells: NaN });
  }),
  {
    what: 'a text that was cut short',
    left: 'text',
    reported: false,
    damage: (store, id) => {
      store('texts').get(id).onsuccess = ({ target }) => {
        const { result } = target as IDBRequest<string>;
        store('texts').put(result.slice(0, result.length / 2), id);
      };
    },
  },
  {
    what: 'an entry whose text is gone',
    left: 'earlier',
    reported: true,
    damage: (store, id) => {
      store('texts').delete(id);
    },
  },
];
