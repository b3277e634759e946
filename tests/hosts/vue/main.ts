import { createApp } from 'vue';
import Visit from './Visit.vue';

createApp(Visit).mount('#app');
