import { slotsOf } from '../../pattern';

const token = 'data-slot';

/** The template that stands in a field: its words, and `{slot}` where a number stands. */
export function templateIn(field: Node): string {
  let template = '';
  for (const node of field.childNodes) {
    if (node instanceof HTMLElement && node.hasAttribute(token)) template += `{${node.getAttribute(token)}}`;
    else if (node instanceof Text) template += node.data;
    else template += templateIn(node);
  }
  return template.replace(/\s+/gu, ' ').trim();
}

/** A number of the sentence: it can be moved past and taken out, but not typed into. */
export function tokenOf(slot: string, value: string): HTMLElement {
  const span = document.createElement('span');
  span.setAttribute(token, slot);
  span.contentEditable = 'false';
  // A slot that prints nothing in this notebook is still to be seen.
  span.textContent = value === '' ? slot : value;
  span.title = `This is worked out: ${slot}`;
  return span;
}

/** Fills a field with a template, its slots as tokens. */
export function fillField(
  field: HTMLElement,
  template: string,
  slots: Readonly<Record<string, string>>,
): void {
  const words = template.split(/\{[a-z][a-z0-9_ ]*\}/u);
  const names = slotsOf(template);
  field.replaceChildren(
    ...words.flatMap((text, at) => {
      const name = names[at];
      return name === undefined ? [text] : [text, tokenOf(name, slots[name] ?? name)];
    }),
  );
}

/** Puts text, or a token, where the caret stands; at the end where it stands elsewhere. */
export function putIn(field: HTMLElement, what: string | HTMLElement): void {
  const selection = getSelection();
  const node = typeof what === 'string' ? document.createTextNode(what) : what;
  const range =
    selection && selection.rangeCount > 0 && field.contains(selection.anchorNode)
      ? selection.getRangeAt(0)
      : undefined;
  if (range) {
    range.deleteContents();
    range.insertNode(node);
  } else field.append(node);
  selection?.collapse(node.parentNode, [...node.parentNode!.childNodes].indexOf(node) + 1);
}
