import { expect, test } from 'vitest';
import { gradables, gradedOf, usualGradables } from '../../../src/features/pictures/graded';
import { workspaceWith } from '../../workspace/local-workspace';
import { measured, small } from '../../workspace/small-notebook';
import { vNeck } from '../../notebooks/v-neck';

test('every length of the V-neck can be graded: body measurements, finished ones, what pieces work out', async () => {
  const { workspace, settled } = workspaceWith(vNeck());
  await settled();
  const all = gradables(workspace);
  const of = (id: string) => all.find((one) => one.id === id);
  expect(of('bust value')).toMatchObject({ label: 'Bust', of: 'body' });
  expect(of('finished-bust finished')).toMatchObject({ of: 'finished', over: 'bust value' });
  expect(of('front length')).toMatchObject({ label: 'Front, length', of: 'finished' });
  expect(of('neck-width value')).toMatchObject({ of: 'finished' });
  expect(of('armhole value')).toMatchObject({ of: 'finished' });
  // Stitches, rows, areas and gauges are no lengths.
  for (const id of ['back rows', 'back area', 'back-sts count', 'body gauge']) expect(of(id)).toBeUndefined();
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
});

test('until something is chosen the body and the finished measurement of the first ease are drawn', async () => {
  const { workspace, settled } = workspaceWith(vNeck());
  await settled();
  const all = gradables(workspace);
  expect(usualGradables(all)).toEqual(['bust value', 'finished-bust finished']);
  const [body, finished] = usualGradables(all).map((id) =>
    gradedOf(
      workspace,
      all.find((one) => one.id === id)!,
    ),
  );
  body!.values.forEach((value, i) => expect(finished!.values[i]).toBeCloseTo(value! + 20, 9));
});

test('without an ease the measurements of the body are, and without those the first length', async () => {
  const charted = workspaceWith(small());
  await charted.settled();
  expect(usualGradables(gradables(charted.workspace))).toEqual(['bust value']);
  const plain = workspaceWith({
    ...small(),
    sections: [
      { id: 'a', label: 'A', cells: [measured('cuff', { value: 5 }), measured('hem', { value: 6 })] },
    ],
  });
  await plain.settled();
  expect(usualGradables(gradables(plain.workspace))).toEqual(['cuff value']);
});
