import { expect } from 'vitest';
import type { Message } from '../src/craft';

const slot = String.raw`\{\w+\}`;
const form = String.raw`\{((?:[^{}]|${slot})*)\}`;
const plural = new RegExp(String.raw`\{(\w+), plural, one ${form} other ${form}\}`, 'g');

/** The slots of a pattern, each once, found by a path of their own; a brace that belongs to none of them throws. */
export function slotsOf(pattern: string): string[] {
  const slots: string[] = [];
  const rest = pattern
    .replace(plural, (_all, name: string, one: string, other: string) => {
      slots.push(name);
      return `${one} ${other}`;
    })
    .replace(new RegExp(slot, 'g'), (found) => {
      slots.push(found.slice(1, -1));
      return '';
    });
  if (/[{}]/.test(rest)) throw new Error(`“${pattern}” has a brace that belongs to no slot.`);
  return [...new Set(slots)];
}

/** Fails where a slot of a message has no param, or a param no slot, or a number is one that JSON does not carry. */
export function checkSlots({ pattern, params }: Message): void {
  expect(slotsOf(pattern).toSorted(), pattern).toEqual(Object.keys(params).toSorted());
  for (const param of Object.values(params)) {
    if (typeof param === 'number') expect(param, pattern).toSatisfy(Number.isFinite);
    else if (typeof param === 'object' && 'pattern' in param) checkSlots(param);
  }
}
