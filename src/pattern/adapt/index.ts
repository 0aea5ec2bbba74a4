export { notebookFrom } from './notebook-from';
