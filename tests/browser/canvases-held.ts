import type { CDPSession } from 'playwright';

/** How many canvases there are on the heap, counted there: what is handed over to be counted is held by that. */
export async function canvasesHeld(session: CDPSession): Promise<number> {
  const objectGroup = 'counted';
  const { result } = await session.send('Runtime.evaluate', {
    expression: 'HTMLCanvasElement.prototype',
    objectGroup,
  });
  const { objects } = await session.send('Runtime.queryObjects', {
    prototypeObjectId: result.objectId!,
    objectGroup,
  });
  const counted = await session.send('Runtime.callFunctionOn', {
    objectId: objects.objectId!,
    functionDeclaration: 'function () { return this.length; }',
    returnByValue: true,
  });
  await session.send('Runtime.releaseObjectGroup', { objectGroup });
  return counted.result.value as number;
}
