export { default as FormulaLine } from './FormulaLine.svelte';
