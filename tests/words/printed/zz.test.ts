import { test } from 'vitest';
import { heronPullover } from '../../../src/starters/adapted/heron-pullover';
import { readPattern } from '../../../src/words/printed/read-pattern';
test('x', () => {
  const r = readPattern(heronPullover, { decimal: '.' });
  for (const l of r.lines) console.log(String(l.line).padStart(3), l.text.slice(0, 60).padEnd(60), '|', l.as.join('; '));
  console.log(r.doubts);
  for (const p of r.pattern.pieces) { console.log(p.label, p.make, p.worked, p.ends, JSON.stringify(p.start), JSON.stringify(p.multiple), JSON.stringify(p.parted));
    for (const s of p.stretches) { const {place, says, ...x} = s; console.log('   ', JSON.stringify(x)); } }
  console.log(JSON.stringify(r.pattern.measures)); console.log(JSON.stringify(r.pattern.gauges), JSON.stringify(r.pattern.yarn));
});
