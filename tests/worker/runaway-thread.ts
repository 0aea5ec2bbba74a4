import { parentPort } from 'node:worker_threads';
import { evaluated, pluginOf, register } from '../../src/engine/engine-functions';
import './serving-thread';

/*
 * No formula that the sheet takes runs for ever, so one is made for the tests: in this thread, and nowhere else, the
 * absolute value of 13 is never found. It says so before.
 */
register(
  pluginOf({
    ABS(call, state) {
      const value = evaluated(this, call.args[0]!, state);
      if (value === 13) parentPort!.postMessage('for ever');
      while (value === 13);
      return typeof value === 'number' ? Math.abs(value) : value;
    },
  }),
);
