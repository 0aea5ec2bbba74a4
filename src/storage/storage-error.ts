/** Why a browser did not keep a notebook. `silent`: it does not answer; `missing`: the part that keeps was not fetched. */
export type Trouble = 'full' | 'refused' | 'broken' | 'silent' | 'missing';

/** What an error of the database comes down to. */
export function troubleOf(error: unknown): Trouble {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  if (name === 'SecurityError' || name === 'InvalidStateError' || name === 'NotAllowedError')
    return 'refused';
  return name === 'TypeError' || name === 'ReferenceError' ? 'refused' : 'broken';
}
