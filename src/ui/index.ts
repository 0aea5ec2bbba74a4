export { default as Choice } from './Choice.svelte';
export { default as ChoosableOptions } from './ChoosableOptions.svelte';
export { default as Complaints } from './Complaints.svelte';
export { default as Editor } from './Editor.svelte';
export { default as Fetched } from './Fetched.svelte';
export { default as Later } from './Later.svelte';
export { default as Missing } from './Missing.svelte';
export { goTo, returnTo } from './focus';
export { fileOf, saveAsFile, saveNotebook, saveText } from './saving';
