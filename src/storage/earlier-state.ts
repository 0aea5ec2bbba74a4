import { counted, fieldsOf, type EarlierState } from './stored-notebook';

/** An earlier state, made of what its record holds, which may be damaged. */
export function stateFrom(notebook: string, at: number, record: unknown): EarlierState {
  const found = fieldsOf(record);
  const order = counted(found['order']);
  return {
    notebook,
    at,
    ...(order !== undefined && { order }),
    cells: counted(found['cells']) ?? 0,
    sizes: counted(found['sizes']) ?? 0,
    ...(found['older'] === true && { older: true as const }),
  };
}
