export { html } from './html';
export { linesOf } from './lines-of';
export { markdown } from './markdown';
export { patternOf } from './pattern-of';
export { plainText } from './plain-text';
export { reword, sentencesOf } from './reword';
export { shown, slotsOf, wrongTemplate } from './sentence';
export { stitchChoices } from './stitch-choices';
export { inTerms, inUk } from './terms';
