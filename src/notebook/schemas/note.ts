import * as v from 'valibot';

export const note = v.object({ text: v.pipe(v.string(), v.maxLength(10_000)) });
