import '@fontsource/alegreya/latin-500.css';
import '@fontsource/alegreya/latin-ext-500.css';
import '@fontsource/alegreya-sans/latin-400.css';
import '@fontsource/alegreya-sans/latin-400-italic.css';
import '@fontsource/alegreya-sans/latin-700.css';
import '@fontsource/alegreya-sans/latin-ext-400.css';
import '@fontsource/alegreya-sans/latin-ext-400-italic.css';
import '@fontsource/alegreya-sans/latin-ext-700.css';
import { mount } from 'svelte';
import { App } from './app';
import { answerOrExample, opening } from './features/notebooks';
import './ui/page.css';

const target = document.getElementById('page')!;
const opened = await answerOrExample(opening(), target);
mount(App, { target, props: { opened } });
