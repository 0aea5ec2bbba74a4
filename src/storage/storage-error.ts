/** Why a browser did not keep a notebook. `silent`: it does not answer; `missing`: the part that keeps was not fetched. */
export type StorageError = 'full' | 'refused' | 'broken' | 'silent' | 'missing';

/** What an error of the database comes down to. */
export function storageErrorOf(error: unknown): StorageError {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  if (name === 'SecurityError' || name === 'InvalidStateError' || name === 'NotAllowedError')
    return 'refused';
  return name === 'TypeError' || name === 'ReferenceError' ? 'refused' : 'broken';
}
