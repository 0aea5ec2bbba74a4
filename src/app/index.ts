export { default as App } from './App.svelte';
