export { default as Step } from './Step.svelte';
export { byStretch } from './by-stretch';
export { unbrokenFormula } from './unbroken';
