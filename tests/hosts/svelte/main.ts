import { mount } from 'svelte';
import Visit from './Visit.svelte';

mount(Visit, { target: document.querySelector('#app')! });
